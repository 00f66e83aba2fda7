import {
  type FigureText,
  figureText,
  formatFigure,
  formatUncertain,
  usualDecimals,
} from '../units/format-figure.ts'
import type {Uncertain} from '../units/uncertain.ts'
import {type Nutrient, nutrientUnit} from './nutrients.ts'

/**
 * Salt is told finer than other grams: European Commission, guidance on tolerances (Dec 2012),
 * rounds salt below 1 g per 100 g to 0.01 g.
 */
const saltDecimals = 2

/** `455 kcal`, `9.3 g`, `0.13 g` of salt. */
export function nutrientText(nutrient: Nutrient, value: number): string {
  const unit = nutrientUnit[nutrient]
  const decimals = nutrient === 'salt' && value < 1 ? saltDecimals : usualDecimals(value, unit)
  return formatFigure(value, unit, decimals)
}

/** Value and ± apart, for a table's cells. */
export function nutrientFigure(nutrient: Nutrient, quantity: Uncertain): FigureText {
  return figureText(quantity, nutrientUnit[nutrient], finest(nutrient))
}

/** `453 ± 9 kcal`. */
export function nutrientWithUncertainty(nutrient: Nutrient, quantity: Uncertain): string {
  return formatUncertain(quantity, nutrientUnit[nutrient], finest(nutrient))
}

function finest(nutrient: Nutrient): number | undefined {
  return nutrient === 'salt' ? saltDecimals : undefined
}
