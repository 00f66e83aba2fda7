import type {Food} from '../../src/food/food.ts'
import type {Computed, Ingredient} from '../../src/nutrition/computed.ts'

export interface FoodInUse {
  readonly food: Food
  /** The recipes with a line, or an alternative, of the food. */
  readonly users: readonly Computed[]
}

/** The foods that recipes use, by name. */
export function foodsInUse(recipes: Iterable<Computed>): readonly FoodInUse[] {
  const users = new Map<Food, Set<Computed>>()
  const add = (ingredient: Ingredient, user: Computed): void => {
    if (ingredient.kind !== 'food') return
    users.set(ingredient.food, (users.get(ingredient.food) ?? new Set()).add(user))
  }
  for (const recipe of recipes) {
    for (const line of recipe.lines) {
      add(line.ingredient, recipe)
      for (const choice of line.instead) add(choice.ingredient, recipe)
    }
  }
  return [...users]
    .map(([food, set]) => ({food, users: [...set]}))
    .sort((left, right) => (left.food.name < right.food.name ? -1 : 1))
}
