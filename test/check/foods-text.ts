import {checkCookbook} from '../../src/check/check-cookbook.ts'
import type {Problem} from '../../src/cookbook/problem.ts'
import {computedIn} from './check-text.ts'

/** What rules find in foods.yaml, used or not. */
export function findingsInFoods(foods: string): readonly Problem[] {
  const {cookbook, computed} = computedIn({ingredients: ['water: 1 g'], method: '', foods})
  const found = checkCookbook(cookbook, computed)
  return found.filter(({ruleId, file}) => file === 'foods.yaml' && ruleId !== 'food-used')
}
