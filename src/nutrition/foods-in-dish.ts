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
  return choicesOf(computed).flatMap(({line, ingredient, how}) =>
    new Walk().foods(ingredient, how).map((found) => ({...found, line})),
  )
}

/** Every food of one ingredient; of a component, those it is made from. */
export function foodsWithin(ingredient: Ingredient): readonly FoodWithin[] {
  return new Walk().foods(ingredient, 'sure')
}

/** Every food of a dish as it is listed, with what is optional, once: none that only may stand instead. */
export function listedFoods(computed: Computed): ReadonlySet<Food> {
  const listed = foodsInDish(computed).filter(({isAlternative}) => !isAlternative)
  return new Set(listed.map(({food}) => food))
}

/** How sure an ingredient is to be in the dish, the surest first. */
const manners = ['sure', 'optional', 'alternative'] as const

type Manner = (typeof manners)[number]

function lessSure(one: Manner, other: Manner): Manner {
  return manners.indexOf(one) > manners.indexOf(other) ? one : other
}

/**
 * A walk enters a component once in each manner: again it adds nothing new, and chains of shared
 * ones would grow without end.
 */
class Walk {
  readonly #entered = {
    sure: new Set<Computed>(),
    optional: new Set<Computed>(),
    alternative: new Set<Computed>(),
  }

  foods(ingredient: Ingredient, how: Manner): readonly FoodWithin[] {
    const found: FoodWithin[] = []
    this.#addTo(found, ingredient, {how, through: []})
    return found
  }

  #addTo(
    found: FoodWithin[],
    ingredient: Ingredient,
    way: Pick<FoodWithin, 'through'> & {readonly how: Manner},
  ): void {
    const {how, through} = way
    if (ingredient.kind === 'food') {
      const {food} = ingredient
      found.push({food, through, isByChoice: how !== 'sure', isAlternative: how === 'alternative'})
      return
    }
    const {computed} = ingredient
    const entered = this.#entered[how]
    if (entered.has(computed)) return
    entered.add(computed)
    for (const choice of choicesOf(computed)) {
      this.#addTo(found, choice.ingredient, {
        how: lessSure(how, choice.how),
        through: [...through, computed],
      })
    }
  }
}

interface Choice {
  readonly line: ComputedLine
  readonly ingredient: Ingredient
  readonly how: Manner
}

function choicesOf({lines}: Computed): readonly Choice[] {
  return lines.flatMap((line): Choice[] => [
    {line, ingredient: line.ingredient, how: line.role === 'optional' ? 'optional' : 'sure'},
    ...line.instead.map(({ingredient}) => ({line, ingredient, how: 'alternative' as const})),
  ])
}
