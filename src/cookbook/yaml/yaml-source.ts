import type {Root} from 'mdast'
import type {Position} from 'unist'
import {placeBetween, pointsOf} from '../points.ts'

/** A stretch of YAML in a file: all of it, or the front matter between the fences. */
export interface YamlSource {
  readonly yaml: string
  /** Turns a range of offsets in `yaml` into the place in the file: the only function that does. */
  placeOf(start: number, end: number): Position
}

/** The file's text as positions count it: a byte order mark is no character of it. */
export function withoutByteOrderMark(text: string): string {
  return text.startsWith('\uFEFF') ? text.slice(1) : text
}

/** @param text a whole .yaml file, without a byte order mark */
export function wholeFile(text: string): YamlSource {
  return stretch(text, 0, text.length)
}

/**
 * The front matter of a Markdown file.
 * @param text the whole file, without a byte order mark
 * @param root the tree that remark-parse with remark-frontmatter made of `text`
 * @returns nothing where the file has no front matter, or does not close it
 */
export function frontMatter(text: string, root: Root): YamlSource | undefined {
  const [first] = root.children
  if (first?.type !== 'yaml') return undefined
  const fence = first.position?.start.offset
  const end = first.position?.end.offset
  if (fence === undefined || end === undefined) return undefined
  return stretch(text, afterLineEnding(text, fence), startOfLine(text, end))
}

function stretch(text: string, from: number, to: number): YamlSource {
  const pointAt = pointsOf(text)
  return {
    // A lone carriage return ends a line in Markdown but not for the YAML parser.
    yaml: text.slice(from, to).replace(/\r(?!\n)/g, '\n'),
    placeOf: (start, end) => placeBetween(pointAt, from + start, from + end),
  }
}

function afterLineEnding(text: string, from: number): number {
  const ending = /\r\n|\n|\r/g
  ending.lastIndex = from
  return ending.test(text) ? ending.lastIndex : text.length
}

function startOfLine(text: string, offset: number): number {
  const before = text.slice(0, offset)
  return Math.max(before.lastIndexOf('\n'), before.lastIndexOf('\r')) + 1
}
