import type {Located} from '../cookbook/problem.ts'
import type {Recipe} from '../cookbook/recipe.ts'

/** Recipes with every component before the recipes that use it, and the circles that prevent it. */
export interface RecipeOrder {
  readonly ordered: readonly Recipe[]
  readonly loops: readonly RecipeLoop[]
}

/** A component that ends up inside itself. */
export interface RecipeLoop {
  /** Slugs along the circle, the first again at the end: `stock`, `sauce`, `stock`. */
  readonly path: readonly string[]
  /** The line of the first recipe that leads into the circle. */
  readonly recipe: Recipe
  readonly use: Located<string>
}

/** Slugs of the components a recipe counts or offers, with the place of each mention. */
export function componentsOf(recipe: Recipe): readonly Located<string>[] {
  return recipe.groups.flatMap(({lines}) =>
    lines.flatMap((line) =>
      [line, ...line.instead].flatMap((choice) => (choice.recipe ? [choice.recipe] : [])),
    ),
  )
}

/**
 * Depth-first order. A recipe on or behind a circle is left out; mentions of recipes that do not
 * exist are passed over here and reported where names are resolved.
 */
export function recipeOrder(recipes: ReadonlyMap<string, Recipe>): RecipeOrder {
  const ordered: Recipe[] = []
  const loops: RecipeLoop[] = []
  const state = new Map<string, 'open' | 'done' | 'broken'>()
  const trail: string[] = []

  // Components nest a few deep in any real cookbook; the reader bounds the file count, and the
  // trail is explicit so that the message can name the whole circle.
  function visit(recipe: Recipe): boolean {
    state.set(recipe.slug, 'open')
    trail.push(recipe.slug)
    let isSound = true
    for (const use of componentsOf(recipe)) {
      const next = recipes.get(use.value)
      if (next === undefined) continue
      const seen = state.get(next.slug)
      if (seen === 'open') {
        loops.push({path: [...trail.slice(trail.indexOf(next.slug)), next.slug], recipe, use})
        isSound = false
      } else if (seen === 'broken' || (seen === undefined && !visit(next))) isSound = false
    }
    trail.pop()
    state.set(recipe.slug, isSound ? 'done' : 'broken')
    if (isSound) ordered.push(recipe)
    return isSound
  }

  for (const recipe of recipes.values()) if (!state.has(recipe.slug)) visit(recipe)
  return {ordered, loops}
}
