/**
 * Figures that know how well they are known: first-order propagation of independent
 * standard uncertainties. Source of the method: JCGM 100:2008 (GUM), clauses 4.3 and 5.1.
 */

/** One independent reason why a figure is not exact: one weighing, one printed figure. */
export interface Source {
  readonly kind: 'weighing' | 'measure' | 'yield' | 'label' | 'table' | 'loss' | 'stated'
  /** In a writer's words, e.g. `weighing of pearl barley` or `energy on the label of skyr, plain`. */
  readonly subject: string
}

/**
 * A value and what each source adds to it. A part is the source's standard uncertainty times
 * its sensitivity, signed, in the unit of the value; the same source met twice adds up before
 * squaring, so one label used in three components stays one source.
 */
export interface Uncertain {
  readonly value: number
  readonly parts: ReadonlyMap<Source, number>
}

const noParts: ReadonlyMap<Source, number> = new Map()

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

/** `factor` × `quantity`, the factor being exact. */
export function scaled(quantity: Uncertain, factor: number): Uncertain {
  const parts = new Map<Source, number>()
  addParts(parts, quantity.parts, factor)
  return {value: quantity.value * factor, parts}
}

/** The sum of quantities; parts of the same source add up with their signs. */
export function sum(quantities: Iterable<Uncertain>): Uncertain {
  const parts = new Map<Source, number>()
  let value = 0
  for (const quantity of quantities) {
    value += quantity.value
    addParts(parts, quantity.parts, 1)
  }
  return {value, parts}
}

/** `left` − `right`. */
export function difference(left: Uncertain, right: Uncertain): Uncertain {
  return sum([left, scaled(right, -1)])
}

/** `left` × `right`, to first order. */
export function product(left: Uncertain, right: Uncertain): Uncertain {
  const parts = new Map<Source, number>()
  addParts(parts, left.parts, right.value)
  addParts(parts, right.parts, left.value)
  return {value: left.value * right.value, parts}
}

/** `left` ÷ `right`, to first order; `right` must not be 0. */
export function quotient(left: Uncertain, right: Uncertain): Uncertain {
  const parts = new Map<Source, number>()
  addParts(parts, left.parts, 1 / right.value)
  addParts(parts, right.parts, -left.value / right.value ** 2)
  return {value: left.value / right.value, parts}
}

/** Adds `factor` × `more` to `parts`, in place: the one inner loop of the propagation. */
export function addParts(
  parts: Map<Source, number>,
  more: ReadonlyMap<Source, number>,
  factor: number,
): void {
  for (const [source, part] of more) parts.set(source, (parts.get(source) ?? 0) + part * factor)
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
