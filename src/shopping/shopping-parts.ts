import type {Need, ShoppingData, ShoppingFood, ShoppingRecipe} from './shopping-data.ts'

/**
 * Shopping data in parts, so that a page need not load those of recipes that nobody chose. Each
 * part holds its own foods: parts of two builds, one of them kept for when there is no network,
 * never take one food for another.
 */

/** About how many recipes a part holds: few enough to be fetched for one of them. */
const recipesOfPart = 32

/** How many parts the data of so many recipes are in: a power of 2, so that it seldom changes. */
export function partCount(recipes: number): number {
  return 2 ** Math.max(0, Math.ceil(Math.log2(recipes / recipesOfPart)))
}

/**
 * The part that a recipe is in, by its slug alone: a page finds it without a list, and a recipe
 * more or less leaves the other parts as they are.
 * @param count a power of 2
 */
export function partOfSlug(slug: string, count: number): number {
  const hash = fnv1a(slug)
  // The low bits of short texts are alike.
  return ((hash >>> 16) ^ hash) & (count - 1)
}

/**
 * A hash of a slug, 32 bits. Source: Fowler, Noll, Vo: The FNV Non-Cryptographic Hash Algorithm,
 * RFC 9923.
 * @param text letters of ASCII
 */
export function fnv1a(text: string): number {
  let hash = 0x811c9dc5
  for (const letter of text) {
    hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193)
  }
  return hash >>> 0
}

/** Every part, in order; one without recipes is empty. */
export function shoppingParts(data: ShoppingData): readonly ShoppingData[] {
  const count = partCount(data.recipes.length)
  const recipes = Array.from({length: count}, (): ShoppingRecipe[] => [])
  for (const recipe of data.recipes) recipes[partOfSlug(recipe.slug, count)]?.push(recipe)
  return recipes.map((those) => withOwnFoods(those, data.foods))
}

/** Data of several parts together; foods that are the same in all they tell are one. */
export function joinedParts(parts: readonly ShoppingData[]): ShoppingData {
  const foods: ShoppingFood[] = []
  const places = new Map<string, number>()
  const placeOf = (food: ShoppingFood): number => {
    const key = JSON.stringify(food)
    const place = places.get(key) ?? foods.push(food) - 1
    places.set(key, place)
    return place
  }
  const recipes = parts.flatMap((part) => {
    const moved = part.foods.map(placeOf)
    return part.recipes.map((recipe) => withPlaces(recipe, (food) => moved[food]))
  })
  return {foods, recipes}
}

function withOwnFoods(
  recipes: readonly ShoppingRecipe[],
  foods: readonly ShoppingFood[],
): ShoppingData {
  const used = [...new Set(recipes.flatMap(({needs}) => needs.map(({food}) => food)))]
  const places = new Map(used.map((food, place) => [food, place] as const))
  return {
    foods: used.flatMap((food) => foods[food] ?? []),
    recipes: recipes.map((recipe) => withPlaces(recipe, (food) => places.get(food))),
  }
}

function withPlaces(
  recipe: ShoppingRecipe,
  placeOf: (food: number) => number | undefined,
): ShoppingRecipe {
  const needs = recipe.needs.flatMap((need): readonly Need[] => {
    const food = placeOf(need.food)
    return food === undefined ? [] : [{...need, food}]
  })
  return {...recipe, needs}
}
