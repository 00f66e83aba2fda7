import type {Cookbook} from '../../cookbook/cookbook.ts'
import {componentsOf} from '../../nutrition/recipe-graph.ts'
import type {CookbookRule} from '../rule.ts'

export const componentUsed: CookbookRule = {
  id: 'component-used',
  severity: 'warning',
  summary: 'A recipe without servings of its own is part of another one.',
  why: 'A component that nothing uses is cooked for nothing, or a recipe has lost its line.',
  *check({cookbook}) {
    // A recipe that was not understood may use any component.
    if (cookbook.refusedRecipes.size > 0) return
    const used = usedSlugs(cookbook)
    for (const {slug, path, title, serves} of cookbook.recipes.values()) {
      if (serves !== undefined || used.has(slug)) continue
      yield {
        file: path,
        place: title.place,
        reason: `No recipe or plan uses the component \`${slug}\`, expected one that does`,
        actual: slug,
        note: 'Give it `serves` if it is a dish of its own.',
      }
    }
  },
}

function usedSlugs({recipes, plans}: Cookbook): ReadonlySet<string> {
  const used = new Set<string>()
  for (const recipe of recipes.values()) {
    for (const {value} of componentsOf(recipe)) used.add(value)
    if (recipe.comparison?.recipe) used.add(recipe.comparison.recipe.value)
  }
  for (const {servings} of plans) for (const {recipe} of servings) used.add(recipe.value)
  return used
}
