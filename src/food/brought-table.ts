import {aisles, type Food} from './food.ts'
import {columnOfNutrient, type TableColumn} from './table-columns.ts'
import {type TableFigure, tableFigures} from './table-figures.ts'

/** A composition table that a cookbook brings. */
export interface BroughtTable {
  /** The first part of its foods' ids. */
  readonly name: string
  /** How many foods can be named. */
  readonly size: number
  /** @param id as the table has it, case aside */
  food(id: string): Food | undefined
  /** Every food that can be named, in the table's order. */
  foods(): Iterable<Food>
}

/** One row, cell by cell; undefined where the table has no such column. */
export interface TableRow {
  readonly id: string
  readonly name: string
  cell(column: TableColumn): string | undefined
}

/**
 * A row as a food. The table says nothing of allergens or of what the food is made from, and
 * nothing of how it comes.
 */
export function broughtFood(row: TableRow, table: string): Food {
  const group = row.cell('group')?.toLowerCase()
  const refuse = numberOf(row.cell('refuse_pct'))
  const ash = numberOf(row.cell('ash_g'))
  return {
    id: `${table}/${row.id}`,
    name: row.name,
    also: [],
    aisle: aisles.find((aisle) => aisle === group) ?? 'other',
    from: [],
    traits: new Set(),
    contains: new Set(),
    mayContain: new Set(),
    allergensKnown: false,
    refuseRatio: (refuse?.value ?? 0) / 100,
    measures: new Map(),
    per100g: tableFigures((nutrient) => {
      const column = columnOfNutrient[nutrient]
      return column && numberOf(row.cell(column))
    }, row.name),
    ...(ash && {ashGrams: ash.value}),
    provenance: {kind: 'table', table, row: row.id},
  }
}

/** A checked cell; its last written digit is the step it was rounded to. Blank is unknown. */
function numberOf(cell: string | undefined): TableFigure | undefined {
  const written = cell?.trim() ?? ''
  if (written === '') return undefined
  const point = written.indexOf('.')
  const decimals = point === -1 ? 0 : written.length - point - 1
  return {value: Number(written), increment: 10 ** -decimals}
}
