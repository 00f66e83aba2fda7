import {limits} from '../cookbook/limits.ts'
import type {Located} from '../cookbook/problem.ts'
import type {Recipe} from '../cookbook/recipe.ts'

/** Recipes with every component before the recipes that use it, and what prevents that of others. */
export interface RecipeOrder {
  readonly ordered: readonly Recipe[]
  readonly loops: readonly RecipePath[]
  /** The first recipes, seen from the foods, that nest deeper than the limit. */
  readonly tooDeep: readonly RecipePath[]
}

/** A way from recipe to component to component. */
export interface RecipePath {
  /** Slugs along the way. A component that ends up inside itself has the first again at the end. */
  readonly path: readonly string[]
  /** The line of the recipe that leads into it. */
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
 * Depth-first order. A recipe on or behind a circle, or nested too deep, is left out; mentions of
 * recipes that do not exist are passed over here and reported where names are resolved.
 */
export function recipeOrder(recipes: ReadonlyMap<string, Recipe>): RecipeOrder {
  const walk = new Walk(recipes)
  for (const recipe of recipes.values()) walk.visit(recipe)
  return walk
}

/** A recipe whose components are being visited. */
interface Open {
  readonly recipe: Recipe
  readonly uses: readonly Located<string>[]
  /** How many of the uses have been looked at. */
  seen: number
  isSound: boolean
  /** Levels of components below it, and the use that leads to the most of them. */
  levels: number
  deepest?: Located<string>
}

/** A recipe that has been left: how deep it is, or that it cannot be computed. */
type Left = Pick<Open, 'isSound' | 'levels' | 'deepest'>

/** The way in is kept here and not on the call stack, which a chain of thousands would overflow. */
class Walk implements RecipeOrder {
  readonly ordered: Recipe[] = []
  readonly loops: RecipePath[] = []
  readonly tooDeep: RecipePath[] = []
  readonly #recipes: ReadonlyMap<string, Recipe>
  readonly #open = new Map<string, Open>()
  readonly #left = new Map<string, Left>()
  readonly #trail: Open[] = []

  constructor(recipes: ReadonlyMap<string, Recipe>) {
    this.#recipes = recipes
  }

  visit(first: Recipe): void {
    if (!this.#left.has(first.slug)) this.#enter(first)
    for (let open = this.#trail.at(-1); open; open = this.#trail.at(-1)) {
      const use = open.uses[open.seen]
      if (use === undefined) this.#leave(open)
      else this.#look(use, open)
    }
  }

  #enter(recipe: Recipe): void {
    const open = {recipe, uses: componentsOf(recipe), seen: 0, isSound: true, levels: 0}
    this.#open.set(recipe.slug, open)
    this.#trail.push(open)
  }

  /** Looks at the next use; one of a recipe not yet left enters that, and is looked at again later. */
  #look(use: Located<string>, open: Open): void {
    const next = this.#recipes.get(use.value)
    const left = this.#left.get(use.value)
    if (next !== undefined && left === undefined && !this.#open.has(use.value)) {
      this.#enter(next)
      return
    }
    open.seen++
    if (next === undefined) return
    if (left === undefined) this.#tellLoop(use, open)
    if (left?.isSound !== true) open.isSound = false
    else if (left.levels >= open.levels) {
      open.levels = left.levels + 1
      open.deepest = use
    }
  }

  #leave(open: Open): void {
    const {recipe, levels, deepest} = open
    this.#trail.pop()
    this.#open.delete(recipe.slug)
    if (open.isSound && deepest && levels > limits.componentLevels) {
      open.isSound = false
      this.tooDeep.push({path: [recipe.slug, ...this.#wayDown(deepest)], recipe, use: deepest})
    }
    this.#left.set(recipe.slug, open)
    if (open.isSound) this.ordered.push(recipe)
  }

  #tellLoop(use: Located<string>, {recipe}: Open): void {
    const slugs = this.#trail.map((open) => open.recipe.slug)
    this.loops.push({path: [...slugs.slice(slugs.indexOf(use.value)), use.value], recipe, use})
  }

  #wayDown(from: Located<string>): readonly string[] {
    const path: string[] = []
    for (
      let use: Located<string> | undefined = from;
      use;
      use = this.#left.get(use.value)?.deepest
    ) {
      path.push(use.value)
    }
    return path
  }
}
