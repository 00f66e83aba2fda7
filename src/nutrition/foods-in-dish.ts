import type {Food} from '../food/food.ts'
import type {Computed, ComputedLine, Ingredient} from './computed.ts'

/** A food somewhere in a dish. */
export interface FoodWithin {
  readonly food: Food
  /** The components it comes through, outermost first. */
  readonly through: readonly Computed[]
  /** Only in an optional line or an alternative, here or in a component. */
  readonly isByChoice: boolean
  /** Only in what may stand instead of something, here or in a component. */
  readonly isAlternative: boolean
}

/** A food of a dish, with the dish's own line that brings it. */
export interface FoodInDish extends FoodWithin {
  readonly line: ComputedLine
}

/**
 * Every food of a dish through its components, with those of optional lines and alternatives;
 * lines left uncounted are in it too, as flour for dusting is on the crust. A component that two
 * lines use is in both.
 */
export function foodsInDish(computed: Computed): readonly FoodInDish[] {
  const found: FoodInDish[] = []
  eachChoice(computed, (ingredient, how, line) => {
    for (const {food, through, isByChoice, isAlternative} of foodsOf(ingredient, how)) {
      found.push({food, through, isByChoice, isAlternative, line})
    }
  })
  return found
}

/** Every food of one ingredient; of a component, those it is made from. */
export function foodsWithin(ingredient: Ingredient): readonly FoodWithin[] {
  return foodsOf(ingredient, 'sure')
}

/** Every food of a dish as it is listed, with what is optional, once: none that only may stand instead. */
export function listedFoods(computed: Computed): ReadonlySet<Food> {
  const listed = new Set<Food>()
  for (const {food, isAlternative} of foodsInDish(computed)) if (!isAlternative) listed.add(food)
  return listed
}

/** How sure an ingredient is to be in the dish, the surest first. */
const manners = ['sure', 'optional', 'alternative'] as const

type Manner = (typeof manners)[number]

function lessSure(one: Manner, other: Manner): Manner {
  return manners.indexOf(one) > manners.indexOf(other) ? one : other
}

function foodsOf(ingredient: Ingredient, how: Manner): readonly FoodWithin[] {
  if (ingredient.kind === 'food') return [foodWithin(ingredient.food, how, [])]
  const walk = new Walk()
  walk.enter(ingredient.computed, how, [])
  return walk.found
}

function foodWithin(food: Food, how: Manner, through: readonly Computed[]): FoodWithin {
  return {food, through, isByChoice: how !== 'sure', isAlternative: how === 'alternative'}
}

/**
 * A walk enters a component once in each manner: again it adds nothing new, and chains of shared
 * ones would grow without end.
 */
class Walk {
  readonly found: FoodWithin[] = []
  readonly #entered = {
    sure: new Set<Computed>(),
    optional: new Set<Computed>(),
    alternative: new Set<Computed>(),
  }

  enter(computed: Computed, how: Manner, through: readonly Computed[]): void {
    const entered = this.#entered[how]
    if (entered.has(computed)) return
    entered.add(computed)
    const deeper = [...through, computed]
    eachChoice(computed, (ingredient, own) => {
      const manner = lessSure(how, own)
      if (ingredient.kind === 'food') this.found.push(foodWithin(ingredient.food, manner, deeper))
      else this.enter(ingredient.computed, manner, deeper)
    })
  }
}

function eachChoice(
  {lines}: Computed,
  visit: (ingredient: Ingredient, how: Manner, line: ComputedLine) => void,
): void {
  for (const line of lines) {
    visit(line.ingredient, line.role === 'optional' ? 'optional' : 'sure', line)
    for (const {ingredient} of line.instead) visit(ingredient, 'alternative', line)
  }
}
