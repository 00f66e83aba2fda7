import type {ShoppingData, ShoppingRecipe} from './shopping-data.ts'

/** What something costs; `isComplete` is false where a food has no price, and it is "at least" that. */
export interface Cost {
  /** In the cookbook's currency. */
  readonly amount: number
  readonly isComplete: boolean
}

/**
 * What one whole batch uses of what is bought, at the price of a full pack shared out by weight.
 * Optional lines do not count.
 * @returns undefined where not one food has a price
 */
export function batchCost({needs}: ShoppingRecipe, {foods}: ShoppingData): Cost | undefined {
  let amount = 0
  let priced = 0
  let unpriced = 0
  for (const {food, grams, isOptional} of needs) {
    if (isOptional) continue
    const {packGrams, price} = foods[food] ?? {}
    if (packGrams === undefined || price === undefined) {
      unpriced++
      continue
    }
    amount += (grams / packGrams) * price
    priced++
  }
  return priced === 0 ? undefined : {amount, isComplete: unpriced === 0}
}
