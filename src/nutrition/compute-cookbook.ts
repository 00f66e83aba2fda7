import type {Cookbook} from '../cookbook/cookbook.ts'
import {limits} from '../cookbook/limits.ts'
import type {Problem} from '../cookbook/problem.ts'
import type {Recipe} from '../cookbook/recipe.ts'
import {computeRecipe, type RecipeResult} from './compute-recipe.ts'
import type {Computed} from './computed.ts'
import {componentsOf, type RecipePath, recipeOrder} from './recipe-graph.ts'

export interface ComputedCookbook {
  /** By slug, in the cookbook's order; recipes that could not be computed are not in it. */
  readonly computed: ReadonlyMap<string, Computed>
  readonly problems: readonly Problem[]
}

/** Computes every recipe, components before the recipes that use them. */
export function computeCookbook(cookbook: Cookbook): ComputedCookbook {
  return computeRecipes(cookbook.recipes, cookbook)
}

/**
 * Computes some recipes of a cookbook.
 * @param recipes by slug, with every component they use
 */
export function computeRecipes(
  recipes: ReadonlyMap<string, Recipe>,
  cookbook: Cookbook,
): ComputedCookbook {
  const {ordered, loops, tooDeep} = recipeOrder(recipes)
  const problems: Problem[] = [...loops.map(loopProblem), ...tooDeep.map(nestingProblem)]
  const bySlug = new Map<string, Computed>()
  for (const recipe of ordered) {
    const result =
      computedBefore(recipe, cookbook, bySlug) ?? computeRecipe(recipe, cookbook, bySlug)
    if (result.computed && result.problems.length === 0) {
      const {settings, foods} = cookbook
      const components = componentsIn(recipe, bySlug)
      before.set(recipe, {settings, foods, components, computed: result.computed})
    }
    problems.push(...result.problems)
    if (result.computed) bySlug.set(recipe.slug, result.computed)
  }
  const computed = new Map<string, Computed>()
  for (const slug of recipes.keys()) {
    const one = bySlug.get(slug)
    if (one) computed.set(slug, one)
  }
  return {computed, problems}
}

/**
 * The last result of each recipe, for whoever computes a cookbook again after every save: a recipe
 * that was not read again, of the same foods and components, comes to the same.
 */
const before = new WeakMap<Recipe, Before>()

interface Before extends Pick<Cookbook, 'settings' | 'foods'> {
  /** Of each mention in order; undefined where a component could not be computed then. */
  readonly components: readonly (Computed | undefined)[]
  readonly computed: Computed
}

function computedBefore(
  recipe: Recipe,
  {settings, foods}: Cookbook,
  bySlug: ReadonlyMap<string, Computed>,
): RecipeResult | undefined {
  const last = before.get(recipe)
  if (last?.settings !== settings || last.foods !== foods) return undefined
  const components = componentsIn(recipe, bySlug)
  const isSame = components.every((one, index) => one === last.components[index])
  return isSame ? {computed: last.computed, problems: []} : undefined
}

function componentsIn(recipe: Recipe, bySlug: ReadonlyMap<string, Computed>): Before['components'] {
  return componentsOf(recipe).map(({value}) => bySlug.get(value))
}

function loopProblem({path, recipe, use}: RecipePath): Problem {
  return {
    ruleId: 'component-loop',
    severity: 'error',
    file: recipe.path,
    place: use.place,
    reason: `Component \`${use.value}\` contains itself: \`${path.join(' → ')}\`, expected a chain that ends`,
    actual: use.value,
    note: 'Use a food, or a recipe that does not lead back here, in one of the recipes named.',
  }
}

/** Slugs named at either end of a long way. */
const endsNamed = 3

function nestingProblem({path, recipe, use}: RecipePath): Problem {
  const way = [...path.slice(0, endsNamed), '…', ...path.slice(-endsNamed)].join(' → ')
  return {
    ruleId: 'component-nesting',
    severity: 'error',
    file: recipe.path,
    place: use.place,
    reason: `Component \`${use.value}\` nests \`${path.length - 1}\` levels deep by \`${way}\`, expected \`${limits.componentLevels}\` at most`,
    actual: use.value,
    note: `Every step of the way: ${path.join(' → ')}.`,
  }
}
