import type {Amount, Measured} from '../../units/amount.ts'
import {measureOf} from '../../units/measures.ts'
import type {Kitchen} from '../../units/parse-amount.ts'
import {volumeNames, weightNames} from '../../units/unit-names.ts'
import {gramsPerUnit, millilitresPerUnit} from '../../units/units.ts'
import {matchAt, type TextRange} from './match-at.ts'
import {type ProseQuantity, quantityAt, quantityStarts} from './quantity.ts'

/** An amount of something in a sentence: `180 g`, `half a cup`, `two tablespoons`, `3 cloves`. */
export interface AmountMention extends TextRange {
  readonly amount: Exclude<Amount, {kind: 'batch'}>
}

const unitWord = /\s*-?\s*(fl\.?\s?oz|fluid\s+ounces?|\p{L}+)\b\.?/iuy

/** What holds or is cut, not what is used: a 2 lb tin, a 500 ml jar, 50 g balls. */
const vessel =
  /[-\s]*(?:\w+[-\s]+){0,2}?(?:tins?|jars?|bowls?|jugs?|dish(?:es)?|pans?|pots?|casseroles?|containers?|moulds?|ramekins?|glass(?:es)?|bottles?|mugs?|balls?|pieces?|portions?|rounds?|pucks?|patties|chunks?)\b/iy

/** Every amount of a passage, in order; a bare number (`2 eggs`) counts in `each`. */
export function amountsIn(text: string, kitchen: Kitchen): readonly AmountMention[] {
  const mentions: AmountMention[] = []
  let behind = 0
  for (const from of quantityStarts(text)) {
    if (from < behind) continue
    const found = amountAt(text, from, kitchen)
    if (!found) continue
    behind = found.to
    if (!matchAt(vessel, text, found.to)) mentions.push(found)
  }
  return mentions
}

function amountAt(text: string, from: number, kitchen: Kitchen): AmountMention | undefined {
  const quantity = quantityAt(text, from)
  if (!quantity || quantity.low <= 0) return undefined
  const unit = matchAt(unitWord, text, quantity.to)
  const amount = unit && inUnit(quantity, unit[1] ?? '', kitchen)
  if (unit && amount) {
    const to = quantity.to + unit[0].trimEnd().length
    return {from, to, amount: {...amount, text: text.slice(from, to)}}
  }
  return bareCount(text, from, quantity)
}

/** The word behind a bare number names what is counted: no time, length, degree or share. */
const thing =
  /\s+(?!(?:seconds?|secs?|minutes?|mins?|hours?|hrs?|h|days?|weeks?|months?|cm|mm|in|inch(?:es)?|per|percent|degrees?|or|and|to|more|times?|at|of|on|[CF])\b)\p{L}/uy

/** A number before a word, where it is more than an article: `2 eggs`, `three onions`. */
function bareCount(text: string, from: number, quantity: ProseQuantity): AmountMention | undefined {
  const isArticle = /^(?:an?|half|few|several)\b/i.test(text.slice(from, quantity.to))
  if (isArticle || !matchAt(thing, text, quantity.to)) return undefined
  const amount = {kind: 'count', measure: 'each', count: measured(quantity, 1)} as const
  return {from, to: quantity.to, amount: {...amount, text: text.slice(from, quantity.to)}}
}

type Unwritten<A> = A extends Amount ? Omit<A, 'text' | 'beside'> : never

function inUnit(
  quantity: ProseQuantity,
  word: string,
  kitchen: Kitchen,
): Unwritten<AmountMention['amount']> | undefined {
  const name = word
    .toLowerCase()
    .replace(/^fl\.?\s?oz$/, 'fl oz')
    .replace(/\s+/g, ' ')
  const weight = weightNames.get(name)
  if (weight) return {kind: 'weight', grams: measured(quantity, gramsPerUnit[weight])}
  const volume = volumeNames.get(name)
  if (volume) {
    const millilitres = measured(quantity, millilitresPerUnit[kitchen.cups][volume])
    return {kind: 'volume', millilitres, measure: volume, count: measured(quantity, 1)}
  }
  const measure = measureOf(name, kitchen.measures)
  return measure === undefined ? undefined : {kind: 'count', measure, count: measured(quantity, 1)}
}

function measured({low, high, increment}: ProseQuantity, factor: number): Measured {
  return {
    value: ((low + high) / 2) * factor,
    halfRange: ((high - low) / 2) * factor,
    increment: increment * factor,
  }
}
