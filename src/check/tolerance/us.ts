import type {PublishedNutrient} from '../../food/nutrients.ts'
import type {Allowance, Compared} from './allowance.ts'

/**
 * The nutrients a label must not understate: 21 CFR 101.9(g)(5), measured at most 120 % of
 * declared. All others are naturally occurring class II: 101.9(g)(4), measured at least 80 %.
 */
const mustNotUnderstate: ReadonlySet<PublishedNutrient> = new Set([
  'energy',
  'sugars',
  'addedSugars',
  'fat',
  'saturated',
  'trans',
  'cholesterol',
  'sodium',
  'salt',
])

/** 21 CFR 101.9(g), one-sided as the regulation has it; the recipe's figure stands for the measured one. */
export function usAllowance({nutrient, value}: Compared): Allowance {
  return mustNotUnderstate.has(nutrient)
    ? {below: value - value / 1.2, above: Number.POSITIVE_INFINITY}
    : {below: Number.POSITIVE_INFINITY, above: value / 0.8 - value}
}

/** The same shares on both sides: what a page states is wrong whichever way it is wrong. */
export function usAllowanceBothWays({value}: Compared): Allowance {
  return {below: value - value / 1.2, above: value / 0.8 - value}
}
