import type {Amount, CountAmount, Measured, VolumeAmount, WeightAmount} from './amount.ts'
import {formatFigure} from './format-figure.ts'
import {measureOf, measureWords} from './measures.ts'
import {nearest} from './nearest.ts'
import {type NumberStart, numberAtStart} from './number-text.ts'
import {type Parsed, parsed, type Refusal, refused} from './parsed.ts'
import {unitWords, volumeNames, weightNames} from './unit-names.ts'
import {type CupSystem, gramsPerUnit, millilitresPerUnit} from './units.ts'

/** What the meaning of an amount depends on besides its text. */
export interface Kitchen {
  readonly cups: CupSystem
  /** Measures the cookbook's own foods bring, in the singular: `scoop`, `pot`. */
  readonly measures: ReadonlySet<string>
}

const batchWords: readonly string[] = ['batch', 'batches']

/**
 * Reads an amount as people write it: `150 g`, `1 1/2 lb`, `½ cup`, `2 cloves`, `1 medium`, `3`,
 * `10-12 g`, `½ batch`, `13.5 g (1 tbsp)`.
 * @returns grams, millilitres or a count, always finite and above 0
 */
export function parseAmount(text: string, kitchen: Kitchen): Parsed<Amount> {
  const trimmed = text.trim()
  const brackets = /^(.*?)\s*\(([^()]*)\)$/s.exec(trimmed)
  return brackets
    ? withMeasureBeside(trimmed, [brackets[1] ?? '', brackets[2] ?? ''], kitchen)
    : simpleAmount(trimmed, kitchen)
}

/** A weight alone, where no other kind of amount makes sense. */
export function parseWeight(text: string, kitchen: Kitchen): Parsed<WeightAmount> {
  const amount = parseAmount(text, kitchen)
  if (!amount.ok) return amount
  if (amount.value.kind !== 'weight') return noWeight(amount.value)
  return parsed(amount.value)
}

function noWeight(amount: Exclude<Amount, WeightAmount>): Refusal {
  if (/^[\d.]+$/.test(amount.text)) {
    const instead = `${amount.text} g`
    return refused(`a unit: \`${instead}\``, {instead: [instead]})
  }
  return refused(
    'a weight such as `150 g`',
    amount.kind === 'volume' ? {note: `Weigh \`${amount.text}\` once, and write the grams.`} : {},
  )
}

function withMeasureBeside(
  text: string,
  [outside, inside]: readonly [string, string],
  kitchen: Kitchen,
): Parsed<Amount> {
  const amount = simpleAmount(outside, kitchen)
  if (!amount.ok) return amount
  const beside = simpleAmount(inside.trim(), kitchen)
  if (!beside.ok) return beside
  if (amount.value.kind === 'weight' && isMeasure(beside.value)) {
    return parsed({...amount.value, text, beside: beside.value})
  }
  if (amount.value.kind === 'weight' && beside.value.kind === 'weight') {
    return weightTwice({...amount.value, text}, beside.value)
  }
  if (beside.value.kind === 'weight' && isMeasure(amount.value)) {
    const turned = `${inside.trim()} (${outside})`
    return refused(`the weight first: \`${turned}\``, {instead: [turned]})
  }
  return refused('a weight with its kitchen measure in brackets, such as `13.5 g (1 tbsp)`')
}

/** How far apart two units may write one weight: 30 g is called 1 oz. The project's choice. */
const sameWeightRatio = 0.06

/**
 * The same weight for readers of another unit: `28 g (1 oz)`. The first is what is counted; the
 * other is its text alone, and must not be another weight.
 */
function weightTwice(amount: WeightAmount, beside: WeightAmount): Parsed<Amount> {
  const {value, increment} = amount.grams
  const apart = Math.abs(beside.grams.value - value)
  const roundingGrams = Math.min(increment, beside.grams.increment) / 2
  if (apart <= Math.max(roundingGrams, sameWeightRatio * value)) return parsed(amount)
  return refused(
    `the same weight in brackets: \`${beside.text}\` is \`${formatFigure(beside.grams.value, 'g')}\``,
  )
}

function isMeasure(amount: Amount): amount is VolumeAmount | CountAmount {
  return amount.kind === 'volume' || amount.kind === 'count'
}

function simpleAmount(text: string, kitchen: Kitchen): Parsed<Amount> {
  const start = numberAtStart(text)
  if (!start.ok) return start
  if (start.value.number.value === 0) return refused('an amount above `0`')
  return withUnit(text, start.value, kitchen)
}

function withUnit(text: string, {number, rest}: NumberStart, kitchen: Kitchen): Parsed<Amount> {
  const words = unitWords(rest)
  const weight = weightNames.get(words)
  if (weight) return parsed({kind: 'weight', text, grams: times(number, gramsPerUnit[weight])})
  const volume = volumeNames.get(words)
  if (volume) {
    const millilitres = times(number, millilitresPerUnit[kitchen.cups][volume])
    return parsed({kind: 'volume', text, millilitres, measure: volume, count: number})
  }
  if (batchWords.includes(words)) return parsed({kind: 'batch', text, batches: number})
  const measure = words === '' ? 'each' : measureOf(words, kitchen.measures)
  if (measure) return parsed({kind: 'count', text, count: number, measure})
  return unknownUnit(text, rest, kitchen)
}

function unknownUnit(text: string, rest: string, kitchen: Kitchen): Parsed<Amount> {
  const known = [
    ...weightNames.keys(),
    ...volumeNames.keys(),
    ...batchWords,
    ...measureWords,
    ...kitchen.measures,
  ]
  const note = 'A measure of your own needs a weight under `measures` of the food in foods.yaml.'
  const meant = nearest(unitWords(rest), known)
  if (meant === undefined) {
    return refused('a unit such as `g`, `ml`, `cup`, `tbsp`, `clove` or `medium`', {note})
  }
  const instead = `${text.slice(0, text.length - rest.length).trimEnd()} ${meant}`
  return refused(`a known unit: \`${instead}\``, {instead: [instead], note})
}

function times({value, halfRange, increment}: Measured, factor: number): Measured {
  return {value: value * factor, halfRange: halfRange * factor, increment: increment * factor}
}
