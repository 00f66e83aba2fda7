import type {Position} from 'unist'
import {lineStartsOf} from '../points.ts'
import type {Passage, Stretch} from '../recipe.ts'
import {
  codeBlockStretches,
  inlineCodeStretches,
  lineBreakStretches,
  type Range,
  textStretches,
} from './alignment.ts'

type Align = (value: string, text: string, range: Range) => readonly Stretch[]

/** A node of Markdown with words in it; without a place where a plugin made it up. */
interface Words {
  readonly value: string
  readonly position?: Position | undefined
}

/** Gathers the plain text of one passage, node by node. */
export class PassageBuilder {
  readonly #file: string
  readonly #stretches: Stretch[] = []
  #text = ''

  /** @param file the whole text of the file */
  constructor(file: string) {
    this.#file = file
  }

  get text(): string {
    return this.#text
  }

  /** Adds words; they run on from one line of the file to the next. */
  addText(words: Words): void {
    this.#add(words, textStretches, ' ')
  }

  addInlineCode(words: Words): void {
    this.#add(words, inlineCodeStretches, ' ')
  }

  /** Adds a block of code, whose lines stay lines. */
  addCodeBlock(words: Words): void {
    this.#add(words, codeBlockStretches, '\n')
  }

  addLineBreak(position: Position | undefined): void {
    this.#add({value: '\n', position}, lineBreakStretches, '\n')
  }

  #add({value, position}: Words, align: Align, lineEnding: string): void {
    const lines = value.includes('\r') ? value.replace(/\r\n?/g, '\n') : value
    const shift = this.#text.length
    this.#text += lineEnding === '\n' ? lines : lines.replaceAll('\n', lineEnding)
    const start = position?.start.offset
    const end = position?.end.offset
    if (start === undefined || end === undefined) return
    for (const stretch of align(lines, this.#file, {start, end})) {
      this.#stretches.push({...stretch, index: stretch.index + shift})
    }
  }

  passage(kind: Passage['kind'], place: Position): Passage {
    return {
      kind,
      text: this.#text,
      place,
      stretches: this.#stretches,
      lineStarts: lineStartsOf(this.#file, place),
    }
  }
}
