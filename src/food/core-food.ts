import {type CoreRow, coreColumns} from './core-row.ts'
import type {Aisle, Food} from './food.ts'
import type {Nutrient} from './nutrients.ts'
import {type TableFigure, tableFigures} from './table-figures.ts'

const columnOf: ReadonlyMap<string, number> = new Map(
  coreColumns.map(({nutrient}, index) => [nutrient, index]),
)

/** One row of the core table as a food. */
export function coreFood(row: CoreRow, aisle: Aisle): Food {
  const {ndb, name, also, from, state, measures, factors} = row
  const ash = printed(row, 'ash')
  return {
    id: `usda/${ndb}`,
    name,
    also,
    aisle,
    from,
    state,
    traits: new Set(row.traits),
    contains: new Set(row.contains),
    mayContain: new Set(),
    allergensKnown: true,
    refuseRatio: row.refusePercent / 100,
    measures,
    ...(factors && {factors}),
    per100g: tableFigures((nutrient) => printed(row, nutrient), name),
    ...(ash && {ashGrams: ash.value}),
    provenance: {kind: 'table', table: 'USDA SR28', row: ndb},
  }
}

/** What minerals and water hold of themselves; all else in them is none, not a little. */
const inMinerals: ReadonlySet<Nutrient | 'ash'> = new Set([
  'water',
  'ash',
  'salt',
  'sodium',
  'potassium',
  'calcium',
  'iron',
])

/**
 * Ash is no nutrient of pages: it only closes the balance of mass. A printed 0 was rounded, but a
 * food that is no living thing's has no macros and no energy, so that a litre of stock is not
 * uncertain by what its water might bring.
 */
function printed(row: CoreRow, nutrient: Nutrient | 'ash'): TableFigure | undefined {
  const index = columnOf.get(nutrient)
  const column = index === undefined ? undefined : coreColumns[index]
  const value = index === undefined ? undefined : row.figures[index]
  if (column === undefined || typeof value !== 'number') return undefined
  const isNone =
    value === 0 && !inMinerals.has(nutrient) && row.from.every((origin) => origin === 'mineral')
  return {value, increment: isNone ? 0 : column.increment}
}
