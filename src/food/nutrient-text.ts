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
 * Digits after the point of what is told finer than its unit. Salt: European Commission, guidance
 * on tolerances (Dec 2012), rounds salt below 1 g per 100 g to 0.01 g. Iron: 21 CFR 101.9(c)(8)
 * asks for tenths of a milligram.
 */
const finestDecimals: Partial<Readonly<Record<Nutrient, number>>> = {salt: 2, iron: 1}

/** `455 kcal`, `9.3 g`, `0.13 g` of salt. */
export function nutrientText(nutrient: Nutrient, value: number): string {
  const unit = nutrientUnit[nutrient]
  const isFineSalt = nutrient === 'salt' && value < 1
  return formatFigure(value, unit, isFineSalt ? finestDecimals.salt : usualDecimals(value, unit))
}

/** Value and ± apart, for a table's cells. */
export function nutrientFigure(nutrient: Nutrient, quantity: Uncertain): FigureText {
  return figureText(quantity, nutrientUnit[nutrient], finestDecimals[nutrient])
}

/** `453 ± 9 kcal`. */
export function nutrientWithUncertainty(nutrient: Nutrient, quantity: Uncertain): string {
  return formatUncertain(quantity, nutrientUnit[nutrient], finestDecimals[nutrient])
}
