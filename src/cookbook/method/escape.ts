/** Characters of a file that stand for others in the parsed text. */
export interface Escape {
  /** How many characters of the parsed text they stand for. */
  readonly length: number
  /** Offsets in the file. */
  readonly start: number
  readonly end: number
}

/** CommonMark 2.4: a backslash before one of these is not printed. */
const escapedPunctuation = /\\[!-/:-@[-`{-~]/y

/** CommonMark 2.5; nothing after an `&` stands for it but these. */
const reference = /&(?:#\d{1,7}|#[xX][\da-fA-F]{1,6}|[a-zA-Z][\da-zA-Z]{0,30});/y
const ampersand = /^&(?:amp|AMP|#0*38|#[xX]0*26);$/

/** Second characters of the named references that stand for two (HTML, section 13.5). */
const secondOfTwo: ReadonlySet<string> = new Set('\u0331\u0333\u0338\u200A\u20D2\u20E5\uFE00j')

/** The escape that stands at an offset of the file for what stands at an index of the value. */
export function escapeAt(
  value: string,
  index: number,
  text: string,
  start: number,
): Escape | undefined {
  const backslash = matchAt(escapedPunctuation, text, start)
  if (backslash !== undefined) return {length: 1, start: start + 1, end: start + 2}
  const written = matchAt(reference, text, start)
  // What looks like a reference and is none was left as it stands.
  if (written === undefined || (value[index] === '&' && !ampersand.test(written))) return undefined
  const end = start + written.length
  const isPair = /^[\uD800-\uDBFF]$/.test(value[index] ?? '')
  return {length: isPair || hasSecond(value, index, text, end) ? 2 : 1, start, end}
}

/** Whether the second of two characters is the reference's, and not one that follows it. */
function hasSecond(value: string, index: number, text: string, end: number): boolean {
  const second = value[index + 1] ?? ''
  if (!secondOfTwo.has(second)) return false
  return countFrom(value, index + 1, second) > countFrom(text, end, second)
}

function countFrom(text: string, start: number, character: string): number {
  let end = start
  while (text[end] === character) end++
  return end - start
}

const blankOrQuote = /\\>|&(?:gt|GT|Tab|#0*(?:9|32|62)|#[xX]0*(?:9|20|3[eE]));/y

/** Whether an escape at an offset stands for a blank or a `>`, which open a line otherwise. */
export function isEscapedBlankOrQuote(text: string, offset: number): boolean {
  return matchAt(blankOrQuote, text, offset) !== undefined
}

function matchAt(sticky: RegExp, text: string, offset: number): string | undefined {
  sticky.lastIndex = offset
  return sticky.exec(text)?.[0]
}
