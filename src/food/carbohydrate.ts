import {difference} from '../units/uncertain.ts'
import {type Figure, isComplete, known, unknown} from './figures.ts'

/**
 * Carbohydrate without fibre, of total carbohydrate and fibre; both keep their sources. Unknown
 * when either is, but for a whole of 0. Rounding can make the fibre larger than the whole it is
 * part of: that is 0 then.
 */
export function withoutFibre(total: Figure, fibre: Figure, foodName: string): Figure {
  if (!isComplete(total)) return unknown(foodName)
  // There is nothing in it that could be fibre.
  if (total.value === 0 && !isComplete(fibre)) return total
  if (!isComplete(fibre)) return unknown(foodName)
  const {value, parts} = difference(total, fibre)
  return known({value: Math.max(0, value), parts})
}

/** The same of bare numbers, grams; undefined is unknown. */
export function valueWithoutFibre(
  total: number | undefined,
  fibre: number | undefined,
): number | undefined {
  if (total === undefined || total === 0) return total
  return fibre === undefined ? undefined : Math.max(0, total - fibre)
}
