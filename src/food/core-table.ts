import {regulation} from './core/regulation.ts'
import {coreAisles} from './core-aisles.ts'
import {coreFood} from './core-food.ts'
import {coreLines, coreNames, coreRow} from './core-row.ts'
import type {Food} from './food.ts'
import type {LabelRules} from './label-rules.ts'
import {nameKey} from './name-key.ts'
import {regulationFood} from './regulation-food.ts'

/** The built-in table: foods a home kitchen uses. */
export interface CoreTable {
  /** Names and other names, as written. */
  readonly names: readonly string[]
  /** By name or other name, else by id (`usda/20081`, `core/erythritol`). */
  lookUp(name: string): Food | undefined
  /** Every food, in the order of the aisles. */
  foods(): readonly Food[]
}

/** One food on its shelf, built when somebody asks for it. */
interface Shelved {
  readonly id: string
  readonly build: () => Food
  built?: Food
}

/**
 * Opens the core table: an index of names. A food becomes figures when it is looked up, once, so
 * that what two recipes make of it has the same sources.
 * @param rules whose energy factors sugar alcohols get
 */
export function coreTable(rules: LabelRules): CoreTable {
  const names: string[] = []
  const byName = new Map<string, Shelved>()
  const shelves: Shelved[] = []
  const shelve = (name: string, also: readonly string[], food: Shelved): void => {
    shelves.push(food)
    names.push(name, ...also)
    byName.set(nameKey(name), food)
    for (const other of also) byName.set(nameKey(other), food)
  }
  for (const {aisle, text} of coreAisles) {
    for (const line of coreLines(text)) {
      const {ndb, name, also} = coreNames(line)
      shelve(name, also, {id: `usda/${ndb}`, build: () => coreFood(coreRow(line), aisle)})
    }
  }
  for (const row of regulation) {
    const build = (): Food => regulationFood(row, rules)
    shelve(row.name, row.also ?? [], {id: `core/${row.name}`, build})
  }
  let ids: ReadonlyMap<string, Shelved> | undefined
  const byId = (id: string): Shelved | undefined => {
    // Most cookbooks name foods by name alone, and the index is on the way to the first recipe.
    ids ??= new Map(shelves.map((food) => [food.id, food]))
    return ids.get(id)
  }
  return {
    names,
    lookUp(name) {
      const key = nameKey(name)
      const found = byName.get(key) ?? (key.includes('/') ? byId(key) : undefined)
      return found && foodOf(found)
    },
    foods: () => shelves.map(foodOf),
  }
}

function foodOf(shelved: Shelved): Food {
  shelved.built ??= shelved.build()
  return shelved.built
}
