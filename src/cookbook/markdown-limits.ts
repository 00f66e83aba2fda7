import {placeBetween, pointsOf} from './points.ts'
import type {Report} from './problems.ts'

/**
 * How much Markdown is parsed. The parser's time grows with the square of what is nested or left
 * open, so a file made to exhaust it is refused before it is parsed. A long recipe has about 60
 * lines and 4,000 characters below its front matter.
 */
export const markdownLimits = {
  /** Characters below the front matter. */
  characters: 100_000,
  /** Lines below the front matter. */
  lines: 5_000,
  /** Quotes and lists within one another, by the signs and each four columns of indentation of a line. */
  nesting: 20,
  /** Signs that open a quote or a list, in all lines together. */
  containers: 5_000,
  /** Signs of emphasis and links in one paragraph; a picture counts as ten. */
  inlineSigns: 300,
} as const

/**
 * Reports the first limit that the Markdown of a file goes beyond.
 * @param from offset of the first line below the front matter
 * @returns whether the text may be parsed
 */
export function isWithinLimits(text: string, from: number, report: Report): boolean {
  const excess = firstExcess(text, from)
  if (excess === undefined) return true
  const line = /[^\r\n]*/y
  line.lastIndex = excess.offset
  line.exec(text)
  report({
    ruleId: 'readable-markdown',
    place: placeBetween(pointsOf(text), excess.offset, line.lastIndex),
    reason: `${excess.what}, expected \`${excess.most}\` at most`,
    ...(excess.note !== undefined && {note: excess.note}),
  })
  return false
}

interface Excess {
  readonly offset: number
  readonly what: string
  readonly most: number
  readonly note?: string
}

function firstExcess(text: string, from: number): Excess | undefined {
  const {characters, lines, nesting, containers, inlineSigns} = markdownLimits
  if (text.length - from > characters) {
    const what = `The text goes on for \`${text.length - from}\` characters`
    return {offset: from, what, most: characters, note: 'Divide it into several files.'}
  }
  const count = {lines: 0, containers: 0, inlineSigns: 0}
  const nextLine = /[^\r\n]*(?:\r\n?|\n)?/y
  nextLine.lastIndex = from
  while (nextLine.lastIndex < text.length) {
    const offset = nextLine.lastIndex
    const line = lineSigns(nextLine.exec(text)?.[0] ?? '')
    count.lines++
    count.containers += line.containers
    count.inlineSigns = (line.beginsBlock ? 0 : count.inlineSigns) + line.inlineSigns
    if (count.lines > lines) return {offset, what: 'The text has more lines', most: lines}
    if (line.nesting > nesting) {
      return {offset, what: 'Quotes and lists are nested more levels deep here', most: nesting}
    }
    if (count.containers > containers) {
      return {offset, what: 'The text has more list items and quoted lines', most: containers}
    }
    if (count.inlineSigns > inlineSigns) {
      const what = 'This paragraph has more signs of emphasis, links and pictures'
      return {offset, what, most: inlineSigns, note: 'An empty line begins another paragraph.'}
    }
  }
  return undefined
}

/** What a line adds to the parser's work. */
interface LineSigns {
  /** Signs at its beginning that open a quote or a list, or go on with a quote. */
  readonly containers: number
  readonly nesting: number
  /** Whether no paragraph above can go on in it. */
  readonly beginsBlock: boolean
  readonly inlineSigns: number
}

/** Quote and list signs with the blanks among them (CommonMark 5.1, 5.2). */
const beginning = /^(?:[ \t]|>|[-+*](?=\s|$)|\d{1,9}[.)](?=\s|$))*/

/** A line that only rules off: neither list items nor emphasis (CommonMark 4.1). */
const thematicBreak = /^[ \t]*([-*_])[ \t]*(?:\1[ \t]*){2,}\s*$/

/** A list item that interrupts whatever paragraph stands above it (CommonMark 5.2). */
const bullet = /^ {0,3}[-+*][ \t]+\S/

function lineSigns(line: string): LineSigns {
  const isBlank = line.trim() === ''
  if (isBlank || thematicBreak.test(line)) {
    return {containers: 0, nesting: 0, beginsBlock: true, inlineSigns: 0}
  }
  const signs = beginning.exec(line)?.[0] ?? ''
  const containers = signs.match(/[>+*-]|\d+/g)?.length ?? 0
  const blankColumns = signs.replace(/[^ \t]/g, '').replaceAll('\t', '    ').length
  return {
    containers,
    // One blank behind each sign is no indentation.
    nesting: containers + Math.floor(Math.max(0, blankColumns - containers) / 4),
    beginsBlock: bullet.test(line),
    inlineSigns: inlineSigns(line.slice(signs.length)),
  }
}

/** The words of a picture are parsed once more for each picture around it: it counts as ten. */
function inlineSigns(content: string): number {
  const signs = content.match(/!?\[|[*_]/g) ?? []
  return signs.reduce((count, sign) => count + (sign === '![' ? 10 : 1), 0)
}
