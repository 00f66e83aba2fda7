import type {Span} from '../../units/span.ts'

/** A figure as a label declares it: `5 g`, or `less than 1 g`. */
export interface Declared {
  readonly kind: 'amount' | 'less than'
  /** In the nutrient's own unit; for `less than` the limit. */
  readonly value: number
}

/** Unrounded values below a limit (and not in an earlier band), rounded to one step. */
interface Band {
  readonly below: number
  readonly step: number
}

/** How a law rounds one nutrient. The band is chosen from the unrounded value; halves go up. */
export interface RoundingScheme {
  /** Ascending, the last one without end; every limit is a multiple of both steps it parts. */
  readonly bands: readonly Band[]
  /** Values below this are, or may be, declared as 0; 0 where the law has no zero. */
  readonly zeroBelow: number
  /** Whether `zeroBelow` itself is still small: the EU guidance has ≤, 21 CFR 101.9 has <. */
  readonly isLimitSmall: boolean
  /** `must`: nothing but 0 is allowed below `zeroBelow`; `may`: the rounded value is too. */
  readonly zero: 'must' | 'may'
  /** The range that may be declared in words, `less than` the limit. */
  readonly lessThan?: {readonly limit: number; readonly from: number; readonly below: number}
}

/** One step at every size. */
export function everyStep(step: number): readonly Band[] {
  return [{below: Number.POSITIVE_INFINITY, step}]
}

/** Bands that keep a number of significant figures, for values from 0.001 to 100,000. */
export function significantFigures(figures: number): readonly Band[] {
  const decades = [-2, -1, 0, 1, 2, 3, 4, 5]
  return decades.map((decade, index) => ({
    below: index === decades.length - 1 ? Number.POSITIVE_INFINITY : 10 ** decade,
    step: 10 ** (decade - figures),
  }))
}

/**
 * Every declaration the law allows for a value, the usual one first.
 * @param unrounded 0 or more, in the nutrient's own unit
 */
export function declarations(scheme: RoundingScheme, unrounded: number): readonly Declared[] {
  const {zeroBelow, zero, lessThan} = scheme
  const isBelow = (limit: number): boolean =>
    unrounded < limit || (scheme.isLimitSmall && unrounded === limit)
  const allowed: Declared[] = []
  if (isBelow(zeroBelow)) allowed.push({kind: 'amount', value: 0})
  if (lessThan && unrounded >= lessThan.from && isBelow(lessThan.below)) {
    allowed.push({kind: 'less than', value: lessThan.limit})
  }
  const value = nearest(unrounded, stepOf(scheme, unrounded))
  const isRoundedAllowed = value > 0 && (zero === 'may' || !isBelow(zeroBelow))
  if (isRoundedAllowed || allowed.length === 0) allowed.push({kind: 'amount', value})
  return allowed
}

/**
 * The values behind a declaration: from `low` up to, not including, `high`. The printed value
 * stays the value; for `less than` it is the middle.
 * @returns undefined for a value the law never declares (2.3 g of fat on a US label)
 */
export function spanBehind(scheme: RoundingScheme, {kind, value}: Declared): Span | undefined {
  if (kind === 'less than') {
    const {lessThan} = scheme
    return lessThan?.limit === value ? middled(lessThan.from, lessThan.below) : undefined
  }
  if (value === 0) {
    return scheme.zeroBelow > 0 ? {value, low: 0, high: scheme.zeroBelow} : undefined
  }
  if (nearest(value, stepOf(scheme, value)) !== value) return undefined
  const low = value - stepBelow(scheme, value) / 2
  const high = value + stepOf(scheme, value) / 2
  return {value, low: scheme.zero === 'must' ? Math.max(low, scheme.zeroBelow) : low, high}
}

/** Limits with the value halfway between them. */
export function middled(low: number, high: number): Span {
  return {value: (low + high) / 2, low, high}
}

function stepOf({bands}: RoundingScheme, unrounded: number): number {
  return bands.find(({below}) => unrounded < below)?.step ?? 1
}

/** Step of the values just below a declared one: at the edge of two bands it is the finer. */
function stepBelow({bands}: RoundingScheme, declared: number): number {
  return bands.find(({below}) => declared <= below)?.step ?? 1
}

/**
 * Nearest multiple of a step, exact halves up. Decimal halves have no exact binary form (0.15 ÷ 0.1
 * gives 1.4999…), so the quotient is taken to 12 digits first.
 */
function nearest(value: number, step: number): number {
  const steps = Math.floor(Number((value / step).toPrecision(12)) + 0.5)
  return Number((steps * step).toPrecision(12))
}
