import {remembered} from '../../units/remembered.ts'
import {Canvas, type Stamp} from './canvas.ts'
import {capitalRows, type Letter, type Point, placedLetters} from './stroke-text.ts'

/** A letter begins at a quarter of a pixel, so that gaps look even and drawn letters can be used again. */
const phases = 4

export interface Pen {
  /** Height of a capital, in pixels. */
  readonly size: number
  /** In pixels. */
  readonly thickness: number
}

/** Writes a text. @param at where its first letter begins on the line it stands on */
export function writeText(canvas: Canvas, text: string, at: Point, pen: Pen): void {
  const scale = pen.size / capitalRows
  for (const {letter, column} of placedLetters(text)) {
    const x = Math.round((at.x + column * scale) * phases)
    const whole = Math.floor(x / phases)
    canvas.stamp(stampOf(letter, pen, x - whole * phases), whole, Math.round(at.y))
  }
}

/** Letters drawn so far, by pen and phase. */
const stampsOf = remembered((_letter: Letter) => new Map<string, Stamp>())

function stampOf(letter: Letter, pen: Pen, phase: number): Stamp {
  const stamps = stampsOf(letter)
  const key = `${pen.size} ${pen.thickness} ${phase}`
  const known = stamps.get(key)
  if (known) return known
  const stamp = drawnLetter(letter, pen, phase)
  stamps.set(key, stamp)
  return stamp
}

function drawnLetter({strokes, columns}: Letter, {size, thickness}: Pen, phase: number): Stamp {
  const scale = size / capitalRows
  const rows = strokes.flat().map(({y}) => y)
  const [highest, lowest] = [Math.min(0, ...rows), Math.max(capitalRows, ...rows)]
  const left = Math.ceil(thickness) + 1
  const line = left + Math.ceil((capitalRows - highest) * scale)
  const width = 2 * left + Math.ceil(columns * scale) + 1
  const height = line + Math.ceil((lowest - capitalRows) * scale) + left
  const canvas = new Canvas(width, height)
  const placed = strokes.map((stroke) =>
    stroke.map(({x, y}) => ({
      x: left + phase / phases + x * scale,
      y: line + (y - capitalRows) * scale,
    })),
  )
  canvas.draw(placed, thickness)
  return {canvas, left, line}
}
