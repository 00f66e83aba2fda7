import type {Position} from 'unist'

/** Something in a table that keeps a row, or all of it, from being used. */
export interface TableFault {
  readonly kind: 'missing' | 'duplicate' | 'unknown column' | 'unreadable'
  readonly place: Position
  readonly reason: string
  readonly actual?: string
  readonly expected?: readonly string[]
  readonly note?: string
}

/** One line of a table's text. */
export interface TableLine {
  /** Without its line ending. */
  readonly text: string
  /** From 1. */
  readonly line: number
  /** Offset of the first character in the file. */
  readonly start: number
}

/** A cell and where it stands in its line. */
export interface Cell {
  readonly text: string
  /** Characters before it in the line. */
  readonly from: number
}

/** The cells of a line, blanks around them taken off. */
export function cellsOf({text}: TableLine): readonly Cell[] {
  let from = 0
  return text.split('\t').map((written) => {
    const leading = written.length - written.trimStart().length
    const cell = {text: written.trim(), from: from + leading}
    from += written.length + 1
    return cell
  })
}

/** The place of a cell in the file. */
export function placeOf({line, start}: TableLine, {text, from}: Cell): Position {
  const point = (at: number): Position['start'] => ({line, column: at + 1, offset: start + at})
  return {start: point(from), end: point(from + text.length)}
}
