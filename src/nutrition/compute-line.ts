import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Problem} from '../cookbook/problem.ts'
import type {IngredientLine} from '../cookbook/recipe.ts'
import {type Figures, figuresMadeAnew, figuresOf, weightedSum} from '../food/figures.ts'
import {difference, exact, scaled, type Uncertain} from '../units/uncertain.ts'
import type {Ingredient} from './computed.ts'
import {lossesOf} from './line-losses.ts'
import type {Loss} from './losses.ts'
import {type MeasuredOut, measureOut} from './measure-out.ts'
import {partWeighed} from './weigh.ts'

/** What one line brings. */
export interface LineFigures {
  /** Edible grams as listed. */
  readonly grams: Uncertain
  /** Edible grams that go into the pot: without what is cut off, or the part eaten. */
  readonly usedGrams: Uncertain
  /** Grams of those that stay in the dish. */
  readonly staysGrams: Uncertain
  readonly purchasedGrams: number
  readonly adds: Figures<'batch'>
}

export type LineResult =
  | {readonly ok: true; readonly value: LineFigures}
  | {readonly ok: false; readonly problem: Omit<Problem, 'file'>}

/** Weighs a line, takes the refuse off, and applies what is cut off, left, poured off and lost. */
export function computeLine(
  line: IngredientLine,
  ingredient: Ingredient,
  cookbook: Cookbook,
): LineResult {
  const {settings} = cookbook
  const measured = measureOut(line, ingredient, settings.scaleGrams)
  if (!measured.ok) return measured
  const refuseRatio = ingredient.kind === 'food' ? ingredient.food.refuseRatio : 0
  const {grams: listed} = measured.value
  // The weight of a measure (1 medium) is that of its edible portion already.
  const isPurchasedWeight = line.isBought && line.amount.value.kind === 'weight'
  const grams = isPurchasedWeight ? scaled(listed, 1 - refuseRatio) : listed
  const used = eatenGrams(line, cookbook) ?? untrimmed(grams, line, cookbook)
  const whole = figuresOfPart(measured.value, used)
  const losses = lossesOf({line, ingredient, used, whole}, cookbook)
  if (!losses.ok) return losses
  return {
    ok: true,
    value: {
      grams,
      usedGrams: used,
      purchasedGrams: grams.value / (1 - refuseRatio),
      staysGrams: losses.value.reduce((rest, loss) => difference(rest, loss.grams), used),
      adds: losses.value.length === 0 ? whole : afterLosses(whole, losses.value),
    },
  }
}

/** Figures of a weight of the measured ingredient. */
export function figuresOfPart(measured: MeasuredOut, grams: Uncertain): Figures<'batch'> {
  const weight = measured.shareOf(grams)
  return figuresMadeAnew((nutrient) => weightedSum([{figure: measured.figures[nutrient], weight}]))
}

function eatenGrams(line: IngredientLine, {settings}: Cookbook): Uncertain | undefined {
  return (
    line.eaten &&
    partWeighed(line.eaten.amount, `${line.name.value}, the part eaten`, settings.scaleGrams)
  )
}

function untrimmed(grams: Uncertain, line: IngredientLine, {settings}: Cookbook): Uncertain {
  return line.trimmed
    ? difference(
        grams,
        partWeighed(line.trimmed, `what was cut off ${line.name.value}`, settings.scaleGrams),
      )
    : grams
}

/** Figures of an ingredient when everything has left it that leaves it. */
export function afterLosses(whole: Figures<'batch'>, losses: readonly Loss[]): Figures<'batch'> {
  return figuresOf((nutrient) =>
    weightedSum([
      {figure: whole[nutrient], weight: exact(1)},
      ...losses.flatMap((loss) => loss.termsOf(nutrient)),
    ]),
  )
}
