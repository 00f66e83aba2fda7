import type {Point, Strokes} from './stroke-text.ts'

/** Shades between paper and ink, both included. */
export const shades = 16

/** A picture in one ink: every pixel a shade from 0, the paper, to 15, the ink. */
export class Canvas {
  readonly width: number
  readonly height: number
  readonly pixels: Uint8Array

  constructor(width: number, height: number) {
    this.width = width
    this.height = height
    this.pixels = new Uint8Array(width * height)
  }

  /** The same drawing once more, to go on from. */
  copy(): Canvas {
    const copy = new Canvas(this.width, this.height)
    copy.pixels.set(this.pixels)
    return copy
  }

  /** @param thickness of the round pen, in pixels */
  draw(strokes: Strokes, thickness: number, shade = shades - 1): void {
    for (const stroke of strokes) {
      for (const [index, from] of stroke.entries()) {
        const to = stroke[index + 1]
        if (to !== undefined) this.#line(from, to, thickness / 2, shade)
      }
    }
  }

  /** Lays a drawing over this one, its beginning at a place; the darker shade stays. */
  stamp({canvas, left, line}: Stamp, x: number, y: number): void {
    const [first, end] = [Math.max(0, left - x), Math.min(canvas.width, this.width - x + left)]
    for (let row = 0; row < canvas.height; row++) {
      const from = row * canvas.width
      const to = (y - line + row) * this.width + x - left
      for (let column = first; column < end; column++) {
        const shade = canvas.pixels[from + column] ?? 0
        if (shade > (this.pixels[to + column] ?? 0)) this.pixels[to + column] = shade
      }
    }
  }

  fill(left: number, top: number, width: number, height: number, shade = shades - 1): void {
    for (let y = top; y < top + height; y++) {
      const row = y * this.width
      this.pixels.fill(shade, row + left, row + left + width)
    }
  }

  /** A pixel is as dark as the pen covers it: measured from its middle to the line. */
  #line(from: Point, to: Point, radius: number, shade: number): void {
    const [top, bottom] = span(from.y, to.y, radius, this.height)
    const [along, down] = [to.x - from.x, to.y - from.y]
    const square = along ** 2 + down ** 2
    for (let y = top; y < bottom; y++) {
      const dy = y + 0.5 - from.y
      const [start, end] = reach(dy, down, radius)
      const [left, right] = span(from.x + start * along, from.x + end * along, radius, this.width)
      for (let x = left; x < right; x++) {
        const dx = x + 0.5 - from.x
        const nearest = square === 0 ? 0 : share((dx * along + dy * down) / square)
        const distance = Math.sqrt((dx - nearest * along) ** 2 + (dy - nearest * down) ** 2)
        const covered = radius + 0.5 - distance
        if (covered <= 0) continue
        const dark = Math.round(shade * Math.min(1, covered))
        const place = y * this.width + x
        if (dark > (this.pixels[place] ?? 0)) this.pixels[place] = dark
      }
    }
  }
}

/** Pixels that a pen may touch between two places, in the order of the axis. */
function span(one: number, other: number, radius: number, end: number): readonly [number, number] {
  const first = Math.floor(Math.min(one, other) - radius - 1)
  const last = Math.ceil(Math.max(one, other) + radius + 1)
  return [Math.max(0, first), Math.min(end, last)]
}

/**
 * The part of a line, from 0 to 1, that is near enough to a row to touch it.
 * @param above of the row's middle over the line's beginning, in pixels
 * @param down from the line's beginning to its end, in pixels
 */
function reach(above: number, down: number, radius: number): readonly [number, number] {
  if (down === 0) return [0, 1]
  const [one, other] = [(above - radius - 1) / down, (above + radius + 1) / down]
  return [share(Math.min(one, other)), share(Math.max(one, other))]
}

function share(value: number): number {
  return Math.min(1, Math.max(0, value))
}

/** A small drawing to be laid over others. */
export interface Stamp {
  readonly canvas: Canvas
  /** The column of it that comes to the place it is laid at. */
  readonly left: number
  /** The row of it that comes there. */
  readonly line: number
}
