import type {Food} from '../../food/food.ts'
import type {Computed} from '../../nutrition/computed.ts'

/** Share of the mixed weight, 0 to 1, that foods of a kind make up, components by their own share. */
export function shareOf(dish: Computed, isKind: (food: Food) => boolean): number {
  // Each component once: components that share components would be opened without end.
  const shares = new Map<Computed, number>()
  const share = (computed: Computed): number => {
    const known = shares.get(computed)
    if (known !== undefined) return known
    let grams = 0
    for (const {ingredient, staysGrams, role} of computed.lines) {
      if (role !== 'counted') continue
      const ofLine =
        ingredient.kind === 'food' ? Number(isKind(ingredient.food)) : share(ingredient.computed)
      grams += staysGrams.value * ofLine
    }
    const found = computed.mixedGrams.value > 0 ? grams / computed.mixedGrams.value : 0
    shares.set(computed, found)
    return found
  }
  return share(dish)
}
