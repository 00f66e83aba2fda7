import {glyphs, marks, standIns} from './glyphs.ts'

/** A place in a picture, in its own pixels, to the right and down. */
export interface Point {
  readonly x: number
  readonly y: number
}

/** Lines of points, joined in order. */
export type Strokes = readonly (readonly Point[])[]

/** Rows from the top of a capital to the line it stands on. */
const capitalRows = 10
const gapColumns = 2.4
const spaceColumns = 3.2
/** Marks end this far above a letter. */
const markRows = 2.6

interface Letter {
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

/**
 * The strokes of a text.
 * @param at where its first letter begins on the line it stands on
 * @param capitalHeight in pixels
 */
export function textStrokes(text: string, at: Point, capitalHeight: number): Strokes {
  const scale = capitalHeight / capitalRows
  const strokes: Point[][] = []
  let column = 0
  for (const letter of lettersOf(text)) {
    for (const stroke of letter.strokes) {
      strokes.push(
        stroke.map(({x, y}) => ({
          x: at.x + (column + x) * scale,
          y: at.y + (y - capitalRows) * scale,
        })),
      )
    }
    column += letter.columns + gapColumns
  }
  return strokes
}

function plain(text: string): string {
  const replaced = [...text].map((sign) => standIns[sign] ?? sign).join('')
  return [...replaced.normalize('NFKD')].map((sign) => standIns[sign] ?? sign).join('')
}

function lettersOf(text: string): readonly Letter[] {
  const letters: Letter[] = []
  for (const sign of plain(text)) {
    const mark = marks.get(sign)
    const last = letters.at(-1)
    if (mark !== undefined && last !== undefined) letters.splice(-1, 1, withMark(last, mark))
    else letters.push(letterOf(sign))
  }
  return letters
}

/** Letters drawn so far: a cookbook writes the same ones again and again. */
const drawnLetters = new Map<string, Letter>([[' ', {strokes: [], columns: spaceColumns}]])

function letterOf(sign: string): Letter {
  const known = drawnLetters.get(sign)
  if (known) return known
  const strokes = strokesOf(glyphs.get(sign) ?? '')
  const letter = {strokes, columns: Math.max(0, ...strokes.flat().map(({x}) => x))}
  drawnLetters.set(sign, letter)
  return letter
}

function withMark({strokes, columns}: Letter, mark: string): Letter {
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
