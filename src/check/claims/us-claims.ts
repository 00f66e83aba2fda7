import {dailyValue} from '../../food/daily-values.ts'
import {nutrientName} from '../../food/nutrients.ts'
import type {Claim, ClaimSubject} from './claim.ts'
import {atLeast, atMost, below, type Condition} from './condition.ts'
import {correctedProtein, per100g, perServing} from './measure.ts'
import {usLowClaims} from './us-low-claims.ts'
import {usRelativeClaims} from './us-relative-claims.ts'

/*
 * Claims of 21 CFR 101.54, .56 and .60–.62, with FDA, A Food Labeling Guide, Appendix A (2004,
 * 2009), seen in part and in reproductions by the National Academies. A limit per reference amount
 * customarily consumed (101.12) is held to the recipe's serving, which is an approximation; where a
 * serving weighs 30 g or less, "low" is held to 50 g as well. What is low in a main dish or a meal
 * is held to 100 g.
 */

/** Limits of fat, saturated fat (both g) and cholesterol (mg), per serving and per 100 g. */
function lean(fat: number, saturated: Condition[], cholesterol: number): Claim['ways'] {
  const measures = [perServing, per100g] as const
  return () => [
    [
      ...measures.flatMap((per) => [
        below(per('fat'), fat),
        below(per('cholesterol'), cholesterol),
      ]),
      ...saturated,
    ],
  ]
}

const leanClaims: readonly Claim[] = [
  {
    name: 'extra lean',
    also: [],
    about: 'several',
    source: '21 CFR 101.62(e)(4)',
    ways: lean(5, [below(perServing('saturated'), 2), below(per100g('saturated'), 2)], 95),
  },
  {
    name: 'lean',
    also: [],
    about: 'several',
    source: '21 CFR 101.62(e)(1)–(3)',
    ways: lean(10, [atMost(perServing('saturated'), 4.5), atMost(per100g('saturated'), 4.5)], 95),
  },
]

const dailyNutrients = ['fibre', 'calcium', 'iron', 'potassium', 'vitaminD'] as const

/** Shares of the Daily Value, 0 to 1: 21 CFR 101.54(b), (c) and (e). */
const highShare = 0.2
const goodShare = 0.1

function sourceClaims(nutrient: (typeof dailyNutrients)[number] | 'protein'): readonly Claim[] {
  const name = nutrientName[nutrient]
  const measure = nutrient === 'protein' ? correctedProtein : perServing(nutrient)
  const day = dailyValue.us[nutrient] ?? Number.POSITIVE_INFINITY
  const about: ClaimSubject =
    nutrient === 'fibre' || nutrient === 'protein' ? nutrient : 'micronutrient'
  return [
    {
      name: `high ${name}`,
      also: [`high in ${name}`, `rich in ${name}`, `excellent source of ${name}`],
      about,
      source: '21 CFR 101.54(b)',
      ways: () => [[atLeast(measure, highShare * day)]],
    },
    {
      name: `good source of ${name}`,
      also: [`source of ${name}`, `contains ${name}`, `provides ${name}`],
      about,
      source: '21 CFR 101.54(c)',
      ways: () => [[atLeast(measure, goodShare * day)]],
    },
  ]
}

/** Every claim that US law gives conditions to and a recipe can be held to. */
export const usClaims: readonly Claim[] = [
  ...sourceClaims('protein'),
  ...dailyNutrients.flatMap(sourceClaims),
  ...usLowClaims,
  ...leanClaims,
  ...usRelativeClaims,
]
