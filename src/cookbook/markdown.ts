import type {Root} from 'mdast'
import remarkFrontmatter from 'remark-frontmatter'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import {reportHiddenCharacters} from './hidden-characters.ts'
import {isWithinLimits} from './markdown-limits.ts'
import {placeBetween, pointsOf} from './points.ts'
import type {Report} from './problems.ts'

/** The Markdown that cookbooks are written in: CommonMark, with YAML front matter. */
const markdown = unified().use(remarkParse).use(remarkFrontmatter).freeze()

/**
 * Parses a Markdown file and reports what keeps it from being understood.
 * @param text the whole file, without a byte order mark: the parser's offsets do not count one
 * @returns nothing where the front matter never closes or the text is beyond the limits
 */
export function parseMarkdown(text: string, report: Report): Root | undefined {
  return isReadable(text, report) ? markdown.parse(text) : undefined
}

/** Whether a Markdown file can be understood: the part of `parseMarkdown` that needs no tree. */
export function isReadable(text: string, report: Report): boolean {
  reportHiddenCharacters(text, report)
  const body = bodyStart(text)
  if (body !== undefined) return isWithinLimits(text, body, report)
  report({
    ruleId: 'front-matter-present',
    place: placeBetween(pointsOf(text), 0, 3),
    reason:
      'The `---` on the first line opens front matter that never closes, expected a second `---`',
    note: 'Put a line of three hyphens, and nothing else, below the last key.',
  })
  return false
}

/** A line of three hyphens; blanks may follow, and only `\r` and `\n` end it, as for the parser. */
const fence = /(?<![^\r\n])---[ \t]*(?![^\r\n])/g

/** @returns the offset below the front matter, or nothing where the front matter never closes */
function bodyStart(text: string): number | undefined {
  const [opening, closing] = text.matchAll(fence)
  if (opening?.index !== 0) return 0
  return closing && closing.index + closing[0].length
}
