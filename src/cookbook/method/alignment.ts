import type {Stretch} from '../recipe.ts'
import {type Escape, escapeAt, isEscapedBlankOrQuote} from './escape.ts'

/** A range of offsets in the text of a file. */
export interface Range {
  readonly start: number
  readonly end: number
}

/**
 * Where the characters of a Markdown text stand in the file. What was parsed lacks what Markdown
 * takes away (backslashes, the signs of quotes and the indentation at the beginning of a line), and
 * of a character reference it has only the result.
 * @param value as parsed, every line ending a `\n`
 * @param text the whole file
 * @param range of the node in it
 * @returns indexes count from the first character of `value`
 */
export function textStretches(value: string, text: string, range: Range): readonly Stretch[] {
  const isAsWritten =
    range.end - range.start === value.length && text.startsWith(value, range.start)
  return isAsWritten ? [{index: 0, ...range}] : aligned(value, text, range, escapeAt)
}

/** The same for code between backticks, where nothing stands for anything but itself. */
export function inlineCodeStretches(value: string, text: string, range: Range): readonly Stretch[] {
  const ticks = lengthAt(/`+/y, text, range.start)
  const [start, end] = [range.start + ticks, range.end - ticks]
  const hasPadding = /^[ \r\n]/.test(text[start] ?? '') && /[ \r\n]/.test(text[end - 1] ?? '')
  const padding = hasPadding && /[^ \r\n]/.test(text.slice(start, end)) ? 1 : 0
  return aligned(value, text, {start: start + padding, end}, noEscape)
}

/** The same for a block of code, fenced or indented. */
export function codeBlockStretches(value: string, text: string, range: Range): readonly Stretch[] {
  const fenceLine = lengthAt(/(?:`{3}|~{3})[^\r\n]*(?:\r\n?|\n)/y, text, range.start)
  const start = lineContent({value, index: 0}, {text, offset: range.start + fenceLine, ...range})
  return aligned(value, text, {start, end: range.end}, noEscape)
}

const noEscape = (): undefined => undefined

type EscapeAt = (value: string, index: number, text: string, offset: number) => Escape | undefined

function aligned(
  value: string,
  text: string,
  {start, end}: Range,
  escaped: EscapeAt,
): readonly Stretch[] {
  const stretches: Draft[] = []
  let offset = start
  for (let index = 0; index < value.length; ) {
    // Blanks at the end of a line are not part of its text.
    if (value[index] === '\n') offset += lengthAt(/[ \t]*(?=[\r\n])/y, text, offset)
    const isNewLine = value[index] === '\n' && /[\r\n]/.test(text[offset] ?? '')
    const found = escaped(value, index, text, offset) ?? plainAt(text, offset)
    const range = {start: Math.min(found.start, end), end: Math.min(found.end, end)}
    append(stretches, {index, ...range}, found.length)
    index += found.length
    offset = isNewLine ? lineContent({value, index}, {text, offset: range.end, end}) : range.end
  }
  return stretches
}

/** A character that stands for itself; a line ending may be two. */
function plainAt(text: string, offset: number): Escape {
  return {length: 1, start: offset, end: offset + (text.startsWith('\r\n', offset) ? 2 : 1)}
}

/**
 * Where the content of a line begins behind the signs of the quotes and lists it stands in. A `>`
 * that is indented too far to quote is content, and so is the indentation of code: as much as the
 * value begins with.
 */
function lineContent(
  {value, index}: {readonly value: string; readonly index: number},
  {text, offset, end}: {readonly text: string; readonly offset: number; readonly end: number},
): number {
  const signsEnd = Math.min(end, offset + lengthAt(/[ \t>]*/y, text, offset))
  if (isEscapedBlankOrQuote(text, signsEnd)) return signsEnd
  const kept = lengthAt(/[ \t>]*/y, value, index)
  const start = signsEnd - kept
  const isKept = start >= offset && text.startsWith(value.slice(index, index + kept), start)
  return isKept ? start : signsEnd
}

/** Length of what a sticky expression matches at an offset; 0 where it does not. */
function lengthAt(sticky: RegExp, text: string, offset: number): number {
  sticky.lastIndex = offset
  return sticky.exec(text)?.[0].length ?? 0
}

/** A stretch that may still grow. */
interface Draft {
  readonly index: number
  readonly start: number
  end: number
}

function append(stretches: Draft[], next: Draft, length: number): void {
  const last = stretches.at(-1)
  const isOneToOne = next.end - next.start === length
  if (isOneToOne && last?.end === next.start && last.end - last.start === next.index - last.index) {
    last.end = next.end
  } else {
    stretches.push(next)
  }
}
