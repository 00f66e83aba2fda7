import type {ComputedLine} from '../../nutrition/computed.ts'
import {gramsOf} from '../../nutrition/weigh.ts'
import type {Amount, Measured} from '../../units/amount.ts'

/** Two amounts in one unit, and how far apart they may be and still be the same. */
export interface Compared {
  readonly mentioned: number
  readonly listed: number
  readonly slack: number
}

/**
 * Share by which an amount that went through a food's own weight of a measure may differ: spoons
 * and cups are filled to about a tenth, and counted pieces differ more (common practice, no source).
 */
const measureRatio = 0.2

/**
 * An amount in prose beside the amount of a line, whatever their units.
 * @returns undefined where they cannot be compared: the food has no weight for the measure
 */
export function comparedWithList(
  mentioned: Exclude<Amount, {kind: 'batch'}>,
  {line, ingredient}: ComputedLine,
  scaleGrams: number,
): Compared | undefined {
  const amount = line.amount.value
  for (const listed of [amount, amount.beside]) {
    const direct = listed && inSameUnit(mentioned, listed)
    if (direct) return direct
  }
  if (ingredient.kind !== 'food' || amount.kind === 'batch') return undefined
  const [mentionedGrams, listedGrams] = [mentioned, amount].map((each) =>
    gramsOf(ingredient.food, each, scaleGrams),
  )
  if (!mentionedGrams || !listedGrams) return undefined
  const listed = listedGrams.value
  return {mentioned: mentionedGrams.value, listed, slack: measureRatio * listed}
}

function inSameUnit(mentioned: Amount, listed: Amount): Compared | undefined {
  if (mentioned.kind === 'weight' && listed.kind === 'weight') {
    return compared(mentioned.grams, listed.grams)
  }
  if (mentioned.kind === 'volume' && listed.kind === 'volume') {
    return compared(mentioned.millilitres, listed.millilitres)
  }
  const isSameMeasure =
    mentioned.kind === 'count' &&
    listed.kind === 'count' &&
    isAlike(mentioned.measure, listed.measure)
  return isSameMeasure ? compared(mentioned.count, listed.count) : undefined
}

/** `2 eggs` are `2 large`: a size is no other thing to count. */
const sizes: ReadonlySet<string> = new Set(['each', 'small', 'medium', 'large', 'extra large'])

function isAlike(left: string, right: string): boolean {
  return left === right || (sizes.has(left) && sizes.has(right))
}

/**
 * Nobody rounds more than between ounces and grams: 180 g are sold and written as 6 oz. `1 kg` of
 * 1.4 kg is a slip. Grams, millilitres or pieces; common practice, no source.
 */
const leastRounding = 0.5
const roundingRatio = 0.07

/** Each may have been rounded to its last digit; a range holds everything in it. */
function compared(mentioned: Measured, listed: Measured): Compared {
  const digit = Math.max(mentioned.increment, listed.increment) / 2
  const rounding = Math.min(digit, Math.max(leastRounding, roundingRatio * listed.value))
  return {
    mentioned: mentioned.value,
    listed: listed.value,
    slack: rounding + mentioned.halfRange + listed.halfRange,
  }
}
