import type {Food} from '../../food/food.ts'
import type {Computed} from '../computed.ts'

/** A food with the grams of it that are in a batch, components opened. */
export interface OpenedFood {
  readonly food: Food
  /** Edible grams that stay in the dish. */
  readonly grams: number
}

/** Every food a batch is made of, however deep in components, each once, in order of first use. */
export function openedFoods(computed: Computed): readonly OpenedFood[] {
  const grams = new Map<Food, number>()
  open(computed, 1, grams)
  return Array.from(grams, ([food, weight]) => ({food, grams: weight}))
}

/** @param share of the batch, 0 and up */
function open(computed: Computed, share: number, grams: Map<Food, number>): void {
  for (const {ingredient, role, staysGrams} of computed.lines) {
    if (role !== 'counted') continue
    if (ingredient.kind === 'food') {
      const before = grams.get(ingredient.food) ?? 0
      grams.set(ingredient.food, before + staysGrams.value * share)
      continue
    }
    const {batchGrams, mixedGrams} = ingredient.computed
    open(ingredient.computed, (share * staysGrams.value) / (batchGrams ?? mixedGrams).value, grams)
  }
}
