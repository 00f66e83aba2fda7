import type {Located} from '../cookbook/problem.ts'
import type {Food} from '../food/food.ts'
import type {Amount, CountAmount, VolumeAmount, WeightAmount} from '../units/amount.ts'
import {rectangular, type Source, type Uncertain} from '../units/uncertain.ts'
import {millilitresPerUnit} from '../units/units.ts'

/**
 * How far one counted piece, or one filled measure, lies from the table's gram weight: full width
 * as a share of the weight. The project's choice (no source): two onions called medium differ by
 * about a fifth, two levelled cups by about a tenth.
 */
const countSpreadRatio = 0.2
const volumeSpreadRatio = 0.1

/** Millilitres of the US customary measures that the food table's gram weights refer to. */
const {cup, tbsp, tsp} = millilitresPerUnit.us
const tableMeasureMillilitres: Readonly<Record<string, number>> = {cup, tbsp, tsp}

/** Larger measures are weighed with the smaller error: they come first. */
const densityMeasures = Object.keys(tableMeasureMillilitres)

/**
 * A weight as read on a scale: anywhere within the scale's resolution, or within the range that was
 * given. What the scale cannot show (13.5 g on a 1 g scale, 503 g on a 5 g one) was weighed on a finer
 * one, to the digit that was written.
 * @param scaleGrams resolution of the kitchen scale, g
 */
export function weighed(amount: WeightAmount, scaleGrams: number, source: Source): Uncertain {
  const {value, halfRange, increment} = amount.grams
  const isShown = isWhole(value / scaleGrams)
  const resolutionGrams = isShown ? scaleGrams : Math.min(scaleGrams, increment)
  return rectangular(value, Math.max(2 * halfRange, resolutionGrams), source)
}

function isWhole(steps: number): boolean {
  return Math.abs(steps - Math.round(steps)) < 1e-9 * Math.max(1, steps)
}

/** A part of a line that was weighed by itself; `what` completes "weighing of". */
export function partWeighed(
  amount: Located<WeightAmount>,
  what: string,
  scaleGrams: number,
): Uncertain {
  return weighed(amount.value, scaleGrams, {kind: 'weighing', subject: `weighing of ${what}`})
}

/**
 * Grams of an amount of a food. A volume or count needs the food's own gram weight.
 * @returns undefined when the food has no weight for the measure: never a guess
 */
export function gramsOf(
  food: Food,
  amount: Exclude<Amount, {kind: 'batch'}>,
  scaleGrams: number,
): Uncertain | undefined {
  switch (amount.kind) {
    case 'weight':
      return weighed(amount, scaleGrams, {kind: 'weighing', subject: `weighing of ${food.name}`})
    case 'volume':
      return measured(food, amount, gramsPerVolume(food, amount), volumeSpreadRatio)
    case 'count':
      return measured(food, amount, food.measures.get(amount.measure), countSpreadRatio)
  }
}

function measured(
  food: Food,
  amount: VolumeAmount | CountAmount,
  gramsEach: number | undefined,
  spreadRatio: number,
): Uncertain | undefined {
  if (gramsEach === undefined) return undefined
  const {value, halfRange} = amount.count
  const grams = value * gramsEach
  return rectangular(grams, Math.max(2 * halfRange * gramsEach, spreadRatio * grams), {
    kind: 'measure',
    subject: `${amount.measure} of ${food.name}`,
  })
}

/**
 * Grams of one of the measure. The writer's or the table's own weight of exactly that measure comes
 * first; else another volume the food is weighed by gives its density.
 */
function gramsPerVolume(food: Food, amount: VolumeAmount): number | undefined {
  const millilitresEach = amount.millilitres.value / amount.count.value
  const direct = food.measures.get(amount.measure)
  if (direct !== undefined && isClose(millilitresEach, millilitresOf(food, amount.measure))) {
    return direct
  }
  for (const measure of new Set([...densityMeasures, ...(food.filledMillilitres?.keys() ?? [])])) {
    const [grams, millilitres] = [food.measures.get(measure), millilitresOf(food, measure)]
    if (grams !== undefined && millilitres !== undefined) {
      return (grams / millilitres) * millilitresEach
    }
  }
  return undefined
}

/** What a measure held when the food's weight of it was found. */
function millilitresOf(food: Food, measure: string): number | undefined {
  return food.filledMillilitres?.get(measure) ?? tableMeasureMillilitres[measure]
}

function isClose(millilitres: number, table: number | undefined): boolean {
  return table !== undefined && Math.abs(millilitres - table) < 1e-6 * table
}
