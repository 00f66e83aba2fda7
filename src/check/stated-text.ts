import type {StatedFigure} from '../cookbook/recipe.ts'
import {nutrientUnit} from '../food/nutrients.ts'
import {parseFigure} from '../food/parse-figure.ts'
import {formatFigure, roundedText} from '../units/format-figure.ts'
import {numberAtStart} from '../units/number-text.ts'

/** An amount of the stated figure's nutrient, written as finely as the writer wrote theirs. */
export function asFineAs({nutrient, increment}: StatedFigure, value: number): string {
  // Past 12 decimals a step is noise of the conversion from kJ.
  const decimals = Math.min(12, Math.ceil(-Math.log10(increment) - 1e-9))
  return formatFigure(value, nutrientUnit[nutrient], decimals)
}

/**
 * A stated figure as its writer would have written another value: with their unit, their blanks
 * and as many decimals.
 * @param value in the nutrient's own unit
 * @returns nothing for a figure that is no plain decimal number, such as `<0.5 g`
 */
export function rewrittenFigure({nutrient, text}: StatedFigure, value: number): string | undefined {
  const start = numberAtStart(text)
  const digits = /^\d+(?:\.(\d+))?(?=\s*\p{Letter})/u.exec(text)
  if (!start.ok || !digits) return undefined
  const unit = parseFigure(nutrient, `1${start.value.rest}`)
  if (!unit.ok) return undefined
  const decimals = digits[1]?.length ?? 0
  return `${roundedText(value / unit.value.value, decimals)}${text.slice(digits[0].length)}`
}
