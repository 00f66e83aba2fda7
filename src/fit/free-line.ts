import type {ComputedLine} from '../nutrition/computed.ts'
import type {CountAmount, Measured, VolumeAmount, WeightAmount} from '../units/amount.ts'
import {formatAmount} from '../units/format-amount.ts'
import {roundedText} from '../units/format-figure.ts'
import type {FitLine} from './fit-problem.ts'

/** A line whose amount may change, with the way back from grams to what the recipe says. */
export interface FreeLine {
  readonly line: ComputedLine
  readonly fitLine: FitLine
  /**
   * The amount as it is written for a weight that the line may become.
   * @param times of it: 1.5 for six servings of a recipe for four
   */
  readonly textOf: (grams: number, times: number) => string
}

/** What an amount may become. */
export interface Freedom {
  /** Least and most grams. */
  readonly low: number
  readonly high: number
  /** Grams of a step. */
  readonly step: number
  /**
   * How many steps, of grams or of a kitchen measure, a change takes at least: more than one where
   * the recipe is to be cooked for other numbers too.
   */
  readonly stepsAtOnce: number
}

/** Why a line stays as it is; nothing where its figures grow with a weight that can be written anew. */
export function whyFixed({line, role}: ComputedLine): string | undefined {
  const {value: amount} = line.amount
  if (role === 'optional') return 'it is optional, and not counted'
  if (role === 'uncounted') return 'it is not counted'
  if (line.eaten) return 'the part eaten was weighed'
  if (line.trimmed) return 'what is cut off was weighed'
  if (line.pouredOff) return 'what is poured off belongs to its amount'
  if (amount.kind === 'batch') return `\`${amount.text}\` is a share of a batch`
  if (amount.kind !== 'weight') return `\`${amount.text}\` has no weight beside it`
  if (amount.grams.halfRange > 0) return `\`${amount.text}\` is a range`
  if (amount.beside && amount.beside.count.halfRange > 0) return `\`${amount.text}\` has a range`
  if (!amount.beside && amount.text.endsWith(')')) return `\`${amount.text}\` has a second weight`
  return inGrams.test(amount.text) ? undefined : `\`${amount.text}\` is not written in grams`
}

const inGrams = /^\d+(?:\.\d+)?\s?k?g(?:\s*\(|$)/u

/**
 * A line that may change, or why there is nothing it may become.
 * @param amount its amount, in grams, which `whyFixed` has nothing against
 */
export function freeLine(line: ComputedLine, freedom: Freedom): FreeLine | string {
  const {value: amount} = line.line.amount
  if (amount.kind !== 'weight') return 'its amount is no weight'
  return amount.beside
    ? measuredLine(line, {amount, beside: amount.beside}, freedom)
    : weighedLine(line, amount, freedom)
}

function weighedLine(
  line: ComputedLine,
  {grams: {value: grams}}: WeightAmount,
  {low, high, step: gramsOfStep, stepsAtOnce}: Freedom,
): FreeLine | string {
  const step = gramsOfStep * stepsAtOnce
  const mayStay = stepsAtOnce === 1 && low <= grams && grams <= high
  const hasStep = Math.floor(high / step + 1e-9) * step >= low - 1e-9
  if (!hasStep && !mayStay) return noneBetween(low, high, `${weight(step)}`)
  const amounts = {kind: 'steps', low, high, step, mayStay} as const
  return {
    line,
    fitLine: {name: line.line.name.value, grams, amounts},
    textOf: (chosen, times) => weight(chosen * times),
  }
}

interface Beside {
  readonly amount: WeightAmount
  readonly beside: VolumeAmount | CountAmount
}

/** A weight with its kitchen measure: whole counts of the measure, each with its weight. */
function measuredLine(
  line: ComputedLine,
  {amount, beside}: Beside,
  {low, high, stepsAtOnce}: Freedom,
): FreeLine | string {
  const {value: grams, increment} = amount.grams
  const {value: count} = beside.count
  const least = smallestMeasure(beside)
  const rounded = (exact: number) =>
    Number((Math.round(exact / increment) * increment).toPrecision(12))
  /** How many of the measure, by the weight they have. */
  const counts = new Map<number, number>()
  for (let steps = stepsAtOnce; ; steps += stepsAtOnce) {
    const exact = grams * ((steps * least) / count)
    if (exact > high + increment) break
    const each = rounded(exact)
    if (low <= each && each <= high && !counts.has(each)) counts.set(each, steps * least)
  }
  if (stepsAtOnce === 1 && low <= grams && grams <= high) counts.set(grams, count)
  const measures = (many: number) => formatAmount(besideOf(beside, many, least))
  if (counts.size === 0) return noneBetween(low, high, measures(least * stepsAtOnce))
  const listed = [...counts.keys()].toSorted((left, right) => left - right)
  return {
    line,
    fitLine: {name: line.line.name.value, grams, amounts: {kind: 'listed', grams: listed}},
    textOf: (chosen, times) => {
      if (chosen === grams && times === 1) return amount.text
      const many = (counts.get(chosen) ?? count) * times
      return `${weight(rounded(chosen * times))} (${measures(many)})`
    },
  }
}

/**
 * The smallest part of a measure that a cook measures out: spoons and cups have quarters, half a
 * tablespoon is the rest of it; pieces are halved only by who halved them already (common practice,
 * no source).
 */
function smallestMeasure(beside: VolumeAmount | CountAmount): number {
  if (beside.kind === 'count') return Number.isInteger(beside.count.value) ? 1 : 0.5
  switch (beside.measure) {
    case 'tsp':
    case 'cup':
      return 0.25
    case 'ml':
      return 5
    default:
      return 0.5
  }
}

function besideOf(
  beside: VolumeAmount | CountAmount,
  count: number,
  least: number,
): VolumeAmount | CountAmount {
  const times = (measured: Measured): Measured => {
    const factor = measured.value / beside.count.value
    return {value: count * factor, halfRange: 0, increment: Math.min(1, least) * factor}
  }
  return beside.kind === 'volume'
    ? {...beside, count: times(beside.count), millilitres: times(beside.millilitres)}
    : {...beside, count: times(beside.count)}
}

function noneBetween(low: number, high: number, step: string): string {
  return `between ${weight(low)} and ${weight(high)} no amount is a whole number of \`${step}\``
}

/** Grams as the line has them; 0 for what is no weight. */
export function writtenGrams({line}: ComputedLine): number {
  const {value: amount} = line.amount
  return amount.kind === 'weight' ? amount.grams.value : 0
}

/** Grams as a recipe has them. */
export function weight(grams: number): string {
  return `${Number(roundedText(grams, 3))} g`
}
