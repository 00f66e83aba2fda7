import {rememberedText} from '../../units/remembered.ts'
import {glyphs, marks, standIns} from './glyphs.ts'

/** A place in a picture, in its own pixels, to the right and down. */
export interface Point {
  readonly x: number
  readonly y: number
}

/** Lines of points, joined in order. */
export type Strokes = readonly (readonly Point[])[]

/** Rows from the top of a capital to the line it stands on. */
export const capitalRows = 10
const gapColumns = 2.4
const spaceColumns = 3.2
/** Marks end this far above a letter. */
const markRows = 2.6

/** A letter with its marks, in columns and rows: `capitalRows` high where it is a capital. */
export interface Letter {
  readonly strokes: Strokes
  readonly columns: number
}

/** Whether there is a letter for every sign of a text; one in another script is not written at all. */
export function canWrite(text: string): boolean {
  return [...plain(text)].every((sign) => glyphs.has(sign) || marks.has(sign))
}

/** @param capitalHeight in pixels @returns pixels from the first letter to the last */
export function textWidth(text: string, capitalHeight: number): number {
  const columns = lettersOf(text).reduce((sum, letter) => sum + letter.columns + gapColumns, 0)
  return (Math.max(0, columns - gapColumns) * capitalHeight) / capitalRows
}

/** A letter of a text, and where it begins. */
export interface PlacedLetter {
  readonly letter: Letter
  /** From the first letter, in columns. */
  readonly column: number
}

/** The letters of a text, one behind the other. */
export function placedLetters(text: string): readonly PlacedLetter[] {
  let column = 0
  return lettersOf(text).map((letter) => {
    const placed = {letter, column}
    column += letter.columns + gapColumns
    return placed
  })
}

function plain(text: string): string {
  const replaced = [...text].map((sign) => standIns[sign] ?? sign).join('')
  return [...replaced.normalize('NFKD')].map((sign) => standIns[sign] ?? sign).join('')
}

function lettersOf(text: string): readonly Letter[] {
  return (plain(text).match(/\P{Mark}\p{Mark}*/gu) ?? []).map(letterOf)
}

/** By a sign and its marks: a cookbook writes the same letters again and again. */
const letterOf = rememberedText((signs): Letter => {
  if (signs === ' ') return {strokes: [], columns: spaceColumns}
  const [sign = '', ...above] = signs
  const strokes = strokesOf(glyphs.get(sign) ?? '')
  const plainLetter = {strokes, columns: Math.max(0, ...strokes.flat().map(({x}) => x))}
  return above.reduce((bare, mark) => withMark(bare, marks.get(mark) ?? ''), plainLetter)
})

function withMark({strokes, columns}: Letter, mark: string): Letter {
  if (mark === '') return {strokes, columns}
  const top = Math.min(...strokes.flat().map(({y}) => y))
  const drawn = strokesOf(mark)
  const width = Math.max(...drawn.flat().map(({x}) => x))
  const moved = drawn.map((stroke) =>
    stroke.map(({x, y}) => ({x: x + (columns - width) / 2, y: y + top - markRows})),
  )
  return {strokes: [...strokes, ...moved], columns}
}

function strokesOf(drawn: string): Strokes {
  return drawn === '' ? [] : drawn.split('/').map((line) => rounded(line.split(' ').map(pointOf)))
}

interface Corner extends Point {
  readonly isSharp: boolean
}

function pointOf(text: string): Corner {
  const [x = '0', y = '0'] = text
  return {x: Number.parseInt(x, 36), y: Number.parseInt(y, 36), isSharp: text.endsWith('*')}
}

/** Cuts the corners off a line, twice over, but for the sharp ones (Chaikin, 1974; from memory). */
function rounded(line: readonly Corner[]): readonly Point[] {
  return cut(cut(line))
}

function cut(line: readonly Corner[]): readonly Corner[] {
  return line.flatMap((corner, index) => {
    const [before, after] = [line[index - 1], line[index + 1]]
    if (corner.isSharp || !before || !after) return [corner]
    return [between(corner, before), between(corner, after)]
  })
}

/** A quarter of the way; half of it, where the other end is cut off as well, leaves a straight piece. */
function between(from: Point, to: Point): Corner {
  return {x: from.x + (to.x - from.x) / 4, y: from.y + (to.y - from.y) / 4, isSharp: false}
}
