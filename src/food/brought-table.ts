import {valueWithoutFibre} from './carbohydrate.ts'
import {aisles, type Food} from './food.ts'
import type {Macros} from './nearest-foods.ts'
import {convertedWidth} from './rounding/converted.ts'
import {columnOfNutrient} from './table-columns.ts'
import {type TableFigure, tableFigures} from './table-figures.ts'
import type {HeaderColumn} from './table-header.ts'

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

/** One row that has been checked. */
export interface TableRow {
  /** In the order of the cells. */
  readonly columns: readonly HeaderColumn[]
  /** Without its line end. */
  readonly line: string
}

// Shared by all: a table has thousands of foods, and says none of this.
const nothing: ReadonlySet<never> = new Set<never>()
const noMeasures: ReadonlyMap<string, number> = new Map()
const noWords: readonly never[] = []

/**
 * A row as a food. The table says nothing of allergens or of what the food is made from, and
 * nothing of how it comes. Its line is cut into cells once more when a figure is asked for.
 */
export function broughtFood(row: TableRow, table: string): Food {
  const cells = cellsOfRow(row)
  const id = cells('id') ?? ''
  const name = cells('name') ?? ''
  const group = cells('group')?.toLowerCase()
  const refuse = numberOf(cells('refuse_pct'))
  const ash = numberOf(cells('ash_g'))
  return {
    id: `${table}/${id}`,
    name,
    also: noWords,
    aisle: aisles.find((aisle) => aisle === group) ?? 'other',
    from: noWords,
    traits: nothing,
    contains: nothing,
    mayContain: nothing,
    allergensKnown: false,
    refuseRatio: (refuse?.value ?? 0) / 100,
    measures: noMeasures,
    per100g: rowFigures(row, name),
    ...(ash && {ashGrams: ash.value}),
    provenance: {kind: 'table', table, row: id},
  }
}

function rowFigures(row: TableRow, name: string): Food['per100g'] {
  let cells: Cells | undefined
  return tableFigures((nutrient) => {
    cells ??= cellsOfRow(row)
    const column = columnOfNutrient[nutrient]
    const figure = column && numberOf(cells(column))
    const serving = numberOf(cells('serving_g'))?.value ?? 0
    return figure && serving > 0
      ? {...figure, width: convertedWidth(nutrient, figure, serving)}
      : figure
  }, name)
}

/** The macros of a row alone: of hundreds of thousands only a few become foods. */
export function rowMacros(row: TableRow): Macros {
  const cells = cellsOfRow(row)
  const value = (column: HeaderColumn): number | undefined => numberOf(cells(column))?.value
  const [carbohydrate, fibre] = [value('carbohydrate_g'), value('fibre_g')]
  return {
    protein: value('protein_g'),
    fat: value('fat_g'),
    carbohydrate,
    availableCarbohydrate: valueWithoutFibre(carbohydrate, fibre),
  }
}

/** The cell of a column; undefined where the table has no such column. */
type Cells = (column: HeaderColumn) => string | undefined

function cellsOfRow({columns, line}: TableRow): Cells {
  const cells = line.split('\t')
  return (column) => cells[columns.indexOf(column)]?.trim()
}

/** A checked cell; its last written digit is the step it was rounded to. Blank is unknown. */
function numberOf(cell = ''): TableFigure | undefined {
  if (cell === '') return undefined
  const point = cell.indexOf('.')
  const decimals = point === -1 ? 0 : cell.length - point - 1
  return {value: Number(cell), increment: 10 ** -decimals}
}
