import {type Aisle, aisles} from '../food/food.ts'
import type {Cost} from './cost.ts'
import type {Piece} from './piece.ts'
import type {ShoppingData, ShoppingFood} from './shopping-data.ts'

/** How much of a recipe somebody wants. */
export interface Wanted {
  readonly slug: string
  /** Servings; batches where the recipe is a component. */
  readonly servings: number
}

export interface ShoppingList {
  readonly aisles: readonly {readonly aisle: Aisle; readonly lines: readonly ListLine[]}[]
  /** Components, the innermost first. */
  readonly make: readonly {
    readonly slug: string
    readonly title: string
    readonly grams: number
    readonly batches: number
  }[]
}

/** One food to buy; weights are exact sums, before anybody rounds them for a shop. */
export interface ListLine {
  readonly name: string
  /** As bought; 0 where the food is only in optional lines. */
  readonly grams: number
  readonly optionalGrams: number
  readonly piece?: Piece
  readonly packs?: Packs
}

export interface Packs {
  readonly count: number
  readonly packGrams: number
  /** What the packs hold beyond what is needed, g. */
  readonly leftGrams: number
  /** Of all of them, in the cookbook's currency; absent where nobody said what one costs. */
  readonly price?: number
}

/** Sums what is wanted across recipes and through components, by aisle in the shop's order. */
export function shoppingList(data: ShoppingData, wanted: readonly Wanted[]): ShoppingList {
  const grams = new Map<number, {needed: number; optional: number}>()
  const make = new Map<string, ShoppingList['make'][number]>()
  for (const {slug, servings} of wanted) {
    const recipe = data.recipes.find((one) => one.slug === slug)
    if (recipe === undefined || !(servings > 0)) continue
    const batches = servings / (recipe.serves ?? 1)
    for (const need of recipe.needs) {
      const sum = grams.get(need.food) ?? {needed: 0, optional: 0}
      sum[need.isOptional ? 'optional' : 'needed'] += need.grams * batches
      grams.set(need.food, sum)
    }
    for (const part of recipe.makes) {
      const before = make.get(part.slug)
      make.set(part.slug, {
        ...part,
        grams: part.grams * batches + (before?.grams ?? 0),
        batches: part.batches * batches + (before?.batches ?? 0),
      })
    }
  }
  const lines = [...grams].flatMap(([place, sum]) => {
    const food = data.foods[place]
    return food ? [{aisle: food.aisle, line: listLine(food, sum.needed, sum.optional)}] : []
  })
  return {aisles: byAisle(lines), make: [...make.values()]}
}

/**
 * What the whole packs cost. What is only bought if wanted costs nothing yet.
 * @param had names of foods that are at home already
 * @returns undefined where not one food of the list has a price
 */
export function listCost(list: ShoppingList, had: ReadonlySet<string>): Cost | undefined {
  const lines = list.aisles.flatMap((aisle) => aisle.lines)
  const needed = lines.filter(({grams, name}) => grams > 0 && !had.has(name))
  const prices = needed.flatMap(({packs}) => packs?.price ?? [])
  if (prices.length === 0) return undefined
  const amount = prices.reduce((sum, price) => sum + price, 0)
  return {amount, isComplete: prices.length === needed.length}
}

function listLine(food: ShoppingFood, grams: number, optionalGrams: number): ListLine {
  const {name, packGrams, price, piece} = food
  return {
    name,
    grams,
    optionalGrams,
    ...(piece && {piece}),
    ...(packGrams !== undefined && grams > 0 && {packs: packsFor(grams, packGrams, price)}),
  }
}

/** A sum of doubles may end a hair above a full pack; nobody buys a second one for that. */
const slackRatio = 1e-6

function packsFor(grams: number, packGrams: number, price: number | undefined): Packs {
  const count = Math.ceil((grams / packGrams) * (1 - slackRatio))
  return {
    count,
    packGrams,
    leftGrams: Math.max(0, count * packGrams - grams),
    ...(price !== undefined && {price: count * price}),
  }
}

function byAisle(
  lines: readonly {readonly aisle: Aisle; readonly line: ListLine}[],
): ShoppingList['aisles'] {
  return aisles.flatMap((aisle) => {
    const here = lines.filter((entry) => entry.aisle === aisle).map(({line}) => line)
    here.sort((left, right) => (left.name < right.name ? -1 : 1))
    return here.length > 0 ? [{aisle, lines: here}] : []
  })
}
