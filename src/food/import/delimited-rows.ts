/** One row of a delimited text. */
export interface DelimitedRow {
  readonly cells: readonly string[]
  /** Line of the file it begins on, from 1. */
  readonly line: number
}

/** Reads a delimited text piece by piece, holding no more than one row. */
export interface DelimitedReader {
  /** The rows that are whole after another piece of the text. */
  push(text: string): Iterable<DelimitedRow>
  /** The last row, where the text does not end in a line end. */
  end(): DelimitedRow | undefined
  /** The line on which a quote was opened that nobody has closed. */
  openQuote(): number | undefined
}

/**
 * Cells in double quotes may hold the delimiter, line ends and doubled quotes (RFC 4180, 2); a
 * quote inside a cell that does not begin with one stands for itself.
 */
export function delimitedReader(delimiter: string): DelimitedReader {
  let cells: string[] = []
  let cell = ''
  let state: 'start' | 'plain' | 'quoted' | 'quote in quoted' = 'start'
  let [line, rowLine, quoteLine] = [1, 1, 1]

  const endCell = (): void => {
    cells.push(cell)
    cell = ''
    state = 'start'
  }
  const endRow = (): DelimitedRow => {
    // A carriage return belongs to the line end.
    if (state !== 'quote in quoted' && cell.endsWith('\r')) cell = cell.slice(0, -1)
    endCell()
    const row = {cells, line: rowLine}
    cells = []
    return row
  }
  return {
    *push(text) {
      for (const letter of text) {
        if (letter === '\n') line++
        if (state === 'quoted') {
          if (letter === '"') state = 'quote in quoted'
          else cell += letter
        } else if (letter === '"' && state === 'quote in quoted') {
          cell += letter
          state = 'quoted'
        } else if (letter === '"' && state === 'start') {
          state = 'quoted'
          quoteLine = line
        } else if (letter === delimiter) endCell()
        else if (letter === '\n') {
          yield endRow()
          rowLine = line
        } else if (state !== 'quote in quoted' || letter !== '\r') {
          cell += letter
          if (state === 'start') state = 'plain'
        }
      }
    },
    end: () => (cells.length > 0 || state !== 'start' ? endRow() : undefined),
    openQuote: () => (state === 'quoted' ? quoteLine : undefined),
  }
}
