import {type Parsed, parsed, refused} from '../../units/parsed.ts'
import type {HeaderColumn} from '../table-header.ts'
import {rowFault} from '../table-row.ts'
import {fdcColumns, fdcNutrients} from './fdc-nutrients.ts'

/** A food of FoodData Central, as far as a brought table has room for it. */
export interface FdcFood {
  /** `fdc_id`, digits. */
  readonly id: string
  readonly name: string
  /** Per 100 g (or 100 ml, as `serving` says), by id of the nutrient, as printed. */
  readonly amounts: ReadonlyMap<string, string>
  readonly serving?: Serving
}

/** What a packet calls a serving. */
export interface Serving {
  readonly column: 'serving_g' | 'serving_ml'
  /** As printed. */
  readonly amount: string
}

/** Columns of the table that Foundation and SR Legacy foods come into. */
export const fdcTableColumns: readonly HeaderColumn[] = ['id', 'name', ...fdcColumns]

/** Columns of the table that branded foods come into. */
export const brandedColumns: readonly HeaderColumn[] = [
  'id',
  'name',
  'serving_g',
  'serving_ml',
  ...fdcColumns,
]

/** Carbohydrate, by difference. */
const byDifference = '1005'

/** @returns the amount as a cell has it; what was worked out by difference and is below 0 is none */
export function fdcAmount(nutrient: string, written: string): Parsed<string> {
  if (nutrient === byDifference && /^-[\d.]+$/.test(written)) return parsed('0')
  if (/^(?:\d+\.?\d*|\.\d+)$/.test(written)) return parsed(written)
  return refused(`a number as \`amount\`, not \`${written}\``)
}

/** Units of weight and volume as the downloads write them; all from memory. */
const servingColumns: ReadonlyMap<string, Serving['column']> = new Map([
  ['g', 'serving_g'],
  ['gm', 'serving_g'],
  ['grm', 'serving_g'],
  ['ml', 'serving_ml'],
  ['mlt', 'serving_ml'],
])

/**
 * The serving of a branded food. Figures are per 100 ml where it is counted in millilitres, so a
 * unit nobody knows is refused.
 * @returns undefined where no serving is told
 */
export function fdcServing(size: string, unit: string): Parsed<Serving | undefined> {
  if (unit === '' && (size === '' || Number(size) === 0)) return parsed(undefined)
  const column = servingColumns.get(unit.toLowerCase())
  if (column === undefined)
    return refused(`\`g\` or \`ml\` as unit of the serving, not \`${unit}\``)
  if (!/^(?:\d+\.?\d*|\.\d+)$/.test(size)) {
    return refused(`a number as serving, not \`${size}\``)
  }
  return parsed({column, amount: size})
}

/** The food as a line of a table with the columns given, or what is wrong with its figures. */
export function fdcLine(food: FdcFood, columns: readonly HeaderColumn[]): Parsed<string> {
  const text = columns.map((column) => cellOf(food, column)).join('\t')
  const fault = rowFault({text, line: 1, start: 0}, columns)
  return fault ? refused(`other figures of \`${food.name}\`: ${fault.reason}`) : parsed(text)
}

function cellOf({id, name, amounts, serving}: FdcFood, column: HeaderColumn): string {
  if (column === 'id') return id
  if (column === 'name') return name
  if (column === serving?.column) return serving.amount
  for (const nutrient of nutrientsOf.get(column) ?? []) {
    const amount = amounts.get(nutrient)
    if (amount !== undefined) return amount
  }
  return ''
}

/** Ids of the nutrients that give a column, the first that a food has counts. */
const nutrientsOf: ReadonlyMap<HeaderColumn, readonly string[]> = new Map(
  fdcColumns.map((column) => [
    column,
    [...fdcNutrients].flatMap(([id, nutrient]) => (nutrient.column === column ? [id] : [])),
  ]),
)
