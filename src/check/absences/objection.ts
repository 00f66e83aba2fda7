import type {FoodInDish, FoodWithin} from '../../nutrition/foods-in-dish.ts'

/** Why a food speaks against what a page promises of a dish. */
export type Objection = {
  /** Goes on after the food: "contains milk". */
  readonly why: string
} & (
  | {readonly kind: 'no'}
  /** Nobody has stated it; the key in foods.yaml that would. */
  | {readonly kind: 'unknown'; readonly key: 'contains' | 'made from'}
)

export type ObjectingFood = Objection & {readonly found: FoodInDish}

/** The foods that speak against a promise, each once, what is known first. */
export function objections(
  foods: readonly FoodInDish[],
  objection: (food: FoodWithin['food']) => Objection | undefined,
): readonly ObjectingFood[] {
  const seen = new Set<FoodWithin['food']>()
  const against = foods.flatMap((found) => {
    if (seen.has(found.food)) return []
    seen.add(found.food)
    const why = objection(found.food)
    return why ? [{...why, found}] : []
  })
  return [
    ...against.filter(({kind}) => kind === 'no'),
    ...against.filter(({kind}) => kind === 'unknown'),
  ]
}

/** `feta`, or `feta` in `mint dressing`: the food and the component it comes through. */
export function foodText({food, through, isByChoice, isAlternative}: FoodInDish): string {
  const component = through.at(-1)
  const where = component ? ` in \`${component.recipe.title.value}\`` : ''
  const choice = !isByChoice ? '' : isAlternative ? 'the alternative ' : 'the optional '
  return `${choice}\`${food.name}\`${where}`
}

/** Foods that a message names. */
const mostNamed = 3

/** The first few of them in words, and how many more there are. */
export function foodsText(against: readonly ObjectingFood[]): string {
  const named = against.slice(0, mostNamed).map(({found}) => foodText(found))
  const more = against.length - named.length
  return more > 0 ? `${named.join(', ')} and ${more} more` : named.join(', ')
}
