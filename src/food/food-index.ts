import type {Food} from './food.ts'
import {nameKey} from './name-key.ts'
import {nearestSpelled, type SpelledName, spelled} from './nearest-names.ts'
import type {PublishedFoods} from './published-foods.ts'

/** Every food a cookbook can name. */
export interface FoodIndex {
  /**
   * The food a writer's name means: their own foods first, then the core table's names and other
   * names, then a qualified id. Never a guess; case and spacing do not matter.
   */
  lookUp(name: string): Food | undefined
  /** The nearest names, best first, for a message that lists them. */
  nearest(name: string, most: number): readonly string[]
  /** Whether the name is one of foods.yaml that could not be understood: it has had its message. */
  isRefused(name: string): boolean
  /** The writer's own foods, in name order. */
  readonly own: readonly Food[]
  /** Every food that can be named: the writer's own, then those of the tables. */
  all(): Iterable<Food>
}

/** What foods.yaml gives. */
export interface OwnFoods {
  /** Each name and other name stands once. */
  readonly foods: readonly Food[]
  /** Names and other names of foods that could not be understood. */
  readonly refused: readonly string[]
}

/** Near names that are other names of one and the same food; few foods have more. */
const namesPerFood = 6

/** Puts a cookbook's own foods before the published ones. */
export function foodIndex(own: OwnFoods, published: PublishedFoods): FoodIndex {
  const byName = new Map<string, Food>()
  for (const food of own.foods) {
    for (const name of [food.name, ...food.also]) byName.set(nameKey(name), food)
  }
  const refused = new Set(own.refused.map(nameKey))
  const names = [...own.foods.flatMap(({name, also}) => [name, ...also]), ...published.names]
  let spelledNames: readonly SpelledName[] | undefined
  const lookUp = (name: string): Food | undefined => {
    const key = nameKey(name)
    // A table's food of the same name is not what the writer meant.
    return refused.has(key) ? undefined : (byName.get(key) ?? published.lookUp(name))
  }
  return {
    lookUp,
    isRefused: (name) => refused.has(nameKey(name)),
    nearest(name, most) {
      spelledNames ??= names.map(spelled)
      const seen = new Set<Food>()
      const near = nearestSpelled(name, spelledNames, most * namesPerFood)
      const distinct = near.filter((candidate) => {
        const food = lookUp(candidate)
        return food !== undefined && !seen.has(food) && seen.add(food)
      })
      return distinct.slice(0, most)
    },
    own: own.foods.toSorted((left, right) => (nameKey(left.name) < nameKey(right.name) ? -1 : 1)),
    *all() {
      yield* own.foods
      yield* published.foods()
    },
  }
}
