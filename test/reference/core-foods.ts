import type {Food} from '../../src/food/food.ts'
import {type FoodIndex, foodIndex} from '../../src/food/food-index.ts'
import {publishedFoods} from '../../src/food/published-foods.ts'

/** The foods of the core table and nothing else. */
export const coreFoods: FoodIndex = foodIndex({foods: [], refused: []}, publishedFoods([], 'us'))

/** A food of the core table by its NDB number in USDA SR28. */
export function coreFood(ndb: string): Food {
  const food = coreFoods.lookUp(`usda/${ndb}`)
  if (food === undefined) throw new Error(`not in the core table: ${ndb}`)
  return food
}
