import type {PublishedNutrient} from '../../food/nutrients.ts'
import {type Allowance, both, type Compared} from './allowance.ts'

/**
 * Rounding step a US label may use at a value: 21 CFR 101.9(c)(1)–(8), unit of the nutrient.
 * A writer who rounds as a packet does is not wrong.
 */
function roundingStep(nutrient: PublishedNutrient, value: number): number {
  switch (nutrient) {
    case 'energy':
      return value <= 50 ? 5 : 10
    case 'fat':
    case 'saturated':
    case 'trans':
      return value < 5 ? 0.5 : 1
    case 'cholesterol':
      return 5
    case 'sodium':
      return value <= 140 ? 5 : 10
    case 'salt':
      return value < 1 ? 0.01 : 0.1
    case 'potassium':
    case 'calcium':
      return 10
    case 'iron':
    case 'vitaminD':
      return 0.1
    default:
      return 1
  }
}

/**
 * What a careful household disagrees with itself by: a spoonful of batter left in the bowl is 1.7 %
 * of a usual batch, and a tablespoon of butter that nobody listed more than 2 % of the energy of
 * nearly every dish. The project's choice, from the measurements in docs/tolerances.md.
 */
const householdRatio = 0.02

/** Half a label's rounding step, or 2 % of the figure where that is more. */
export function householdAllowance({nutrient, value}: Compared): Allowance {
  return both(Math.max(roundingStep(nutrient, value) / 2, householdRatio * value))
}
