import type {Allergen} from '../food/food.ts'
import type {Computed, Ingredient} from './computed.ts'

/** The allergens of a dish, through its components. */
export interface ContainedAllergens {
  /** In what goes into the dish, counted or not: flour for dusting is on the crust. */
  readonly contains: ReadonlySet<Allergen>
  /** As packets warn of traces. */
  readonly mayContain: ReadonlySet<Allergen>
  /** Only in optional lines or in alternatives. */
  readonly onlyByChoice: ReadonlySet<Allergen>
  /** Foods nobody has stated the allergens of. */
  readonly notStated: ReadonlySet<string>
}

/** Gathers the allergens of every line; what is unknown is named, never taken as absent. */
export function containedAllergens(computed: Computed): ContainedAllergens {
  return gathered((visit) => visitLines(computed, false, visit))
}

/** The allergens of one food or component. */
export function ingredientAllergens(ingredient: Ingredient): ContainedAllergens {
  return gathered((visit) => visit(ingredient, false))
}

type Visit = (ingredient: Ingredient, isByChoice: boolean) => void

function gathered(walk: (visit: Visit) => void): ContainedAllergens {
  const contains = new Set<Allergen>()
  const mayContain = new Set<Allergen>()
  const onlyByChoice = new Set<Allergen>()
  const notStated = new Set<string>()
  // A component met twice adds nothing new, and chains of shared components would grow without end.
  const seen = {sure: new Set<Computed>(), byChoice: new Set<Computed>()}

  function visit(ingredient: Ingredient, isByChoice: boolean): void {
    if (ingredient.kind === 'component') {
      const done = isByChoice ? seen.byChoice : seen.sure
      if (done.has(ingredient.computed)) return
      done.add(ingredient.computed)
      visitLines(ingredient.computed, isByChoice, visit)
      return
    }
    const {food} = ingredient
    for (const allergen of food.contains) (isByChoice ? onlyByChoice : contains).add(allergen)
    for (const allergen of food.mayContain) mayContain.add(allergen)
    if (!food.allergensKnown) notStated.add(food.name)
  }

  walk(visit)
  for (const allergen of contains) {
    onlyByChoice.delete(allergen)
    mayContain.delete(allergen)
  }
  return {contains, mayContain, onlyByChoice, notStated}
}

function visitLines({lines}: Computed, isByChoice: boolean, visit: Visit): void {
  for (const {ingredient, role, instead} of lines) {
    visit(ingredient, isByChoice || role === 'optional')
    for (const choice of instead) visit(choice.ingredient, true)
  }
}
