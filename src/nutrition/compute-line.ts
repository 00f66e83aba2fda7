import type {Settings} from '../cookbook/cookbook.ts'
import type {Problem} from '../cookbook/problem.ts'
import type {IngredientLine} from '../cookbook/recipe.ts'
import {type Figures, figuresOf, weightedSum} from '../food/figures.ts'
import {difference, exact, scaled, type Uncertain} from '../units/uncertain.ts'
import type {Ingredient} from './computed.ts'
import {evaporatedAlcohol, type Loss, pouredFat} from './losses.ts'
import {type MeasuredOut, measureOut} from './measure-out.ts'
import {weighed} from './weigh.ts'

/** What one line brings. */
export interface LineFigures {
  /** Edible grams as listed. */
  readonly grams: Uncertain
  /** Edible grams that stay in the dish. */
  readonly staysGrams: Uncertain
  readonly purchasedGrams: number
  readonly adds: Figures<'batch'>
}

export type LineResult =
  | {readonly ok: true; readonly value: LineFigures}
  | {readonly ok: false; readonly problem: Omit<Problem, 'file'>}

/** Weighs a line, takes the refuse off, and applies what is eaten, poured off and evaporated. */
export function computeLine(
  line: IngredientLine,
  ingredient: Ingredient,
  settings: Settings,
): LineResult {
  const measured = measureOut(line, ingredient, settings.scaleGrams)
  if (!measured.ok) return measured
  const refuseRatio = ingredient.kind === 'food' ? ingredient.food.refuseRatio : 0
  const {grams: listed} = measured.value
  const grams = line.isBought ? scaled(listed, 1 - refuseRatio) : listed
  const purchasedGrams = grams.value / (1 - refuseRatio)
  const eaten = eatenGrams(line, settings) ?? grams
  const whole = figuresOfPart(measured.value, eaten)
  const losses = lossesOf(line, ingredient, whole, settings)
  return {
    ok: true,
    value: {
      grams,
      purchasedGrams,
      staysGrams: losses.reduce((rest, loss) => difference(rest, loss.grams), eaten),
      adds: losses.length === 0 ? whole : afterLosses(whole, losses),
    },
  }
}

/** Figures of a weight of the measured ingredient. */
export function figuresOfPart(measured: MeasuredOut, grams: Uncertain): Figures<'batch'> {
  const weight = measured.shareOf(grams)
  return figuresOf((nutrient) => weightedSum([{figure: measured.figures[nutrient], weight}]))
}

function eatenGrams(line: IngredientLine, settings: Settings): Uncertain | undefined {
  return (
    line.eaten &&
    weighed(line.eaten.amount.value, settings.scaleGrams, {
      kind: 'weighing',
      subject: `weighing of ${line.name.value}, the part eaten`,
    })
  )
}

function lossesOf(
  line: IngredientLine,
  ingredient: Ingredient,
  whole: Figures<'batch'>,
  settings: Settings,
): readonly Loss[] {
  const losses: Loss[] = []
  if (line.pouredOff) {
    const poured = weighed(line.pouredOff.amount.value, settings.scaleGrams, {
      kind: 'weighing',
      subject: `weighing of what was poured off ${line.name.value}`,
    })
    const factors = ingredient.kind === 'food' ? ingredient.food.factors : undefined
    losses.push(pouredFat(poured, whole, factors))
  }
  if (line.simmeredMinutes) {
    losses.push(evaporatedAlcohol(line.simmeredMinutes.value, whole))
  }
  return losses
}

function afterLosses(whole: Figures<'batch'>, losses: readonly Loss[]): Figures<'batch'> {
  return figuresOf((nutrient) =>
    weightedSum([
      {figure: whole[nutrient], weight: exact(1)},
      ...losses.flatMap((loss) => loss.termsOf(nutrient)),
    ]),
  )
}
