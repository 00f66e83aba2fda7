import type {Amount, Measured, WeightAmount} from './amount.ts'
import {measureText} from './measures.ts'
import {numberText} from './number-text.ts'
import {weightNames} from './unit-names.ts'
import {gramsPerUnit} from './units.ts'

/**
 * An amount as a cook would write it, in the unit its last digit was written in: reading the text
 * gives the same amount again.
 */
export function formatAmount(amount: Amount): string {
  const text = withoutMeasureBeside(amount)
  return amount.beside ? `${text} (${formatAmount(amount.beside)})` : text
}

function withoutMeasureBeside(amount: Amount): string {
  if (amount.kind === 'weight') return weightText(amount)
  const number = amount.kind === 'batch' ? amount.batches : amount.count
  return `${numberText(number) ?? String(number.value)} ${measureWord(amount, number.value)}`.trim()
}

/** What stands behind the number: `cloves`, `cup`, `batch`; nothing for what is counted as such. */
export function measureWord(amount: Exclude<Amount, WeightAmount>, count: number): string {
  switch (amount.kind) {
    case 'volume':
      return volumeText(amount.measure, count)
    case 'count':
      return amount.measure === 'each' ? '' : measureText(amount.measure, count)
    case 'batch':
      return count > 1 ? 'batches' : 'batch'
  }
}

function volumeText(measure: string, count: number): string {
  return measure === 'cup' || measure === 'pint' || measure === 'quart'
    ? measureText(measure, count)
    : measure
}

function weightText({grams}: WeightAmount): string {
  for (const unit of new Set(weightNames.values())) {
    const text = numberText(divided(grams, gramsPerUnit[unit]))
    if (text !== undefined) return `${text} ${unit}`
  }
  return `${String(grams.value)} g`
}

function divided({value, halfRange, increment}: Measured, divisor: number): Measured {
  return {value: value / divisor, halfRange: halfRange / divisor, increment: increment / divisor}
}
