import type {Located} from '../../cookbook/problem.ts'
import {nearestNames} from '../../food/nearest-names.ts'
import type {Claim} from '../claims/claim.ts'
import {type Dish, dishOf} from '../claims/dish.ts'
import {
  claimFor,
  claimsOf,
  type JudgedClaim,
  judgeClaim,
  possibleClaims,
} from '../claims/judge-claim.ts'
import {whyNoClaim} from '../claims/other-words.ts'
import type {Finding, Rule} from '../rule.ts'

/** Near words a message lists. */
const mostSuggestions = 3

export const nutrientClaim: Rule = {
  id: 'nutrient-claim',
  severity: 'error',
  summary:
    'A claim about nutrition meets its law’s conditions at the unfavourable end of the uncertainty.',
  why: 'The words mean something to readers, and the laws say what; a figure nobody knows supports no claim.',
  source:
    'US: 21 CFR 101.54, .56 and .60–.62, a serving standing in for the reference amount. EU: Regulation (EC) 1924/2006, Annex. Seen in secondary summaries. On sale, local law and its authority decide.',
  *check({recipe, computed, cookbook, all}) {
    if (recipe.claims.length === 0) return
    const dish = dishOf(computed, cookbook, all)
    for (const word of recipe.claims) {
      const claim = claimFor(word.value, dish.rules)
      if (!claim) {
        yield unknownClaim(word, dish)
        continue
      }
      const judged = judgeClaim(claim, dish)
      if (judged.outcome !== 'holds') yield finding(word, claim, judged, dish)
    }
  },
}

function finding(
  word: Located<string>,
  claim: Claim,
  {outcome, against}: JudgedClaim,
  dish: Dish,
): Finding {
  // Two nutrients may lack one and the same thing: a dish to compare with.
  const ways = [...new Set(against.map(({found, expected}) => `${found}, expected ${expected}`))]
  const instead = possibleClaims(dish)
    .filter(({about}) => about === claim.about)
    .map(({name}) => name)
  return {
    place: word.place,
    reason: `Claim \`${word.value}\` ${outcome === 'fails' ? 'with' : 'cannot be checked:'} ${ways.join('; or ')}`,
    actual: word.value,
    expected: instead,
    note: [
      `${claim.source}.`,
      ...basisNote(dish),
      ...(instead.length > 0 ? [`What holds: ${instead.join(', ')}.`] : []),
    ].join('\n'),
  }
}

/** US limits are for amounts that a law lists and a recipe's serving only comes near. */
function basisNote({rules, kind}: Dish): readonly string[] {
  if (rules === 'eu') return []
  return [
    kind === 'food'
      ? 'A serving stands in for the reference amount customarily consumed (21 CFR 101.12).'
      : `Taken as a ${kind} (21 CFR 101.13(l)–(m)) by the weight of a serving and its food groups.`,
  ]
}

function unknownClaim({value, place}: Located<string>, {rules}: Dish): Finding {
  const names = claimsOf[rules].flatMap(({name, also}) => [name, ...also])
  const why = whyNoClaim(value, rules)
  const near = why ? [] : nearestNames(value, names, mostSuggestions)
  const law = rules === 'us' ? 'US' : 'EU'
  return {
    place,
    reason: `Claim \`${value}\` is none that ${law} law gives conditions to, expected ${near.length > 0 ? near.map((each) => `\`${each}\``).join(' or ') : 'one that it does'}`,
    actual: value,
    expected: near,
    note: why ?? `There are: ${claimsOf[rules].map(({name}) => name).join(', ')}.`,
  }
}
