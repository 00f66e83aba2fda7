import type {Claim, ClaimSubject} from './claim.ts'
import {atMost, below, type Condition} from './condition.ts'
import type {Dish} from './dish.ts'
import {dishKind} from './dish-kind.ts'
import {per100g} from './measure.ts'
import {reducedBy} from './relative.ts'
import {fatShare, saturatedLimit, usLowClaims} from './us-low-claims.ts'

const reducible = [
  ['energy', ['reduced calorie', 'fewer calories', 'less energy', 'reduced in energy']],
  ['fat', ['less fat', 'reduced in fat']],
  ['saturated', ['less saturated fat', 'reduced in saturated fat']],
  ['cholesterol', ['less cholesterol', 'reduced in cholesterol']],
  ['sodium', ['less sodium', 'reduced in sodium', 'less salt', 'reduced salt']],
  ['sugars', ['less sugar', 'reduced sugar', 'less sugars', 'reduced in sugars']],
] as const

/**
 * A dish that is low in something already is no measure of less: 21 CFR 101.60(b)(4), .61(b)(6),
 * .62(b)(4). A food it is compared with has no serving to be held to and is let pass.
 */
function besideNotLow(about: ClaimSubject): Condition {
  const low = usLowClaims.find((claim) => claim.about === about && claim.name.startsWith('low '))
  return ({beside}) => {
    const kept = {outcome: 'holds', found: '', expected: ''} as const
    if (!low || !beside?.other) return kept
    const usual: Dish = {
      computed: beside.other,
      rules: 'us',
      kind: dishKind(beside.other),
      isDrink: false,
    }
    const isLow = low
      .ways(usual)
      .some((conditions) => conditions.every((condition) => condition(usual).outcome === 'holds'))
    if (!isLow) return kept
    const found = `\`${beside.name}\`, which is ${low.name} itself`
    return {outcome: 'fails', found, expected: 'a usual dish that is not'}
  }
}

/** Less of something than the usual dish has, by a quarter: 21 CFR 101.60(b)(4), .61(b)(6), .62. */
const reducedShare = 0.25

/** Less of something than the usual dish has: 21 CFR 101.56 and .60–.62. */
export const usRelativeClaims: readonly Claim[] = [
  ...reducible.map(
    ([nutrient, also]): Claim => ({
      name: `reduced ${nutrient === 'saturated' ? 'saturated fat' : nutrient}`,
      also,
      about: nutrient,
      source: '21 CFR 101.60(b)(4), (c)(5), .61(b)(6), .62(b)(4)',
      isRelative: true,
      // Cholesterol is no boast beside saturated fat that raises it: 21 CFR 101.62(d)(4), from memory.
      ways: (dish) => [
        [
          reducedBy(nutrient, reducedShare),
          besideNotLow(nutrient),
          ...(nutrient === 'cholesterol' ? [saturatedLimit(dish)] : []),
        ],
      ],
    }),
  ),
  {
    name: 'light',
    also: ['lite', 'lighter'],
    about: 'several',
    source: '21 CFR 101.56(b)–(d)',
    isRelative: true,
    // Half of the fat always; a third of the energy only where fat brings less than half of it. A
    // main dish or meal is light when it is low in calories or fat.
    ways: (dish) =>
      dish.kind === 'food'
        ? [[reducedBy('fat', 1 / 2)], [below(fatShare, 50), reducedBy('energy', 1 / 3)]]
        : [[atMost(per100g('energy'), 120)], [atMost(per100g('fat'), 3), atMost(fatShare, 30)]],
  },
  {
    name: 'light in sodium',
    also: ['lite in sodium'],
    about: 'sodium',
    source: '21 CFR 101.56(c)',
    isRelative: true,
    ways: (dish) =>
      dish.kind === 'food' ? [[reducedBy('sodium', 1 / 2)]] : [[atMost(per100g('sodium'), 140)]],
  },
]
