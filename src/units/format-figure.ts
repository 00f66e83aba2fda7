import {expandedUncertainty, type Uncertain} from './uncertain.ts'

/** The one place where numbers become text: no locale, no clock, the same digits everywhere. */

export type FigureUnit = 'kcal' | 'kJ' | 'g' | 'mg' | 'µg'

/** A figure as a page shows it; `plusMinus` is absent for a figure taken as exact. */
export interface FigureText {
  readonly value: string
  readonly plusMinus?: string
  readonly unit: FigureUnit
}

/**
 * Digits of a double that carry information. A sum of doubles ends in noise: 0.35 g added up from
 * five lines may be 0.34999999999999997, and must not round down for that.
 */
const significantDigits = 12

/**
 * Decimal text, rounded half away from zero. Rounds the decimal text and not the double, so that
 * 1.005 gives 1.01.
 * @param decimals digits after the point; negative rounds to tens, hundreds …
 */
export function roundedText(value: number, decimals: number): string {
  const magnitude = Math.abs(value)
  const size =
    roundedFarFromHalf(magnitude, decimals) ??
    shifted(Math.round(shifted(magnitude, decimals)), -decimals)
  return (value < 0 && size > 0 ? -size : size).toFixed(Math.max(0, decimals))
}

/** Far above the noise of a double below the limit. */
const [halfMargin, mostScaled] = [1e-6, 1e8]

/** The same by arithmetic, ten times as fast; undefined where noise could decide which way it goes. */
function roundedFarFromHalf(magnitude: number, decimals: number): number | undefined {
  if (decimals < 0 || decimals > 3) return undefined
  const power = 10 ** decimals
  const scaled = magnitude * power
  const rest = scaled - Math.floor(scaled)
  if (scaled > mostScaled || Math.abs(rest - 0.5) < halfMargin) return undefined
  return Math.round(scaled) / power
}

/** `value` × 10^`places`, by moving the point in its decimal text. */
function shifted(value: number, places: number): number {
  const [digits = '0', exponent = '0'] = value.toPrecision(significantDigits).split('e')
  return Number(`${digits}e${Number(exponent) + places}`)
}

/** Digits after the point of a figure shown without its ±: whole energy, 0.1 below 10, else whole. */
export function usualDecimals(value: number, unit: FigureUnit): number {
  if (unit === 'kcal' || unit === 'kJ') return 0
  return Math.abs(Number(roundedText(value, 1))) < 10 ? 1 : 0
}

/** `455 kcal`, `9.3 g`, `38 g`. */
export function formatFigure(
  value: number,
  unit: FigureUnit,
  decimals: number = usualDecimals(value, unit),
): string {
  return `${roundedText(value, decimals)} ${unit}`
}

/** The finest digit a figure with ± is shown to. */
function finestDecimals(unit: FigureUnit): number {
  return unit === 'g' || unit === 'µg' ? 1 : 0
}

/**
 * A figure with its ±. The ± has at most two significant digits and decides the last digit of the
 * value (GUM 7.2.6).
 * @param finest digits after the point at most
 */
export function figureText(
  quantity: Uncertain,
  unit: FigureUnit,
  finest: number = finestDecimals(unit),
): FigureText {
  const uncertainty = expandedUncertainty(quantity)
  if (uncertainty === 0) {
    const decimals = Math.max(usualDecimals(quantity.value, unit), finest > 1 ? finest : 0)
    return {value: roundedText(quantity.value, decimals), unit}
  }
  const decimals = Math.min(finest, 1 - Math.floor(Math.log10(uncertainty)))
  return {
    value: roundedText(quantity.value, decimals),
    plusMinus: uncertaintyText(uncertainty, decimals),
    unit,
  }
}

/**
 * Share of an uncertainty that rounding may take away before it is rounded up instead. GUM 7.2.6
 * rounds 10.47 up to 11 and 28.05 down to 28; the share is chosen so that both come out.
 */
const mostUnderstated = 0.04

function uncertaintyText(uncertainty: number, decimals: number): string {
  const exact = shifted(uncertainty, decimals)
  const nearest = Math.round(exact)
  const steps = nearest < exact * (1 - mostUnderstated) ? Math.ceil(exact) : nearest
  return roundedText(shifted(steps, -decimals), decimals)
}

/** `453 ± 9 kcal`. */
export function formatUncertain(quantity: Uncertain, unit: FigureUnit, finest?: number): string {
  const {value, plusMinus} = figureText(quantity, unit, finest)
  return plusMinus === undefined ? `${value} ${unit}` : `${value} ± ${plusMinus} ${unit}`
}
