import {formatFigure, roundedText, usualDecimals} from '../../../src/units/format-figure.ts'
import type {CookedChoice, Measure} from '../../parts/cooking-data.ts'
import {type NumberWords, withDecimal} from '../../words/decimal.ts'

/** `430 g`, `15–18 g`: a scaled weight, as finely as a kitchen weighs. */
export function weightText(
  grams: CookedChoice['grams'],
  batches: number,
  words: NumberWords,
): string {
  return withDecimal(pointText(grams, batches), words)
}

function pointText(grams: CookedChoice['grams'], batches: number): string {
  if (typeof grams === 'number') return formatFigure(grams * batches, 'g')
  const [low, high] = [grams[0] * batches, grams[1] * batches]
  return `${roundedText(low, usualDecimals(high, 'g'))}–${formatFigure(high, 'g')}`
}

/** How far a measure in quarters may lie from the scaled one: as far as two cooks fill a spoon. */
const mostAsideRatio = 0.1

const quarterSigns = ['', '¼', '½', '¾']

/**
 * A kitchen measure, scaled and told in quarters: `4½ tbsp`.
 * @returns undefined where quarters would be too coarse: the weight stands alone then
 */
export function measureText({count, one, many}: Measure, batches: number): string | undefined {
  const exact = count * batches
  const quarters = Math.round(exact * 4)
  if (Math.abs(quarters / 4 - exact) > mostAsideRatio * exact) return undefined
  const number = `${Math.floor(quarters / 4) || ''}${quarterSigns[quarters % 4]}`
  return `${number} ${quarters > 4 ? many : one}`.trim()
}

/** Weight and measure of a choice. */
export function amountTexts(choice: CookedChoice, batches: number, words: NumberWords) {
  return {
    weight: weightText(choice.grams, batches, words),
    measure: choice.measure && measureText(choice.measure, batches),
  }
}
