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
  if (isAsWritten) return [{index: 0, ...range}]
  return new Alignment(value, text, range).goThrough(escapeAt)
}

/** The same for code between backticks, where nothing stands for anything but itself. */
export function inlineCodeStretches(value: string, text: string, range: Range): readonly Stretch[] {
  const ticks = lengthAt(/`+/y, text, range.start)
  const [start, end] = [range.start + ticks, range.end - ticks]
  const hasPadding = /^[ \r\n]/.test(text[start] ?? '') && /[ \r\n]/.test(text[end - 1] ?? '')
  const isPadded = hasPadding && /[^ \r\n]/.test(text.slice(start, end))
  const padding = isPadded ? lengthAt(/ |\r\n?|\n/y, text, start) : 0
  const alignment = new Alignment(value, text, {start: start + padding, end})
  if (isPadded && text[start] !== ' ') alignment.beginLine()
  return alignment.goThrough(noEscape)
}

/** The same for a block of code, fenced or indented. */
export function codeBlockStretches(value: string, text: string, range: Range): readonly Stretch[] {
  const fenceLine = lengthAt(/(?:`{3}|~{3})[^\r\n]*(?:\r\n?|\n)/y, text, range.start)
  const alignment = new Alignment(value, text, {start: range.start + fenceLine, end: range.end})
  alignment.beginLine()
  return alignment.goThrough(noEscape)
}

/** A hard line break: the end of its line, with the blanks or the backslash that make it hard. */
export function lineBreakStretches(_: string, text: string, {start}: Range): readonly Stretch[] {
  return [{index: 0, start, end: start + lengthAt(/[ \t]*\\?(?:\r\n?|\n)/y, text, start)}]
}

type EscapeAt = typeof escapeAt

const noEscape = (): undefined => undefined

/** A stretch that may still grow. */
interface Draft {
  readonly index: number
  readonly start: number
  end: number
}

/** Goes through a text and its place in the file side by side. */
class Alignment {
  readonly #value: string
  readonly #text: string
  readonly #end: number
  readonly #stretches: Draft[] = []
  #index = 0
  #offset: number

  constructor(value: string, text: string, {start, end}: Range) {
    this.#value = value
    this.#text = text
    this.#offset = start
    this.#end = end
  }

  goThrough(escaped: EscapeAt): readonly Stretch[] {
    while (this.#index < this.#value.length) {
      if (this.#value[this.#index] === '\n' && this.#endLine()) continue
      const plain = {length: 1, start: this.#offset, end: this.#offset + 1}
      this.#take(escaped(this.#value, this.#index, this.#text, this.#offset) ?? plain)
    }
    return this.#stretches
  }

  /**
   * Steps over the signs of the quotes and lists that the line at hand stands in. A `>` that is
   * indented too far to quote is content, and so is the indentation of code: as much as the value
   * begins with.
   */
  beginLine(): void {
    const first = this.#offset
    const signsEnd = Math.min(this.#end, first + lengthAt(/[ \t>]*/y, this.#text, first))
    this.#offset = signsEnd
    if (isEscapedBlankOrQuote(this.#text, signsEnd)) return
    const kept = lengthAt(/[ \t>]*/y, this.#value, this.#index)
    let same = 0
    while (
      same < kept &&
      signsEnd - same > first &&
      this.#value[this.#index + kept - 1 - same] === this.#text[signsEnd - 1 - same]
    ) {
      same++
    }
    this.#offset = signsEnd - same
    // What is left of a tab, once the columns of a list are taken from it, became blanks.
    if (same < kept && this.#offset > first) {
      this.#take({length: kept - same, start: this.#offset - 1, end: this.#offset})
    }
  }

  /** @returns whether a line of the file ends here, but for blanks */
  #endLine(): boolean {
    const blanks = lengthAt(/[ \t]*(?=[\r\n])/y, this.#text, this.#offset)
    const start = this.#offset + blanks
    const length = lengthAt(/\r\n?|\n/y, this.#text, start)
    if (length === 0) return false
    this.#take({length: 1, start, end: start + length})
    this.beginLine()
    return true
  }

  #take({length, ...range}: Escape): void {
    const start = Math.min(range.start, this.#end)
    const end = Math.min(range.end, this.#end)
    const last = this.#stretches.at(-1)
    const isNext = last?.end === start && last.end - last.start === this.#index - last.index
    if (last && isNext && end - start === length) last.end = end
    else this.#stretches.push({index: this.#index, start, end})
    this.#index += length
    this.#offset = end
  }
}

/** Length of what a sticky expression matches at an offset; 0 where it does not. */
function lengthAt(sticky: RegExp, text: string, offset: number): number {
  sticky.lastIndex = offset
  return sticky.exec(text)?.[0].length ?? 0
}
