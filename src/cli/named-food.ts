import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {Food} from '../food/food.ts'
import type {FoodIndex} from '../food/food-index.ts'

/** Names a message lists. */
const mostSuggestions = 3

/** The food a name or id means; a miss suggests, it never guesses. */
export function namedFood(name: string, foods: FoodIndex): Food {
  return foods.lookUp(name) ?? missed(name, foods)
}

function missed(name: string, foods: FoodIndex): never {
  if (foods.isRefused(name)) {
    throw new EnvironmentFailure(
      `The entry of ${name} in foods.yaml cannot be understood`,
      'scalepan check says what is wrong with it',
    )
  }
  const near = foods.nearest(name, mostSuggestions)
  throw new EnvironmentFailure(
    `No food is called ${name}`,
    near.length > 0
      ? `Did you mean ${near.join(' or ')}?`
      : `scalepan foods find ${name.split(' ')[0] ?? name}`,
  )
}
