import {type BroughtTable, broughtFood} from './brought-table.ts'
import type {Food} from './food.ts'
import {nameKey} from './name-key.ts'
import {type Cell, cellsOf, placeOf, type TableFault, type TableLine} from './table-fault.ts'
import {type HeaderColumn, readHeader} from './table-header.ts'
import {rowFault, soundRow, volumeFault} from './table-row.ts'

/** Faults told one by one; a column in the wrong unit has one in every row. */
const mostFaults = 20

export interface Imported {
  readonly table: BroughtTable
  readonly faults: readonly TableFault[]
}

/** A table's text, understood as far as finding a row takes. */
interface Opened {
  readonly name: string
  readonly text: string
  readonly columns: readonly HeaderColumn[]
  /** Offset of each sound row, by the key of its id. */
  readonly rows: ReadonlyMap<string, number>
}

/**
 * Reads a table of tab-separated values: a header that begins with `id` and `name`, then one food
 * a line. Every cell is checked, but the text is kept and a row becomes a food only when somebody
 * asks for it, so that a national table costs milliseconds. A row with a fault is left out and told.
 * @param text without a byte order mark
 * @param name first part of the foods' ids: the file's name without `.tsv`
 */
export function importTable(text: string, name: string): Imported {
  const faults: TableFault[] = []
  const columns = readHeader(lineAt(text, 0, 1), faults)
  const rows = columns ? soundRows(text, columns, faults) : new Map<string, number>()
  return {table: openedTable({name, text, columns: columns ?? [], rows}), faults}
}

/** Offsets of the rows that can be used, by the key of their id; says what is wrong with others. */
function soundRows(
  text: string,
  columns: readonly HeaderColumn[],
  faults: TableFault[],
): ReadonlyMap<string, number> {
  const rows = new Map<string, number>()
  const sound = soundRow(columns)
  let untold = 0
  let number = 2
  for (
    let start = nextLine(text, 0);
    start < text.length;
    start = nextLine(text, start), number++
  ) {
    sound.lastIndex = start
    const plainId = sound.exec(text)?.[1]
    const key = plainId === undefined ? undefined : nameKey(plainId)
    if (key !== undefined && !rows.has(key)) {
      rows.set(key, start)
      continue
    }
    const line = lineAt(text, start, number)
    if (line.text === '') continue
    const fault = rowFault(line, columns) ?? volumeFault(line, columns) ?? nameFault(line, rows)
    if (fault === undefined) continue
    if (faults.length < mostFaults) faults.push(fault)
    else untold++
  }
  if (untold > 0) faults.push(moreFaults(text, untold))
  return rows
}

/** Puts a row with sound figures on the index, or says why its id or name will not do. */
function nameFault(line: TableLine, rows: Map<string, number>): TableFault | undefined {
  const [id = nothing, name = nothing] = cellsOf(line)
  const key = nameKey(id.text)
  if (key === '' || name.text === '') {
    const [column, cell] = key === '' ? ['id', id] : ['name', name]
    return {
      kind: 'missing',
      place: placeOf(line, cell),
      reason: `The row has no \`${column}\`, expected one in every row`,
    }
  }
  if (rows.has(key)) {
    return {
      kind: 'duplicate',
      place: placeOf(line, id),
      actual: id.text,
      reason: `Id \`${id.text}\` stands in the table twice, expected once`,
      note: 'The first row counts, this one is left out.',
    }
  }
  rows.set(key, line.start)
  return undefined
}

const nothing: Cell = {text: '', from: 0}

function moreFaults(text: string, count: number): TableFault {
  return {
    kind: 'unreadable',
    place: placeOf(lineAt(text, 0, 1), nothing),
    reason: `\`${count}\` more rows of the table cannot be used and are left out`,
    note: 'When every row has the same fault, look at the header first.',
  }
}

function openedTable({name, text, columns, rows}: Opened): BroughtTable {
  const foods = new Map<number, Food>()
  const onceAt = (start: number): Food => {
    const food = foods.get(start) ?? foodAt(start)
    foods.set(start, food)
    return food
  }
  return {
    name,
    size: rows.size,
    food(id) {
      const start = rows.get(nameKey(id))
      return start === undefined ? undefined : onceAt(start)
    },
    *foods() {
      for (const start of rows.values()) yield onceAt(start)
    },
  }

  function foodAt(start: number): Food {
    return broughtFood({columns, line: lineAt(text, start, 1).text}, name)
  }
}

function lineAt(text: string, start: number, line: number): TableLine {
  return {text: text.slice(start, lineEnd(text, start)), line, start}
}

/** Offset behind the last character of the line that holds `from`; a carriage return is no part of it. */
function lineEnd(text: string, from: number): number {
  const newline = text.indexOf('\n', from)
  const end = newline === -1 ? text.length : newline
  return end > from && text[end - 1] === '\r' ? end - 1 : end
}

function nextLine(text: string, from: number): number {
  const newline = text.indexOf('\n', from)
  return newline === -1 ? text.length : newline + 1
}
