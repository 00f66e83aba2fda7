import type {Food} from '../food/food.ts'
import type {Computed, ComputedLine, Ingredient} from './computed.ts'

/** A food somewhere in a dish. */
export interface FoodWithin {
  readonly food: Food
  /** The components it comes through, outermost first. */
  readonly through: readonly Computed[]
  /** Only in an optional line or an alternative, here or in a component. */
  readonly isByChoice: boolean
}

/** A food of a dish, with the dish's own line that brings it. */
export interface FoodInDish extends FoodWithin {
  readonly line: ComputedLine
}

/**
 * Every food of a dish through its components, with those of optional lines and alternatives;
 * lines left uncounted are in it too, as flour for dusting is on the crust. A component used again
 * is not entered again: it adds nothing new, and chains of shared ones would grow without end.
 */
export function foodsInDish(computed: Computed): readonly FoodInDish[] {
  const foods = walk()
  return choicesOf(computed).flatMap(({line, ingredient, isByChoice}) =>
    Array.from(foods(ingredient, isByChoice, []), (found) => ({...found, line})),
  )
}

/** Every food of one ingredient; of a component, those it is made from. */
export function foodsWithin(ingredient: Ingredient): readonly FoodWithin[] {
  return [...walk()(ingredient, false, [])]
}

type Walk = (
  ingredient: Ingredient,
  isByChoice: boolean,
  through: readonly Computed[],
) => Iterable<FoodWithin>

/** A walk enters each component once for sure and once by choice. */
function walk(): Walk {
  const seen = {sure: new Set<Computed>(), byChoice: new Set<Computed>()}
  return function* foods(ingredient, isByChoice, through): Iterable<FoodWithin> {
    if (ingredient.kind === 'food') {
      yield {food: ingredient.food, through, isByChoice}
      return
    }
    const {computed} = ingredient
    const entered = isByChoice ? seen.byChoice : seen.sure
    if (entered.has(computed)) return
    entered.add(computed)
    for (const choice of choicesOf(computed)) {
      yield* foods(choice.ingredient, isByChoice || choice.isByChoice, [...through, computed])
    }
  }
}

interface Choice {
  readonly line: ComputedLine
  readonly ingredient: Ingredient
  readonly isByChoice: boolean
}

function choicesOf({lines}: Computed): readonly Choice[] {
  return lines.flatMap((line) => [
    {line, ingredient: line.ingredient, isByChoice: line.role === 'optional'},
    ...line.instead.map(({ingredient}) => ({line, ingredient, isByChoice: true})),
  ])
}
