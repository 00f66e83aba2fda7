import {addParts, type Source, type Uncertain} from '../units/uncertain.ts'
import {type Nutrient, nutrients} from './nutrients.ts'

/**
 * One nutrient figure. `missing` names the foods whose figure for the nutrient is unknown: while
 * it is not empty the value is "at least" what is known. Unknown is never counted as 0 in silence.
 */
export interface Figure extends Uncertain {
  readonly missing: ReadonlySet<string>
}

/** What figures refer to; the likeliest slip in this trade is to mix them up, so the type tells. */
export type Basis = '100 g' | 'batch' | 'serving'

declare const basis: unique symbol

/** A figure for every nutrient, on one basis. */
export type Figures<B extends Basis> = Readonly<Record<Nutrient, Figure>> & {
  readonly [basis]?: B
}

const nothingMissing: ReadonlySet<string> = new Set()

/** A figure that is known. */
export function known(quantity: Uncertain): Figure {
  return {value: quantity.value, parts: quantity.parts, missing: nothingMissing}
}

/** A figure nobody published for the food named. */
export function unknown(foodName: string): Figure {
  return {value: 0, parts: new Map(), missing: new Set([foodName])}
}

export function isComplete(figure: Figure): boolean {
  return figure.missing.size === 0
}

/** Builds figures nutrient by nutrient. */
export function figuresOf<B extends Basis>(figure: (nutrient: Nutrient) => Figure): Figures<B> {
  const entries = nutrients.map((nutrient) => [nutrient, figure(nutrient)] as const)
  // Object.fromEntries forgets the keys; the list above is exactly the Nutrient union.
  return Object.fromEntries(entries) as Figures<B>
}

/** One term of a weighted sum: `weight` may be negative (poured off), and uncertain itself. */
export interface Term {
  readonly figure: Figure
  /** Dimensionless; e.g. grams ÷ 100 for figures per 100 g. */
  readonly weight: Uncertain
}

/**
 * Σ weight × figure, to first order. A figure stays incomplete when any term with a weight other
 * than zero is.
 */
export function weightedSum(terms: Iterable<Term>): Figure {
  const parts = new Map<Source, number>()
  const missing = new Set<string>()
  let value = 0
  for (const {figure, weight} of terms) {
    value += figure.value * weight.value
    addParts(parts, figure.parts, weight.value)
    addParts(parts, weight.parts, figure.value)
    if (weight.value !== 0) for (const name of figure.missing) missing.add(name)
  }
  return {value, parts, missing}
}
