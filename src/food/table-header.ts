import {nearest} from '../units/nearest.ts'
import {type TableColumn, tableColumns} from './table-columns.ts'
import {type Cell, cellsOf, placeOf, type TableFault, type TableLine} from './table-fault.ts'

/** The two columns every table begins with. */
const firstColumns = ['id', 'name'] as const

export type HeaderColumn = (typeof firstColumns)[number] | TableColumn

/**
 * The columns a header line names, in writing order.
 * @returns undefined where the rows below could be misread; `faults` then has the reason
 */
export function readHeader(
  line: TableLine,
  faults: TableFault[],
): readonly HeaderColumn[] | undefined {
  const before = faults.length
  const columns: HeaderColumn[] = []
  const cells = cellsOf(line)
  for (const [index, cell] of cells.entries()) {
    const column = knownColumn(cell.text)
    const wanted = firstColumns[index]
    if (wanted !== undefined && cell.text !== wanted) faults.push(notFirst(line, cell, index))
    else if (column === undefined) faults.push(unknownColumn(line, cell))
    else if (columns.includes(column)) faults.push(twice(line, cell))
    else columns.push(column)
  }
  if (cells.length < firstColumns.length)
    faults.push(notFirst(line, nothingMore(line), cells.length))
  return faults.length === before ? columns : undefined
}

/** Where a cell that is not there would begin. */
function nothingMore({text}: TableLine): Cell {
  return {text: '', from: text.length}
}

function knownColumn(text: string): HeaderColumn | undefined {
  return [...firstColumns, ...tableColumns].find((column) => column === text)
}

function notFirst(line: TableLine, cell: Cell, index: number): TableFault {
  const expected = firstColumns[index] ?? ''
  return {
    kind: 'missing',
    place: placeOf(line, cell),
    actual: cell.text,
    expected: [expected],
    reason: `Column ${index + 1} of the table is ${cell.text ? `\`${cell.text}\`` : 'missing'}, expected \`${expected}\``,
    note: 'The first line of a table names its columns, parted by tabs: `id`, `name`, then figures.',
  }
}

function unknownColumn(line: TableLine, cell: Cell): TableFault {
  const meant = nearest(cell.text, tableColumns)
  return {
    kind: 'unknown column',
    place: placeOf(line, cell),
    actual: cell.text,
    reason: `Unknown column \`${cell.text}\`, expected ${meant ? `\`${meant}\`` : `one of ${tableColumns.map((column) => `\`${column}\``).join(', ')}`}`,
    ...(meant && {expected: [meant]}),
    note: 'Take a column out that has no place here; figures are per 100 g edible portion, in the unit the column names.',
  }
}

function twice(line: TableLine, cell: Cell): TableFault {
  return {
    kind: 'duplicate',
    place: placeOf(line, cell),
    actual: cell.text,
    reason: `Column \`${cell.text}\` stands in the table twice, expected once`,
  }
}
