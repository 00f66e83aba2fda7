import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Recipe} from '../cookbook/recipe.ts'
import {componentsOf} from '../nutrition/recipe-graph.ts'

/** A cookbook in which the recipe at hand stands for the one of its slug. */
export function cookbookWith(cookbook: Cookbook, recipe: Recipe): Cookbook {
  return {...cookbook, recipes: new Map(cookbook.recipes).set(recipe.slug, recipe)}
}

/** A recipe with the components it uses, and theirs, by slug. */
export function withComponents(
  recipe: Recipe,
  recipes: ReadonlyMap<string, Recipe>,
): ReadonlyMap<string, Recipe> {
  const needed = new Map([[recipe.slug, recipe]])
  // A map goes on to what is added to it on the way.
  for (const each of needed.values()) {
    for (const {value: slug} of componentsOf(each)) {
      const component = recipes.get(slug)
      if (component) needed.set(slug, component)
    }
  }
  return needed
}
