import type {Food} from '../../food/food.ts'
import type {Computed} from '../computed.ts'
import {wholeGrams} from '../whole-grams.ts'

/** A food with the grams of it that are in a batch, components opened. */
export interface OpenedFood {
  readonly food: Food
  /** Edible grams that stay in the dish. */
  readonly grams: number
}

/** Every food a batch is made of, however deep in components, each once, in order of first use. */
export function openedFoods(computed: Computed): readonly OpenedFood[] {
  return Array.from(opened(computed, new Map()), ([food, grams]) => ({food, grams}))
}

/** @param known components opened before, so that each is opened once however many ways lead to it */
function opened(
  {lines}: Computed,
  known: Map<Computed, ReadonlyMap<Food, number>>,
): ReadonlyMap<Food, number> {
  const grams = new Map<Food, number>()
  const add = (food: Food, weight: number) => grams.set(food, (grams.get(food) ?? 0) + weight)
  for (const {ingredient, role, staysGrams} of lines) {
    if (role !== 'counted') continue
    if (ingredient.kind === 'food') {
      add(ingredient.food, staysGrams.value)
      continue
    }
    const component = ingredient.computed
    const within = known.get(component) ?? opened(component, known)
    known.set(component, within)
    const share = staysGrams.value / wholeGrams(component).value
    for (const [food, weight] of within) add(food, weight * share)
  }
  return grams
}
