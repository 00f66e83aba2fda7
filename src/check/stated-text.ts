import type {StatedFigure} from '../cookbook/recipe.ts'
import {nutrientUnit} from '../food/nutrients.ts'
import {formatFigure} from '../units/format-figure.ts'

/** An amount of the stated figure's nutrient, written as finely as the writer wrote theirs. */
export function asFineAs({nutrient, increment}: StatedFigure, value: number): string {
  // Past 12 decimals a step is noise of the conversion from kJ.
  const decimals = Math.min(12, Math.ceil(-Math.log10(increment) - 1e-9))
  return formatFigure(value, nutrientUnit[nutrient], decimals)
}
