import {type Diet, dietOf} from '../../src/check/absences/diet.ts'
import type {Rule} from '../../src/check/rule.ts'
import {freeFrom} from '../../src/check/rules/free-from.ts'
import {nutrientClaim} from '../../src/check/rules/nutrient-claim.ts'
import {suitsDiet} from '../../src/check/rules/suits-diet.ts'
import type {Settings} from '../../src/cookbook/cookbook.ts'
import type {Recipe} from '../../src/cookbook/recipe.ts'

/** What a recipe promises that its ingredients were held to. */
export interface CheckedPromises {
  /** Words of `free from`, as written. */
  readonly freeFrom: readonly string[]
  readonly diets: readonly Diet[]
  /** Words of `claims`, as written. */
  readonly claims: readonly string[]
}

/**
 * The promises a page may repeat: those whose rule would have stopped the build. Where the writer
 * softened the rule or accepted its finding, somebody with an allergy is told nothing.
 */
export function checkedPromises(recipe: Recipe, settings: Settings): CheckedPromises {
  return {
    freeFrom: isHeldTo(freeFrom, recipe, settings) ? recipe.freeFrom.map(({value}) => value) : [],
    diets: isHeldTo(suitsDiet, recipe, settings)
      ? recipe.suits.flatMap(({value}) => dietOf(value) ?? [])
      : [],
    claims: isHeldTo(nutrientClaim, recipe, settings) ? recipe.claims.map(({value}) => value) : [],
  }
}

function isHeldTo(rule: Rule, {accepted}: Recipe, {severities}: Settings): boolean {
  const severity = severities.get(rule.id) ?? rule.severity
  return severity === 'error' && !accepted.some(({ruleId}) => ruleId.value === rule.id)
}
