import type {TextPage} from './cookbook.ts'
import type {Problem} from './problem.ts'
import {readText} from './read-text.ts'
import type {Method} from './recipe.ts'
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
  readonly written?: Method
  readonly problems: readonly Problem[]
} {
  const {text: read, problems} = readText(source, 'pages', textPageReader)
  if (!read) return {problems}
  const {slug, written, values} = read
  const page: TextPage = {slug, path: source.path, title: values.title, body: written.body}
  return {page, written, problems}
}
