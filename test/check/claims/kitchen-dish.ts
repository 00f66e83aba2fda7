import {type Dish, dishOf} from '../../../src/check/claims/dish.ts'
import {claimFor, judgeClaim} from '../../../src/check/claims/judge-claim.ts'
import type {Settings} from '../../../src/cookbook/cookbook.ts'
import type {Recipe} from '../../../src/cookbook/recipe.ts'
import type {Food} from '../../../src/food/food.ts'
import type {LabelRules} from '../../../src/food/label-rules.ts'
import type {Nutrient} from '../../../src/food/nutrients.ts'
import {computeCookbook} from '../../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, grams, line, recipe} from '../../kitchen.ts'

/** Figures of 100 g; what is left out is unknown. */
export type Per100g = Partial<Record<Nutrient, number>>

export interface MadeDish {
  readonly rules: LabelRules
  /** Of one serving, which is the whole batch. */
  readonly portionGrams?: number
  /** Step to which figures and weights are known; next to nothing unless said. */
  readonly step?: number
  /** Whether somebody weighed the batch; so unless said otherwise. */
  readonly isWeighed?: boolean
  readonly more?: Partial<Food>
  readonly recipe?: Partial<Recipe>
  readonly settings?: Partial<Settings>
}

/** A dish of one food with the figures given, weighed whole. */
export function dishWith(per100g: Per100g, made: MadeDish): Dish {
  const {portionGrams = 100, step = 1e-9, isWeighed = true, more = {}} = made
  const all = food('all of it', per100g, {increment: step, ...more})
  const one = recipe('dish', [line('all of it', grams(portionGrams, step))], {
    serves: at(1),
    ...(isWeighed && {batch: at(grams(portionGrams, step))}),
    ...made.recipe,
  })
  const settings = {rules: made.rules, scaleGrams: step, ...made.settings}
  const book = cookbook([all], [one], settings)
  const {computed} = computeCookbook(book)
  const dish = computed.get('dish')
  if (!dish) throw new Error('The dish was not computed')
  return dishOf(dish, book, computed)
}

/** What comes of a claim for such a dish; undefined where the law has none of that name. */
export function outcomeOf(word: string, per100g: Per100g, made: MadeDish): string | undefined {
  const claim = claimFor(word, made.rules)
  return claim && judgeClaim(claim, dishWith(per100g, made)).outcome
}
