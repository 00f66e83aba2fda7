import type {Examined} from '../build.ts'
import {onBasis} from '../check/stated-basis.ts'
import type {Recipe, StatedBasis} from '../cookbook/recipe.ts'
import {nutrientUnit, type PublishedNutrient, publishedNutrients} from '../food/nutrients.ts'
import type {Computed} from '../nutrition/computed.ts'
import {mainNutrients, publishedBy, publishedFigure} from '../nutrition/published.ts'
import {causesOf, type RecipeState} from './change-causes.ts'
import type {ChangeReport, FigureChange, NamedRecipe, RecipeChange} from './change-report.ts'
import {withoutNoise} from './figure-report.ts'
import type {FilePath} from './file-path.ts'

/** Which figures moved between two states of a cookbook, and what did it. */
export function changes(before: Examined, after: Examined, filePath: FilePath): ChangeReport {
  const [earlier, later] = [before.cookbook.recipes, after.cookbook.recipes]
  const named = ({slug, path, title}: Recipe): NamedRecipe => ({
    slug,
    file: filePath(path),
    title: title.value,
  })
  const kept = [...later.values()].filter(({slug}) => earlier.has(slug))
  const moved: RecipeChange[] = []
  const uncomputed: NamedRecipe[] = []
  for (const recipe of kept) {
    const [one, other] = [before.computed.get(recipe.slug), after.computed.get(recipe.slug)]
    if (!one || !other) {
      uncomputed.push(named(recipe))
      continue
    }
    const change = recipeChange(
      {computed: one, settings: before.cookbook.settings},
      {computed: other, settings: after.cookbook.settings},
    )
    if (change) moved.push({...named(recipe), ...change})
  }
  return {
    moved,
    added: [...later.values()].filter(({slug}) => !earlier.has(slug)).map(named),
    removed: [...earlier.values()].filter(({slug}) => !later.has(slug)).map(named),
    uncomputed,
    unchanged: kept.length - moved.length - uncomputed.length,
  }
}

function recipeChange(
  before: RecipeState,
  after: RecipeState,
): Omit<RecipeChange, keyof NamedRecipe> | undefined {
  const per = commonBasis(before.computed, after.computed)
  const figures = nutrientsOf(before, after).flatMap((nutrient) => {
    const change = figureChange(nutrient, before, after, per)
    return change ? [change] : []
  })
  if (figures.length === 0) return undefined
  const nutrients = figures.map(({nutrient}) => nutrient)
  return {per, figures, causes: causesOf(before, after, {per, nutrients})}
}

/** The basis both can be told on: as the page states them, else the smallest. */
function commonBasis(before: Computed, after: Computed): StatedBasis {
  const stated = after.recipe.stated?.basis
  const bases: readonly StatedBasis[] = [...(stated ? [stated] : []), 'serving', '100 g']
  return bases.find((basis) => onBasis(basis, before) && onBasis(basis, after)) ?? 'batch'
}

/** The main figures, and whatever one of the two pages states. */
function nutrientsOf(...states: readonly RecipeState[]): readonly PublishedNutrient[] {
  const stated = states.flatMap(
    ({computed}) => computed.recipe.stated?.figures.map(({nutrient}) => nutrient) ?? [],
  )
  const wanted = new Set<PublishedNutrient>([...mainNutrients, ...stated])
  return publishedNutrients.filter((nutrient) => wanted.has(nutrient))
}

/** The smallest change that shows where figures are told to a tenth: energy to a whole kcal. */
const leastShown = {kcal: 0.5, kJ: 0.5, g: 0.05, mg: 0.05, µg: 0.05} as const

function figureChange(
  nutrient: PublishedNutrient,
  before: RecipeState,
  after: RecipeState,
  per: StatedBasis,
): FigureChange | undefined {
  const value = ({computed, settings}: RecipeState) =>
    publishedFigure(
      onBasis(per, computed)?.figures ?? computed.batch,
      nutrient,
      publishedBy(settings, computed.recipe),
    ).value
  const [from, to] = [withoutNoise(value(before)), withoutNoise(value(after))]
  const unit = nutrientUnit[nutrient]
  return Math.abs(to - from) < leastShown[unit]
    ? undefined
    : {nutrient, before: from, after: to, unit}
}
