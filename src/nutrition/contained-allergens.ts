import type {Allergen} from '../food/food.ts'
import {remembered} from '../units/remembered.ts'
import type {Computed, Ingredient} from './computed.ts'
import {type FoodWithin, foodsInDish, foodsWithin} from './foods-in-dish.ts'

/** The allergens of a dish, through its components. */
export interface ContainedAllergens {
  /** In what goes into the dish, counted or not: flour for dusting is on the crust. */
  readonly contains: ReadonlySet<Allergen>
  /** As packets warn of traces. */
  readonly mayContain: ReadonlySet<Allergen>
  /** Only in optional lines or in alternatives. */
  readonly onlyByChoice: ReadonlySet<Allergen>
  /** Foods nobody has stated the allergens of. */
  readonly notStated: ReadonlySet<string>
}

/** Gathers the allergens of every line; what is unknown is named, never taken as absent. */
export const containedAllergens = remembered((computed: Computed): ContainedAllergens => {
  return gathered(foodsInDish(computed))
})

/** The allergens of one food or component. */
export function ingredientAllergens(ingredient: Ingredient): ContainedAllergens {
  return gathered(foodsWithin(ingredient))
}

function gathered(foods: readonly FoodWithin[]): ContainedAllergens {
  const contains = new Set<Allergen>()
  const mayContain = new Set<Allergen>()
  const onlyByChoice = new Set<Allergen>()
  const notStated = new Set<string>()
  for (const {food, isByChoice} of foods) {
    for (const allergen of food.contains) (isByChoice ? onlyByChoice : contains).add(allergen)
    for (const allergen of food.mayContain) mayContain.add(allergen)
    if (!food.allergensKnown) notStated.add(food.name)
  }
  for (const allergen of contains) {
    onlyByChoice.delete(allergen)
    mayContain.delete(allergen)
  }
  return {contains, mayContain, onlyByChoice, notStated}
}
