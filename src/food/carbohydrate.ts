import {difference} from '../units/uncertain.ts'
import {type Figure, isComplete, known, unknown} from './figures.ts'

/**
 * Carbohydrate without fibre, of total carbohydrate and fibre; both keep their sources. Unknown
 * when either is. Rounding can make the fibre larger than the whole it is part of: that is 0 then.
 */
export function withoutFibre(total: Figure, fibre: Figure, foodName: string): Figure {
  if (!isComplete(total) || !isComplete(fibre)) return unknown(foodName)
  const {value, parts} = difference(total, fibre)
  return known({value: Math.max(0, value), parts})
}
