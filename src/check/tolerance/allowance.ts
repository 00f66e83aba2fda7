import type {PublishedNutrient} from '../../food/nutrients.ts'

/** How far a stated figure may lie below and above the computed one, in the nutrient's unit. */
export interface Allowance {
  readonly below: number
  readonly above: number
}

/** A computed figure as a policy looks at it. */
export interface Compared {
  readonly nutrient: PublishedNutrient
  /** Computed, in the nutrient's unit, on the basis of the stated figure. */
  readonly value: number
  /** As the page has it; policies that speak of a share of what is declared need it. */
  readonly stated: number
  /** Grams the value belongs to; policies that speak per 100 g need it. */
  readonly grams: number
}

/** The same allowance on either side. */
export function both(width: number): Allowance {
  return {below: width, above: width}
}
