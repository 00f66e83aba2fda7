import type {ComputedLine} from '../../src/nutrition/computed.ts'
import type {Amount} from '../../src/units/amount.ts'
import {formatFigure} from '../../src/units/format-figure.ts'
import {formatWrittenGrams} from '../../src/units/format-weight.ts'
import {type NumberWords, withDecimal} from '../words/decimal.ts'

/**
 * The weight of an amount, in grams. A weight keeps the digits it was written with; anything else
 * is shown by what it came to.
 * @param grams what the amount weighs, g
 */
export function weightText(amount: Amount, grams: number, words: NumberWords): string {
  const text =
    amount.kind === 'weight' ? formatWrittenGrams(amount.grams) : formatFigure(grams, 'g')
  return withDecimal(text, words)
}

/** The weight of a line as listed: as bought where the line is, else what goes in. */
export function lineWeight(entry: ComputedLine, words: NumberWords): string {
  const {line, grams, purchasedGrams} = entry
  return weightText(line.amount.value, line.isBought ? purchasedGrams : grams.value, words)
}

/** The amount in the kitchen's own measure, as written; undefined where there is only a weight. */
export function kitchenMeasure(amount: Amount, words: NumberWords): string | undefined {
  const text = writtenMeasure(amount)
  return text === undefined ? undefined : withDecimal(text, words)
}

function writtenMeasure(amount: Amount): string | undefined {
  if (amount.kind !== 'weight') return amount.text
  if (amount.beside) return amount.beside.text
  // Pounds and kilograms stay beside the grams; grams are not said twice.
  const grams = formatWrittenGrams(amount.grams)
  return isSame(amount.text, grams) ? undefined : amount.text
}

function isSame(written: string, shown: string): boolean {
  const bare = (text: string) => text.replaceAll(' ', '').replaceAll('-', '–')
  return bare(written) === bare(shown)
}
