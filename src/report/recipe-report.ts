import {judge, type Verdict} from '../check/verdict.ts'
import type {Settings} from '../cookbook/cookbook.ts'
import type {Recipe} from '../cookbook/recipe.ts'
import {nutrientUnit, type PublishedNutrient} from '../food/nutrients.ts'
import type {Computed} from '../nutrition/computed.ts'
import {publishedBy} from '../nutrition/published.ts'
import {figuresReport, withoutNoise} from './figure-report.ts'
import type {FilePath} from './file-path.ts'
import type {RecipeReport, StatedReport} from './report.ts'

/** What a report says about one recipe. */
export function recipeReport(
  computed: Computed,
  settings: Settings,
  filePath: FilePath,
): RecipeReport {
  const {recipe, batchGrams, portionGrams, perServing, per100g} = computed
  const publishing = publishedBy(settings, recipe)
  return {
    slug: recipe.slug,
    file: filePath(recipe.path),
    ...(recipe.serves && {serves: recipe.serves.value}),
    ...(batchGrams && {batchGrams: withoutNoise(batchGrams.value)}),
    ...(portionGrams && {portionGrams: withoutNoise(portionGrams.value)}),
    ...(perServing && {perServing: figuresReport(perServing, publishing)}),
    ...(per100g && {per100g: figuresReport(per100g, publishing)}),
    ...statedReport(recipe),
    verdicts: verdicts(computed, settings),
  }
}

/** The verdict on each stated figure; none where its basis cannot be computed. */
function verdicts(computed: Computed, settings: Settings): RecipeReport['verdicts'] {
  const {stated} = computed.recipe
  const report: Partial<Record<PublishedNutrient, Verdict>> = {}
  for (const one of stated ? judge(stated, computed, settings) : []) {
    report[one.stated.nutrient] = one.verdict
  }
  return report
}

function statedReport({stated}: Recipe): Pick<RecipeReport, 'stated' | 'statedPer'> {
  if (stated === undefined) return {}
  const figures: Partial<Record<PublishedNutrient, StatedReport>> = {}
  for (const {nutrient, value} of stated.figures) {
    figures[nutrient] = {value: withoutNoise(value), unit: nutrientUnit[nutrient]}
  }
  return {statedPer: stated.basis, stated: figures}
}
