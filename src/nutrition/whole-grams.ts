import {product, type Uncertain} from '../units/uncertain.ts'
import type {Computed} from './computed.ts'

/**
 * Grams of the batch that is served: the finished weight, or where nobody knows it the weight of
 * the ingredients that stay in the dish, less what stays in the pot.
 */
export function wholeGrams({
  batchGrams,
  mixedGrams,
  servedRatio,
}: Pick<Computed, 'batchGrams' | 'mixedGrams' | 'servedRatio'>): Uncertain {
  return batchGrams ?? product(mixedGrams, servedRatio)
}
