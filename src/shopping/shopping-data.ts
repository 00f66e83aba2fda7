import type {Aisle, Food} from '../food/food.ts'
import type {Computed} from '../nutrition/computed.ts'
import {type Piece, pieceOf} from './piece.ts'
import {type Part, takeApart} from './take-apart.ts'

/** What a list is summed from: plain data, so that the build and a page in a browser sum alike. */
export interface ShoppingData {
  readonly foods: readonly ShoppingFood[]
  readonly recipes: readonly ShoppingRecipe[]
}

export interface ShoppingFood {
  readonly name: string
  readonly aisle: Aisle
  /** Grams of one pack as sold. */
  readonly packGrams?: number
  /** What that pack costs, in the cookbook's currency. */
  readonly price?: number
  readonly piece?: Piece
}

export interface ShoppingRecipe {
  readonly slug: string
  readonly title: string
  /** Absent for a component: it is asked for by the batch. */
  readonly serves?: number
  /** To buy for one whole batch, components taken apart. */
  readonly needs: readonly Need[]
  /** Components to make for one whole batch, and theirs; the innermost first. */
  readonly makes: readonly Make[]
}

export interface Need {
  /** Place in `foods`. */
  readonly food: number
  /** Grams as bought, with peel and bone. */
  readonly grams: number
  readonly isOptional?: true
}

export interface Make {
  readonly slug: string
  readonly title: string
  readonly grams: number
  readonly batches: number
}

/** Takes every recipe apart into foods to buy and components to make. */
export function shoppingData(computed: ReadonlyMap<string, Computed>): ShoppingData {
  const parts = takeApart(computed.values())
  const places = new Map<Food, number>()
  const placeOf = (food: Food): number => {
    const place = places.get(food) ?? places.size
    places.set(food, place)
    return place
  }
  const recipes = [...computed.values()].map((one): ShoppingRecipe => {
    const {slug, title, serves} = one.recipe
    const {foods, components} = parts.get(one) ?? nothing
    return {
      slug,
      title: title.value,
      ...(serves && {serves: serves.value}),
      needs: foods.map(({food, grams, isOptional}) => ({
        food: placeOf(food),
        grams: tidy(grams),
        ...(isOptional && {isOptional}),
      })),
      makes: components.map(({component, grams, batches}) => ({
        slug: component.recipe.slug,
        title: component.recipe.title.value,
        grams: tidy(grams),
        batches: tidy(batches),
      })),
    }
  })
  return {recipes, foods: [...places.keys()].map(shoppingFood)}
}

const nothing: Part = {foods: [], components: []}

/** A page carries these numbers: six digits are finer than any scale. */
function tidy(value: number): number {
  return Number(value.toPrecision(6))
}

function shoppingFood(food: Food): ShoppingFood {
  const piece = pieceOf(food)
  return {
    name: food.name,
    aisle: food.aisle,
    ...(food.sold && {packGrams: food.sold.grams}),
    ...(food.sold?.price !== undefined && {price: food.sold.price}),
    ...(piece && {piece}),
  }
}
