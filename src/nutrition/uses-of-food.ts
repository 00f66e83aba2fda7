import type {Food} from '../food/food.ts'
import type {Computed} from './computed.ts'
import {foodsInDish} from './foods-in-dish.ts'

/** A recipe that holds a food. */
export interface FoodUse {
  readonly computed: Computed
  /** Title of the component it comes through; absent where the recipe lists it itself. */
  readonly through?: string
  /** Only in an optional line or an alternative. */
  readonly isByChoice: boolean
}

/** The recipes that hold a food, under whichever name they call it, each once. */
export function usesOfFood({id}: Pick<Food, 'id'>, all: Iterable<Computed>): readonly FoodUse[] {
  const uses: FoodUse[] = []
  for (const computed of all) {
    const held = foodsInDish(computed).filter(({food}) => food.id === id)
    const nearest =
      held.find(({through, isByChoice}) => through.length === 0 && !isByChoice) ??
      held.find(({isByChoice}) => !isByChoice) ??
      held[0]
    if (!nearest) continue
    const [component] = nearest.through
    uses.push({
      computed,
      isByChoice: nearest.isByChoice,
      ...(component && {through: component.recipe.title.value}),
    })
  }
  return uses
}
