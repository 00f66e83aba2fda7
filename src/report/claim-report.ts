import {dishOf} from '../check/claims/dish.ts'
import {claimFor, judgeClaim, possibleClaims} from '../check/claims/judge-claim.ts'
import {claimSentences} from '../check/claims/sentences.ts'
import type {Cookbook} from '../cookbook/cookbook.ts'
import type {Computed} from '../nutrition/computed.ts'
import type {ClaimsReport} from './explanation.ts'

/** What a recipe claims about nutrition, and what else it could. */
export function claimsReport(
  computed: Computed,
  cookbook: Cookbook,
  all: ReadonlyMap<string, Computed>,
): ClaimsReport {
  const dish = dishOf(computed, cookbook, all)
  const {claims} = computed.recipe
  const names = new Set(claims.map(({value}) => claimFor(value, dish.rules)?.name))
  return {
    rules: dish.rules,
    made: claims.map(({value}) => {
      const claim = claimFor(value, dish.rules)
      return {claim: value, outcome: claim ? judgeClaim(claim, dish).outcome : 'no such claim'}
    }),
    possible: possibleClaims(dish)
      .filter(({name}) => !names.has(name))
      .map(({name, source}) => ({claim: name, source})),
    sentences: claimSentences(dish).map(({text}) => text),
  }
}
