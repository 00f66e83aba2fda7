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
  const walk = new Walk()
  return choicesOf(computed).flatMap(({line, ingredient, isByChoice}) =>
    walk.foods(ingredient, isByChoice).map((found) => ({...found, line})),
  )
}

/** Every food of one ingredient; of a component, those it is made from. */
export function foodsWithin(ingredient: Ingredient): readonly FoodWithin[] {
  return new Walk().foods(ingredient, false)
}

/** A walk enters each component once for sure and once by choice. */
class Walk {
  readonly #sure = new Set<Computed>()
  readonly #byChoice = new Set<Computed>()

  foods(ingredient: Ingredient, isByChoice: boolean): readonly FoodWithin[] {
    const found: FoodWithin[] = []
    this.#addTo(found, ingredient, {isByChoice, through: []})
    return found
  }

  #addTo(found: FoodWithin[], ingredient: Ingredient, way: Omit<FoodWithin, 'food'>): void {
    if (ingredient.kind === 'food') {
      found.push({food: ingredient.food, ...way})
      return
    }
    const {computed} = ingredient
    const entered = way.isByChoice ? this.#byChoice : this.#sure
    if (entered.has(computed)) return
    entered.add(computed)
    const through = [...way.through, computed]
    for (const choice of choicesOf(computed)) {
      const isByChoice = way.isByChoice || choice.isByChoice
      this.#addTo(found, choice.ingredient, {isByChoice, through})
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
