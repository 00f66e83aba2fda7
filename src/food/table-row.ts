import type {FigureColumn} from './table-columns.ts'
import {type Cell, cellsOf, placeOf, type TableFault, type TableLine} from './table-fault.ts'
import type {HeaderColumn} from './table-header.ts'

/** How large the whole part of a number may be, and a pattern that takes no larger one. */
interface Limit {
  readonly largest: number
  readonly pattern: string
}

/** 100 g is all there is in 100 g. */
const grams: Limit = {largest: 100, pattern: '(?:\\d\\d?|100)'}

/** Pure fat gives 902 kcal (USDA SR28, 04002); a column of kJ is far above that. */
const kilocalories: Limit = {largest: 910, pattern: '(?:[0-8]?\\d?\\d|90\\d|910)'}

/** Of a purchase that is eaten at all, up to 99 % can be refuse. */
const percent: Limit = {largest: 99, pattern: '\\d\\d?'}

/** Grams or millilitres of a serving: what is sold at once, at most. */
const servings: Limit = {largest: 99_999, pattern: '\\d{1,5}'}

/** Milligrams and micrograms: no limit that a slip of the unit would cross for certain. */
const unlimited: Limit = {largest: Number.POSITIVE_INFINITY, pattern: '\\d+'}

function limitOf(column: FigureColumn): Limit {
  if (column === 'refuse_pct') return percent
  if (column === 'serving_g' || column === 'serving_ml') return servings
  if (column === 'energy_kcal') return kilocalories
  return column.endsWith('_g') ? grams : unlimited
}

/** Columns whose cells are words. */
function isWords(column: HeaderColumn): column is Exclude<HeaderColumn, FigureColumn> {
  return column === 'id' || column === 'name' || column === 'group'
}

/**
 * Matches a whole row, with its line end, in which every cell is what its column takes; its first
 * group is the id. One match a row checks a national table of 200,000 cells in milliseconds.
 */
export function soundRow(columns: readonly HeaderColumn[]): RegExp {
  return new RegExp(`${columns.map(cellPattern).join('\\t')}\\r?(?:\\n|$)`, 'y')
}

function cellPattern(column: HeaderColumn): string {
  if (column === 'id') return `${notBlank}(${anyText})`
  if (column === 'name') return notBlank + anyText
  if (column === 'group') return anyText
  // A row with figures per 100 ml is not plainly sound: who asks must look at it.
  if (column === 'serving_ml') return ''
  return `(?:${limitOf(column).pattern}(?:\\.\\d*)?|\\.\\d+)?`
}

const anyText = '[^\\t\\r\\n]*'
const notBlank = '(?! *(?:[\\t\\r\\n]|$))'

/** What is wrong with the cells of a row that is not plainly sound; undefined when nothing is. */
export function rowFault(
  line: TableLine,
  columns: readonly HeaderColumn[],
): TableFault | undefined {
  const cells = cellsOf(line)
  if (cells.length !== columns.length) {
    return {
      kind: 'missing',
      place: placeOf(line, {text: line.text, from: 0}),
      reason: `The row has \`${cells.length}\` cells, expected \`${columns.length}\` as in the header`,
      note: 'A figure nobody published is an empty cell between two tabs.',
    }
  }
  for (const [index, column] of columns.entries()) {
    const cell = cells[index]
    const fault = cell && cellFault(cell, column)
    if (fault) return {kind: 'unreadable', place: placeOf(line, cell), actual: cell.text, ...fault}
  }
  return undefined
}

type Reason = Pick<TableFault, 'reason' | 'expected' | 'note'>

function cellFault({text}: Cell, column: HeaderColumn): Reason | undefined {
  if (isWords(column)) return undefined
  const {largest} = limitOf(column)
  const upTo = Number.isFinite(largest) ? ` to \`${largest}\`` : ' up'
  const reason = `\`${column}\` is \`${text}\`, expected a number from \`0\`${upTo}`
  if (/^\d*,\d+$/.test(text)) {
    return {reason, expected: [text.replace(',', '.')], note: 'Decimals have a point, not a comma.'}
  }
  if (text !== '' && !/^(?:\d+\.?\d*|\.\d+)$/.test(text)) {
    return {
      reason,
      note: 'A figure nobody published is an empty cell; one too small to measure is `0`.',
    }
  }
  if (Math.floor(Number(text)) > largest) {
    return {reason, note: 'Figures are per 100 g edible portion, in the unit the column names.'}
  }
  return undefined
}

/** The figures of a row with a serving in millilitres are per 100 ml: nobody knows its weight. */
export function volumeFault(
  line: TableLine,
  columns: readonly HeaderColumn[],
): TableFault | undefined {
  const cells = cellsOf(line)
  const serving = cells[columns.indexOf('serving_ml')]
  if (serving === undefined || serving.text === '') return undefined
  return {
    kind: 'unreadable',
    place: placeOf(line, serving),
    actual: serving.text,
    reason: `Figures of \`${cells[0]?.text}\` are per 100 ml, as its serving of \`${serving.text}\` ml says, expected per 100 g`,
    note: 'Weigh 100 ml of it, and copy its label into foods.yaml with that weight.',
  }
}
