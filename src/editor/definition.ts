import type {Position} from 'unist'
import type {Examined} from '../build.ts'
import type {AskedPlace} from './hover.ts'
import {namedBy} from './named-things.ts'
import {cursorIn} from './yaml-of.ts'

/** Where something is written. */
export interface WrittenPlace {
  /** Relative to the cookbook folder, with `/`. */
  readonly path: string
  /** Absent where it is the file as a whole. */
  readonly place?: Position
}

/** The recipe of a component, or the entry of a food in foods.yaml; a table's food has no such place. */
export function definition(asked: AskedPlace, examined: Examined): WrittenPlace | undefined {
  const {path, text, offset} = asked
  const cursor = cursorIn(path, text, offset)
  const named = cursor && namedBy(path, cursor)
  if (!cursor || !named) return undefined
  const component = named === 'recipe' ? cursor.text : componentOf(cursor.text, path, examined)
  const recipe = component === undefined ? undefined : examined.cookbook.recipes.get(component)
  if (recipe) return {path: recipe.path}
  const food = named === 'food' ? examined.cookbook.foods.lookUp(cursor.text) : undefined
  return food?.named && {path: food.named.file, place: food.named.place}
}

/** The component that a line of the recipe names in its own words. */
function componentOf(name: string, path: string, {cookbook}: Examined): string | undefined {
  const recipe = [...cookbook.recipes.values()].find((one) => one.path === path)
  const lines = recipe?.groups.flatMap((group) => group.lines) ?? []
  return lines.find((line) => line.name.value === name)?.recipe?.value
}
