import type {TextPage} from './cookbook.ts'
import {readMarkdownFile} from './markdown-file.ts'
import {safeBody} from './method.ts'
import type {Problem} from './problem.ts'
import {reportInto} from './problems.ts'
import {slugOf} from './slug.ts'
import type {SourceText} from './sources.ts'
import {mapping, required} from './yaml/collection-readers.ts'
import {text} from './yaml/text-readers.ts'

/** The front matter of a page; its schema describes every key for an editor. */
export const textPageReader = mapping('the keys of a page', {
  title: required(text, 'Title of the page', 'what is the page called?'),
})

/** Reads an ordinary page; one that cannot be understood is left out. */
export function readTextPage(source: SourceText): {
  readonly page?: TextPage
  readonly problems: readonly Problem[]
} {
  const problems: Problem[] = []
  const report = reportInto(problems, source.path)
  const slug = slugOf(source.path, 'pages', report)
  const file = readMarkdownFile(source, textPageReader, report)
  if (!file || slug === undefined) return {problems}
  const {body} = safeBody(file.root, {source: {path: source.path, text: file.text}, report})
  return {page: {slug, path: source.path, title: file.values.title, body}, problems}
}
