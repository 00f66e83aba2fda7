import {roundedText} from '../../units/format-figure.ts'
import {nearest} from '../../units/nearest.ts'
import {type Parsed, parsed, refused} from '../../units/parsed.ts'
import {kilojoulesPerKilocalorie} from '../nutrients.ts'
import type {HeaderColumn} from '../table-header.ts'
import {rowFault} from '../table-row.ts'
import type {DelimitedRow} from './delimited-rows.ts'
import type {MappedColumn, MappedUnit, TableMapping} from './table-mapping.ts'

/** Turns a row of a published table into a line of tables/*.tsv, or says why it cannot. */
export type MapRow = (row: DelimitedRow) => Parsed<string>

/** Grams in one of each unit of weight; energy is apart. */
const gramsIn: Readonly<Partial<Record<MappedUnit, number>>> = {g: 1, mg: 1e-3, µg: 1e-6}

/**
 * @param header of the published table
 * @returns the mapper, or which heading of the mapping the table does not have
 */
export function rowMapper(mapping: TableMapping, header: DelimitedRow): Parsed<MapRow> {
  const headings = header.cells.map((cell) => cell.trim())
  for (const {from} of mapping.columns) {
    for (const heading of from) {
      if (headings.includes(heading)) continue
      const meant = nearest(heading, headings)
      return refused(
        `a column \`${heading}\` in line ${header.line}, as the mapping has it${meant ? `; there is \`${meant}\`` : ''}`,
      )
    }
  }
  const columns = mapping.columns.map(({column}) => column)
  return parsed((row) => {
    if (row.cells.length !== headings.length) {
      return refused(`\`${headings.length}\` cells, not \`${row.cells.length}\``)
    }
    const cells: string[] = []
    for (const column of mapping.columns) {
      const written = column.from.map((each) => row.cells[headings.indexOf(each)]?.trim() ?? '')
      const cell = isWords(column.column)
        ? parsed(written.join(' ').replace(/\s+/g, ' '))
        : figureCell(written, column, mapping)
      if (!cell.ok) return refused(`${cell.expected} as \`${column.from.join(' + ')}\``)
      cells.push(cell.value)
    }
    const text = cells.join('\t')
    const fault = rowFault({text, line: row.line, start: 0}, columns)
    return fault ? refused(`other figures: ${fault.reason}`) : parsed(text)
  })
}

function isWords(column: HeaderColumn): column is 'id' | 'name' | 'group' {
  return column === 'id' || column === 'name' || column === 'group'
}

/** A figure and how many digits of it stand behind the point. */
interface Digits {
  readonly value: number
  readonly decimals: number
}

function figureCell(
  written: readonly string[],
  {column, unit, zeroIsUnknown}: MappedColumn,
  mapping: TableMapping,
): Parsed<string> {
  const figures: Digits[] = []
  for (const cell of written) {
    if (cell === '' || mapping.unknown.has(cell)) return parsed('')
    const digits = digitsOf(cell, mapping)
    if (!digits) return refused(`a number, not \`${cell}\`,`)
    figures.push(digits)
  }
  const value = figures.reduce((sum, figure) => sum + figure.value, 0)
  if (value === 0 && zeroIsUnknown) return parsed('')
  const factor = unit === undefined ? 1 : factorTo(column, unit)
  if (factor === undefined) return refused(`a unit of \`${column}\`, not \`${unit}\`,`)
  // A sum is as fine as its coarsest part; the step of a product is a power of ten, not finer.
  const decimals =
    Math.min(...figures.map((figure) => figure.decimals)) - Math.ceil(Math.log10(factor))
  return parsed(roundedText(value * factor, Math.max(0, decimals)))
}

function digitsOf(cell: string, {decimals, trace}: TableMapping): Digits | undefined {
  if (trace.has(cell)) return {value: 0, decimals: 0}
  const text = decimals === 'comma' ? cell.replace(',', '.') : cell
  if (!/^(?:\d+\.?\d*|\.\d+)$/.test(text)) return undefined
  return {
    value: Number(text),
    decimals: text.includes('.') ? text.length - text.indexOf('.') - 1 : 0,
  }
}

/** How many of the column's unit one of `unit` is; undefined for energy as weight and the like. */
function factorTo(column: HeaderColumn, unit: MappedUnit): number | undefined {
  if (column === 'energy_kcal') {
    if (unit === 'kcal') return 1
    return unit === 'kJ' ? 1 / kilojoulesPerKilocalorie : undefined
  }
  const own = column.endsWith('_mg') ? 'mg' : column.endsWith('_ug') ? 'µg' : 'g'
  const [from, to] = [gramsIn[unit], gramsIn[own]]
  return from === undefined || to === undefined ? undefined : from / to
}
