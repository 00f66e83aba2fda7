import type {BroughtTable} from './brought-table.ts'
import {coreTable} from './core-table.ts'
import type {Food} from './food.ts'
import type {LabelRules} from './label-rules.ts'
import {nameKey} from './name-key.ts'

/** Foods of published tables: the built-in one and those a cookbook brings. */
export interface PublishedFoods {
  /** By a name of the core table, else by qualified id. */
  lookUp(name: string): Food | undefined
  /** Names and other names of the core table. */
  readonly names: readonly string[]
  /** Every food, those of the core table first. */
  foods(): Iterable<Food>
}

/**
 * Every published food a cookbook can name. A name without `/` only ever means a core food; an id
 * means a row of the brought table it begins with, and a built-in row where no table is brought
 * under that name or the table has no such row.
 */
export function publishedFoods(brought: Iterable<BroughtTable>, rules: LabelRules): PublishedFoods {
  const core = coreTable(rules)
  const tables = new Map([...brought].map((table) => [nameKey(table.name), table]))
  return {
    names: core.names,
    lookUp(name) {
      const slash = name.indexOf('/')
      const table = tables.get(nameKey(name.slice(0, Math.max(0, slash))))
      return table?.food(name.slice(slash + 1)) ?? core.lookUp(name)
    },
    *foods() {
      yield* core.foods()
      for (const table of tables.values()) yield* table.foods()
    },
  }
}
