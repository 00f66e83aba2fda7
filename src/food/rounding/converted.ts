import {dailyValue} from '../daily-values.ts'
import type {Nutrient} from '../nutrients.ts'
import {percentStep} from './percent-of-day.ts'
import {usDeclarations, usSpan} from './us.ts'

/** A figure per 100 g that somebody worked out from the one a packet declares for a serving. */
export interface Converted {
  /** In the nutrient's own unit. */
  readonly value: number
  /** The step it was rounded to when it was worked out. */
  readonly increment: number
}

/** Far below what any label rounds to, far above the error of floating point. */
const floatSlack = 1e-9

/**
 * How wide the amounts are that a US packet declares so, per 100 g: 1 g of fat in a serving of 14 g
 * may be 0.75 to 1.25 g, which is 3.6 g per 100 g wide. An amount that the law would never print was
 * converted from a percentage of the day (vitamins and minerals before 2020), or for another
 * serving: it is as wide as the law's steps are at its size. Rounding: 21 CFR 101.9(c).
 * @param servingGrams above 0
 * @returns 0 or more, in the nutrient's own unit; at least the step of the figure itself
 */
export function convertedWidth(
  nutrient: Nutrient,
  {value, increment}: Converted,
  servingGrams: number,
): number {
  const perServing = (value * servingGrams) / 100
  const slack = ((increment / 2) * servingGrams) / 100 + floatSlack
  const amounts = usDeclarations(nutrient, perServing).filter(({kind}) => kind === 'amount')
  const nearest = amounts.at(-1)
  const isDeclared = nearest !== undefined && Math.abs(nearest.value - perServing) <= slack
  const span = nearest && usSpan(nutrient, nearest)
  const step = span ? span.high - span.low : 0
  const width = isDeclared ? step : Math.max(step, stepOfPercentage(nutrient, perServing))
  return Math.max(increment, (width * 100) / servingGrams)
}

/** What one step of a vitamin's or mineral's percentage is worth; 0 for other nutrients. */
function stepOfPercentage(nutrient: Nutrient, amount: number): number {
  const day = dailyValue.us[nutrient]
  const step = day === undefined ? undefined : percentStep(nutrient, (100 * amount) / day)
  return day === undefined || step === undefined ? 0 : (step * day) / 100
}
