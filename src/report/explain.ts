import type {Examined} from '../build.ts'
import {onBasis, shareOfBatch} from '../check/stated-basis.ts'
import {judge} from '../check/verdict.ts'
import type {StatedBasis} from '../cookbook/recipe.ts'
import type {Figure} from '../food/figures.ts'
import {type PublishedNutrient, publishedNutrients} from '../food/nutrients.ts'
import {doughPieces} from '../nutrition/baking/dough-pieces.ts'
import type {Computed, ComputedLine} from '../nutrition/computed.ts'
import {netCarbohydrate} from '../nutrition/net-carbohydrate.ts'
import {type Publishing, publishedBy, publishedFigure} from '../nutrition/published.ts'
import {
  coverageFactor,
  expandedUncertainty,
  scaled,
  standardUncertainty,
} from '../units/uncertain.ts'
import {bakingReport} from './baking-report.ts'
import {claimsReport} from './claim-report.ts'
import {comparisonReport} from './comparison.ts'
import {energyReport} from './energy-report.ts'
import type {BudgetReport, Explanation, LineReport} from './explanation.ts'
import {figureReport, figuresReport, withoutNoise} from './figure-report.ts'
import type {FilePath} from './file-path.ts'
import {recipeReport} from './recipe-report.ts'
import type {FigureReport, Message} from './report.ts'

/** What everybody wants explained, stated or not. */
const always: ReadonlySet<PublishedNutrient> = new Set(['energy', 'protein', 'carbohydrate', 'fat'])

/** Where the figures of one recipe come from and how well they are known. */
export function explain(
  computed: Computed,
  {cookbook, computed: all}: Pick<Examined, 'cookbook' | 'computed'>,
  {filePath, messages}: {readonly filePath: FilePath; readonly messages: readonly Message[]},
): Explanation {
  const {recipe} = computed
  const {settings} = cookbook
  const per = explainedBasis(computed)
  const figures = onBasis(per, computed)?.figures ?? computed.batch
  const stated = new Set(recipe.stated?.figures.map(({nutrient}) => nutrient))
  const which = publishedNutrients.filter((one) => always.has(one) || stated.has(one))
  const publishing = publishedBy(settings, recipe)
  const whole: Whole = {
    // What stays in the pot takes its share of every line along.
    share: shareOfBatch({basis: per}, computed) * computed.servedRatio.value,
    which,
    publishing,
    figure: (nutrient) => publishedFigure(figures, nutrient, publishing),
  }
  const report = recipeReport(computed, settings, filePath)
  const energy = energyReport(computed, settings)
  const baking = bakingReport(computed)
  const pieces = doughPieces(computed)
  return {
    ...report,
    title: recipe.title.value,
    per,
    figures: figuresReport(figures, publishing, which),
    lines: computed.lines.map((line) => lineReport(line, whole)),
    budget: Object.fromEntries(which.map((nutrient) => [nutrient, budget(whole.figure(nutrient))])),
    comparison: recipe.stated
      ? judge(recipe.stated, computed, settings).map((one) => comparisonReport(one, settings))
      : [],
    ...(energy && {energy}),
    ...(settings.netCarbohydrate && {
      netCarbohydrate: figureReport('carbohydrate', netCarbohydrate(figures)),
    }),
    claims: claimsReport(computed, cookbook, all),
    ...(baking && {baking}),
    ...(pieces && {pieces}),
    messages: messages.filter(({file}) => file === report.file),
  }
}

/** What the lines add up to. */
interface Whole {
  /** Of what the lines add, 0 to 1. */
  readonly share: number
  readonly which: readonly PublishedNutrient[]
  readonly publishing: Publishing
  readonly figure: (nutrient: PublishedNutrient) => Figure
}

/** The basis the page states its figures on; else a serving, else the batch. */
function explainedBasis(computed: Computed): StatedBasis {
  const stated = computed.recipe.stated?.basis
  if (stated !== undefined && onBasis(stated, computed)) return stated
  return computed.perServing ? 'serving' : 'batch'
}

function lineReport(computed: ComputedLine, whole: Whole): LineReport {
  const {line, group, ingredient, role, grams} = computed
  const adds: Partial<Record<PublishedNutrient, FigureReport>> = {}
  const shares: Partial<Record<PublishedNutrient, number>> = {}
  for (const nutrient of role === 'counted' ? whole.which : []) {
    const inBatch = publishedFigure(computed.adds, nutrient, whole.publishing)
    const {missing} = inBatch
    const added = {...scaled(inBatch, whole.share), missing}
    adds[nutrient] = figureReport(nutrient, added)
    const total = whole.figure(nutrient).value
    if (total > 0) shares[nutrient] = withoutNoise(added.value / total)
  }
  return {
    name: line.name.value,
    ...(group !== undefined && {group}),
    amount: line.amount.value.text,
    role,
    ...(ingredient.kind === 'food' ? {food: ingredient.food.id} : {recipe: ingredient.recipe.slug}),
    grams: withoutNoise(grams.value),
    gramsUncertainty: withoutNoise(expandedUncertainty(grams)),
    adds,
    shares,
  }
}

/** The sources of a figure's uncertainty, most first. Source of the form: GUM 4.1.4, 5.1.2. */
function budget(figure: Figure): readonly BudgetReport[] {
  const variance = standardUncertainty(figure) ** 2
  return Array.from(figure.parts, ([{kind, subject}, part]) => ({
    kind,
    source: subject,
    uncertainty: withoutNoise(coverageFactor * Math.abs(part)),
    share: withoutNoise(variance > 0 ? part ** 2 / variance : 0),
  }))
    .filter(({share}) => share > 0)
    .toSorted((left, right) => right.share - left.share || (left.source < right.source ? -1 : 1))
}
