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

/** Ash is no nutrient of pages: it only closes the balance of mass. */
function printed(row: CoreRow, nutrient: Nutrient | 'ash'): TableFigure | undefined {
  const index = columnOf.get(nutrient)
  const column = index === undefined ? undefined : coreColumns[index]
  const value = index === undefined ? undefined : row.figures[index]
  return column && typeof value === 'number' ? {value, increment: column.increment} : undefined
}
