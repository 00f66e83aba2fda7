import {readMarkdownFile} from './markdown-file.ts'
import {safeBody} from './method.ts'
import type {Problem} from './problem.ts'
import {reportInto} from './problems.ts'
import type {Method} from './recipe.ts'
import {slugOf} from './slug.ts'
import type {SourceText} from './sources.ts'
import type {Reader} from './yaml/reader.ts'

/** A Markdown file that is no recipe, understood. */
export interface UnderstoodText<T> {
  readonly slug: string
  readonly values: T
  readonly written: Method
}

/**
 * Reads a plan or a page: front matter and text.
 * @param folder the file must stand in
 */
export function readText<T>(
  source: SourceText,
  folder: string,
  reader: Reader<T>,
): {readonly text?: UnderstoodText<T>; readonly problems: readonly Problem[]} {
  const problems: Problem[] = []
  const report = reportInto(problems, source.path)
  const slug = slugOf(source.path, folder, report)
  const file = readMarkdownFile(source, reader, report)
  if (!file || slug === undefined) return {problems}
  const written = safeBody(file.root, {source: {path: source.path, text: file.text}, report})
  return {text: {slug, values: file.values, written}, problems}
}
