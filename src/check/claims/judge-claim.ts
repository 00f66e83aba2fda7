import type {LabelRules} from '../../food/label-rules.ts'
import type {Claim} from './claim.ts'
import type {Outcome, Test} from './condition.ts'
import type {Dish} from './dish.ts'
import {euClaims} from './eu-claims.ts'
import {usClaims} from './us-claims.ts'

/** The claims of each law. */
export const claimsOf: Readonly<Record<LabelRules, readonly Claim[]>> = {us: usClaims, eu: euClaims}

const byWord: Readonly<Record<LabelRules, ReadonlyMap<string, Claim>>> = {
  us: wordsOf(usClaims),
  eu: wordsOf(euClaims),
}

function wordsOf(claims: readonly Claim[]): ReadonlyMap<string, Claim> {
  return new Map(
    claims.flatMap((claim) =>
      [claim.name, ...claim.also].map((word) => [key(word), claim] as const),
    ),
  )
}

/** Case, hyphens and the American spelling do not matter. */
function key(word: string): string {
  return word
    .toLowerCase()
    .replaceAll(/[-\s]+/g, ' ')
    .replace('fiber', 'fibre')
    .trim()
}

/** The claim that words mean under a law; undefined where it has none. */
export function claimFor(word: string, rules: LabelRules): Claim | undefined {
  return byWord[rules].get(key(word))
}

export interface JudgedClaim {
  readonly outcome: Outcome
  /** Conditions that were not met, one for each way to the claim; empty where it holds. */
  readonly against: readonly Test[]
}

/** A claim holds only at the unfavourable end of the uncertainty, and never on an unknown figure. */
export function judgeClaim(claim: Claim, dish: Dish): JudgedClaim {
  const ways = claim.ways(dish).map((conditions) => conditions.map((condition) => condition(dish)))
  const against = ways.flatMap((tests) => worst(tests) ?? [])
  if (against.length < ways.length) return {outcome: 'holds', against: []}
  const isOpen = against.some(({outcome}) => outcome === 'unknown')
  return {outcome: isOpen ? 'unknown' : 'fails', against}
}

/** What is known to fail comes before what cannot be told. */
function worst(tests: readonly Test[]): Test | undefined {
  return (
    tests.find(({outcome}) => outcome === 'fails') ??
    tests.find(({outcome}) => outcome === 'unknown')
  )
}

/** Every claim that holds for a dish, in the order of the law's table. */
export function possibleClaims(dish: Dish): readonly Claim[] {
  return claimsOf[dish.rules].filter((claim) => judgeClaim(claim, dish).outcome === 'holds')
}
