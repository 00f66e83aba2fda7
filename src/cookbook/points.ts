import type {Point, Position} from 'unist'

/** Turns offsets in one text into points: lines and columns from 1, as messages give them. */
export type PointAt = (offset: number) => Point

/** @param text a whole file; its lines are counted when the first point is asked for */
export function pointsOf(text: string): PointAt {
  let starts: readonly number[] | undefined
  return (offset) => {
    starts ??= [0, ...laterLineStarts(text, 0, text.length)]
    return pointAmong(starts, 1, offset)
  }
}

/** The range between two offsets. */
export function placeBetween(pointAt: PointAt, start: number, end: number): Position {
  return {start: pointAt(start), end: pointAt(end)}
}

/**
 * Offsets at which lines begin, after the one that holds `from`; `\n`, `\r\n` and a lone `\r` end
 * a line, as in Markdown.
 */
export function laterLineStarts(text: string, from: number, to: number): readonly number[] {
  const starts: number[] = []
  for (let offset = from; offset < to; offset++) {
    const code = text.charCodeAt(offset)
    if (
      code === lineFeed ||
      (code === carriageReturn && text.charCodeAt(offset + 1) !== lineFeed)
    ) {
      starts.push(offset + 1)
    }
  }
  return starts
}

const lineFeed = 10
const carriageReturn = 13

/**
 * The point of an offset among lines whose beginnings are known.
 * @param firstLine number of the line that begins at `starts[0]`
 */
export function pointAmong(starts: readonly number[], firstLine: number, offset: number): Point {
  let low = 0
  let high = starts.length
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((starts[middle] ?? 0) <= offset) low = middle
    else high = middle
  }
  return {line: firstLine + low, column: offset - (starts[low] ?? 0) + 1, offset}
}

/**
 * Offsets at which the lines begin that a place stands on, its first line included: with them a
 * range inside the place needs no count of the whole file.
 */
export function lineStartsOf(text: string, {start, end}: Position): readonly number[] {
  const from = start.offset ?? 0
  return [from - start.column + 1, ...laterLineStarts(text, from, end.offset ?? from)]
}

/** The range between two offsets that lie inside a place. */
export function placeWithin(text: string, place: Position, start: number, end: number): Position {
  const starts = lineStartsOf(text, place)
  return placeBetween((offset) => pointAmong(starts, place.start.line, offset), start, end)
}
