import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Problem} from '../cookbook/problem.ts'
import type {Alternative, IngredientLine, Recipe} from '../cookbook/recipe.ts'
import type {Figures} from '../food/figures.ts'
import {sum} from '../units/uncertain.ts'
import {alternativeAdds} from './compute-alternative.ts'
import {computeLine} from './compute-line.ts'
import type {Computed, ComputedAlternative, ComputedLine} from './computed.ts'
import {finishedBatch} from './finished-batch.ts'
import {measureOut} from './measure-out.ts'
import {resolveIngredient} from './resolve.ts'
import {servedFigures, sharedOut} from './share-out.ts'

export interface RecipeResult {
  /** Absent when a line could not be looked up or weighed: half a sum would only mislead. */
  readonly computed?: Computed
  readonly problems: readonly Problem[]
}

/**
 * Sums a recipe's lines to the batch, the serving and 100 g of the finished dish: yield at the
 * level of the recipe, losses at the level of the ingredient (the mixed method of FAO/INFOODS and
 * EuroFIR; Greenfield & Southgate, Food Composition Data, FAO 2003).
 * @param computed every component of the recipe, by slug
 */
export function computeRecipe(
  recipe: Recipe,
  cookbook: Cookbook,
  computed: ReadonlyMap<string, Computed>,
): RecipeResult {
  const context: Context = {recipe, cookbook, computed}
  const results = recipe.groups.flatMap(({title, lines}) =>
    lines.map((line) => lineOf(line, title?.value, context)),
  )
  const problems = results.flatMap(({problem}) => (problem ? [problem] : []))
  const lines = results.flatMap(({line}) => (line ? [line] : []))
  if (lines.length < results.length) return {problems}
  const counted = lines.filter(({role}) => role === 'counted')
  const mixedGrams = sum(counted.map(({staysGrams}) => staysGrams))
  const usedGrams = sum(counted.map((line) => line.usedGrams))
  const finished = finishedBatch(recipe, {usedGrams, mixedGrams}, cookbook)
  if (finished.problem) problems.push({...finished.problem, file: recipe.path})
  const batchOf = (adds: readonly Figures<'batch'>[]) => servedFigures(adds, finished)
  const batch = batchOf(counted.map(({adds}) => adds))
  const withAlternatives = lines.map((line): ComputedLine => {
    const others = counted.filter((other) => other !== line).map(({adds}) => adds)
    const choices = line.line.instead.map((choice) =>
      alternativeOf(choice, line, (adds) => batchOf([...others, adds]), context),
    )
    problems.push(...choices.flatMap(({problem}) => (problem ? [problem] : [])))
    return {...line, instead: choices.flatMap(({value}) => (value ? [value] : []))}
  })
  return {
    computed: {
      recipe,
      lines: withAlternatives,
      mixedGrams,
      servedRatio: finished.servedRatio,
      batch,
      ...sharedOut(batch, recipe.serves?.value, finished.batchGrams),
    },
    problems,
  }
}

interface Context {
  readonly recipe: Recipe
  readonly cookbook: Cookbook
  readonly computed: ReadonlyMap<string, Computed>
}

function lineOf(
  line: IngredientLine,
  group: string | undefined,
  context: Context,
): {readonly line?: Omit<ComputedLine, 'instead'>; readonly problem?: Problem} {
  const {recipe, cookbook, computed} = context
  const {ingredient, problem} = resolveIngredient(line, recipe, cookbook, computed)
  if (ingredient === undefined) return problem ? {problem} : {}
  const result = computeLine(line, ingredient, cookbook)
  if (!result.ok) return {problem: {...result.problem, file: recipe.path}}
  const role = line.uncounted ? 'uncounted' : line.isOptional ? 'optional' : 'counted'
  return {
    line: {line, ingredient, role, ...result.value, ...(group !== undefined && {group})},
  }
}

/** The recipe with one line swapped for the choice: the other lines, and the servings, stay. */
function alternativeOf(
  choice: Alternative,
  line: Omit<ComputedLine, 'instead'>,
  batchWith: (adds: Figures<'batch'>) => Figures<'batch'>,
  context: Context,
): {readonly value?: ComputedAlternative; readonly problem?: Problem} {
  const {recipe, cookbook, computed} = context
  const {ingredient, problem} = resolveIngredient(choice, recipe, cookbook, computed)
  if (ingredient === undefined) return problem ? {problem} : {}
  const measured = measureOut(choice, ingredient, cookbook.settings.scaleGrams)
  if (!measured.ok) return {problem: {...measured.problem, file: recipe.path}}
  const {grams} = measured.value
  const added = alternativeAdds(line, ingredient, measured.value)
  const batch = batchWith(added.adds)
  const {perServing} = sharedOut(batch, recipe.serves?.value, undefined)
  return {
    value: {
      choice,
      name: choice.name.value,
      ingredient,
      grams,
      ...added,
      batch,
      ...(perServing && {perServing}),
    },
  }
}
