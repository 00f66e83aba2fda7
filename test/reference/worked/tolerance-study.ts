import {verdict} from '../../../src/check/verdict.ts'
import type {NutrientTolerance, Settings} from '../../../src/cookbook/cookbook.ts'
import type {PublishedNutrient} from '../../../src/food/nutrients.ts'
import type {Computed} from '../../../src/nutrition/computed.ts'
import {mainNutrients} from '../../../src/nutrition/published.ts'
import {computeWorked, type WorkedRecipe} from './worked-recipe.ts'

/** What docs/tolerances.md says was measured: every number in it comes from here. */

/** A policy that recipes are judged by. */
export type StudiedPolicy = Pick<Settings, 'tolerance' | 'tolerances'>

/** A policy of the writer's own: one share of every figure. */
export function ownRatio(ratio: number): StudiedPolicy {
  const tolerance: NutrientTolerance = {kind: 'ratio', ratio}
  return {
    tolerance: 'strict',
    tolerances: new Map(mainNutrients.map((nutrient) => [nutrient, tolerance] as const)),
  }
}

/** How many recipes have a figure that does not follow, by a policy. */
export function recipesThatDrift(recipes: readonly WorkedRecipe[], policy: StudiedPolicy): number {
  const computed = computeWorked(recipes)
  return recipes.filter((recipe) => {
    const one = computed.get(recipe.row)
    return one !== undefined && mainNutrients.some((name) => drifts(recipe, one, name, policy))
  }).length
}

function drifts(
  recipe: WorkedRecipe,
  computed: Computed,
  nutrient: PublishedNutrient & keyof WorkedRecipe['stated'],
  settings: StudiedPolicy,
): boolean {
  const value = recipe.stated[nutrient]
  const figures = 'servings' in recipe.finished ? computed.perServing : computed.per100g
  if (value === undefined || figures === undefined) return false
  const servings = 'servings' in recipe.finished ? recipe.finished.servings : undefined
  const grams = servings === undefined ? 100 : computed.mixedGrams.value / servings
  // Mississippi and the dietary studies print hundredths of a gram, the others whole units.
  const increment = nutrient === 'energy' || Number.isInteger(value) ? 1 : 0.01
  return verdict({nutrient, value, increment}, figures[nutrient], {grams, settings}) === 'drift'
}

/** Distance of each printed figure from the computed one, in percent of the printed one. */
export function gapsPercent(
  recipes: readonly WorkedRecipe[],
  nutrient: (typeof mainNutrients)[number],
): readonly number[] {
  const computed = computeWorked(recipes)
  return recipes.flatMap((recipe) => {
    const one = computed.get(recipe.row)
    const figures = 'servings' in recipe.finished ? one?.perServing : one?.per100g
    const stated = recipe.stated[nutrient]
    if (!figures || stated === undefined || stated === 0) return []
    return [(100 * Math.abs(figures[nutrient].value - stated)) / stated]
  })
}

/**
 * What the resolution of a scale leaves open in a recipe's figure, every line weighed once: expanded
 * uncertainty (GUM 4.3.7: d/√12 a reading; 5.1; k = 2), percent of the figure.
 */
export function scalePercent(
  {lines, batch}: Computed,
  nutrient: PublishedNutrient,
  scaleGrams: number,
): number {
  const perReading = scaleGrams / Math.sqrt(12)
  const variance = lines.reduce((sum, {adds, grams}) => {
    const perGram = adds[nutrient].value / grams.value
    return sum + (perGram * perReading) ** 2
  }, 0)
  return (200 * Math.sqrt(variance)) / batch[nutrient].value
}

/** The value that a share of the values lies at or below; 0.5 is the lower median. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((left, right) => left - right)
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN
}
