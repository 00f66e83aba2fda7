import {LinearParts, type Parts, type PartsTerm} from './linear-parts.ts'
import type {Source} from './source.ts'

export type {Source} from './source.ts'

/**
 * Figures that know how well they are known: first-order propagation of independent
 * standard uncertainties. Source of the method: JCGM 100:2008 (GUM), clauses 4.3 and 5.1.
 */

/**
 * A value and what each source adds to it. A part is the source's standard uncertainty times
 * its sensitivity, signed, in the unit of the value; the same source met twice adds up before
 * squaring, so one label used in three components stays one source.
 */
export interface Uncertain {
  readonly value: number
  readonly parts: Parts
}

/** Of what is exact. */
export const noParts: Parts = new Map()

/** A value taken as exact. */
export function exact(value: number): Uncertain {
  return {value, parts: noParts}
}

/**
 * A reading that may lie anywhere in `width` around the value with equal chance.
 * @param width full width of the interval, in the unit of the value, 0 or more
 * @returns the value with standard uncertainty width/√12 (GUM 4.3.7, F.2.2.1; for an interval
 *   that is not centred on the value, GUM 4.3.8)
 */
export function rectangular(value: number, width: number, source: Source): Uncertain {
  return width > 0 ? {value, parts: new Map([[source, width / Math.sqrt(12)]])} : exact(value)
}

/** A value with the parts of a weighted sum. */
export function linear(value: number, terms: readonly PartsTerm[]): Uncertain {
  return {value, parts: terms.length === 0 ? noParts : new LinearParts(terms)}
}

/** `factor` × `quantity`, the factor being exact. */
export function scaled(quantity: Uncertain, factor: number): Uncertain {
  return linear(quantity.value * factor, [{parts: quantity.parts, factor}])
}

/** The sum of quantities; parts of the same source add up with their signs. */
export function sum(quantities: Iterable<Uncertain>): Uncertain {
  const terms: PartsTerm[] = []
  let value = 0
  for (const quantity of quantities) {
    value += quantity.value
    terms.push({parts: quantity.parts, factor: 1})
  }
  return linear(value, terms)
}

/** `left` − `right`. */
export function difference(left: Uncertain, right: Uncertain): Uncertain {
  return sum([left, scaled(right, -1)])
}

/** `left` × `right`, to first order. */
export function product(left: Uncertain, right: Uncertain): Uncertain {
  return linear(left.value * right.value, [
    {parts: left.parts, factor: right.value},
    {parts: right.parts, factor: left.value},
  ])
}

/** `left` ÷ `right`, to first order; `right` must not be 0. */
export function quotient(left: Uncertain, right: Uncertain): Uncertain {
  return linear(left.value / right.value, [
    {parts: left.parts, factor: 1 / right.value},
    {parts: right.parts, factor: -left.value / right.value ** 2},
  ])
}

/** Combined standard uncertainty of independent sources (GUM 5.1.2), in the unit of the value. */
export function standardUncertainty(quantity: Uncertain): number {
  let variance = 0
  for (const part of quantity.parts.values()) variance += part ** 2
  return Math.sqrt(variance)
}

/** Coverage factor of every ± that is shown: about 95 % for a sum of many sources (GUM 6.3.3, G.6.6). */
export const coverageFactor = 2

/** The ± beside a figure: coverage factor times the standard uncertainty, in the unit of the value. */
export function expandedUncertainty(quantity: Uncertain): number {
  return coverageFactor * standardUncertainty(quantity)
}
