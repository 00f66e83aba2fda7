import {roundedText} from '../units/format-figure.ts'

/** Steps a shopper reads, g: up to `belowGrams` in steps of `stepGrams`. */
const steps = [
  {belowGrams: 20, stepGrams: 1},
  {belowGrams: 100, stepGrams: 5},
  {belowGrams: 1000, stepGrams: 10},
  {belowGrams: Number.POSITIVE_INFINITY, stepGrams: 50},
] as const

/** A weight rounded up to one that is easy to ask for, so that there is always enough, g. */
export function shopGrams(grams: number): number {
  const step = steps.find(({belowGrams}) => grams < belowGrams)?.stepGrams ?? 1
  return Math.ceil(Number((grams / step).toPrecision(6))) * step
}

/** `320 g`, `1.45 kg`. */
export function shopWeightText(grams: number): string {
  if (grams < 1000) return `${roundedText(grams, 0)} g`
  const decimals = grams % 100 === 0 ? 1 : 2
  return `${roundedText(grams / 1000, grams % 1000 === 0 ? 0 : decimals)} kg`
}
