import {dailyValue} from '../../food/daily-values.ts'
import {type Nutrient, nutrientName} from '../../food/nutrients.ts'
import type {Claim, ClaimSubject} from './claim.ts'
import {atLeast, atMost, below, type Condition, notFor} from './condition.ts'
import type {Dish} from './dish.ts'
import {
  correctedProtein,
  type Measure,
  per50g,
  per100g,
  perServing,
  shareOfEnergy,
} from './measure.ts'
import {noSaltAdded, noSugarAdded} from './nothing-added.ts'
import {reducedBy} from './relative.ts'

/*
 * Claims of 21 CFR 101.54, .56 and .60–.62, with FDA, A Food Labeling Guide, Appendix A (2004,
 * 2009), seen in part and in reproductions by the National Academies. A limit per reference amount
 * customarily consumed (101.12) is held to the recipe's serving, which is an approximation; where a
 * serving weighs 30 g or less, "low" is held to 50 g as well. What is low in a main dish or a meal
 * is held to 100 g.
 */

/** A serving as small as this is held to 50 g as well: 21 CFR 101.60–.62. */
const smallServingGrams = 30

/** Less than a number per serving; of a main dish or meal the same. */
function free(measures: readonly (readonly [Measure, number])[]): Claim['ways'] {
  return () => [measures.map(([measure, limit]) => below(measure, limit))]
}

interface Low {
  readonly nutrient: Nutrient
  /** In a single food, per serving. */
  readonly limit: number
  /** In a main dish or meal, per 100 g. */
  readonly dishLimit: number
  /** What else has to hold of a food, and of a main dish or meal. */
  readonly and?: readonly Condition[]
  readonly andOfDish?: readonly Condition[]
}

function low({nutrient, limit, dishLimit, and = [], andOfDish = []}: Low): Claim['ways'] {
  return (dish) => {
    if (dish.kind !== 'food') return [[atMost(per100g(nutrient), dishLimit), ...andOfDish]]
    const small = isSmall(dish) ? [atMost(per50g(nutrient), limit)] : []
    return [[atMost(perServing(nutrient), limit), ...small, ...and]]
  }
}

export function isSmall({computed}: Dish): boolean {
  return computed.portionGrams !== undefined && computed.portionGrams.value <= smallServingGrams
}

const fatShare = shareOfEnergy('fat', ['fat'])
const saturatedShare = shareOfEnergy('saturated fat', ['saturated'])

/** Saturated fat that a claim about cholesterol allows: 21 CFR 101.62(d). */
const saturatedLimit = (dish: Dish): Condition =>
  atMost(dish.kind === 'food' ? perServing('saturated') : per100g('saturated'), 2)

const freeAndLow: readonly Claim[] = [
  {
    name: 'calorie-free',
    also: ['energy-free', 'zero calories', 'no calories', 'free of calories'],
    about: 'energy',
    source: '21 CFR 101.60(b)(1)',
    ways: (dish) =>
      dish.kind === 'food' ? [[below(perServing('energy'), 5)]] : [[notFor(`a ${dish.kind}`)]],
  },
  {
    name: 'low calorie',
    also: ['low energy', 'low in calories', 'low in energy', 'few calories'],
    about: 'energy',
    source: '21 CFR 101.60(b)(2)–(3)',
    ways: low({nutrient: 'energy', limit: 40, dishLimit: 120}),
  },
  {
    name: 'fat-free',
    also: ['no fat', 'zero fat', 'without fat', 'non-fat'],
    about: 'fat',
    source: '21 CFR 101.62(b)(1)',
    ways: free([[perServing('fat'), 0.5]]),
  },
  {
    name: 'low fat',
    also: ['low in fat', 'little fat'],
    about: 'fat',
    source: '21 CFR 101.62(b)(2)–(3)',
    ways: low({nutrient: 'fat', limit: 3, dishLimit: 3, andOfDish: [atMost(fatShare, 30)]}),
  },
  {
    name: 'saturated-fat-free',
    also: ['no saturated fat', 'free of saturated fat'],
    about: 'saturated',
    source: '21 CFR 101.62(c)(1)',
    ways: free([
      [perServing('saturated'), 0.5],
      [perServing('trans'), 0.5],
    ]),
  },
  {
    name: 'low saturated fat',
    also: ['low in saturated fat'],
    about: 'saturated',
    source: '21 CFR 101.62(c)(2)–(3)',
    ways: low({
      nutrient: 'saturated',
      limit: 1,
      dishLimit: 1,
      and: [atMost(saturatedShare, 15)],
      andOfDish: [below(saturatedShare, 10)],
    }),
  },
  {
    name: 'cholesterol-free',
    also: ['no cholesterol', 'zero cholesterol'],
    about: 'cholesterol',
    source: '21 CFR 101.62(d)(1)',
    ways: (dish) => [[below(perServing('cholesterol'), 2), saturatedLimit(dish)]],
  },
  {
    name: 'low cholesterol',
    also: ['low in cholesterol'],
    about: 'cholesterol',
    source: '21 CFR 101.62(d)(2)–(3)',
    ways: (dish) =>
      low({
        nutrient: 'cholesterol',
        limit: 20,
        dishLimit: 20,
        and: [saturatedLimit(dish)],
        andOfDish: [saturatedLimit(dish)],
      })(dish),
  },
  {
    name: 'sodium-free',
    also: ['salt-free', 'no sodium', 'zero sodium'],
    about: 'sodium',
    source: '21 CFR 101.61(b)(1)',
    ways: free([[perServing('sodium'), 5]]),
  },
  {
    name: 'very low sodium',
    also: ['very low in sodium'],
    about: 'sodium',
    source: '21 CFR 101.61(b)(2)–(3)',
    ways: low({nutrient: 'sodium', limit: 35, dishLimit: 35}),
  },
  {
    name: 'low sodium',
    also: ['low in sodium', 'little sodium'],
    about: 'sodium',
    source: '21 CFR 101.61(b)(4)–(5)',
    ways: low({nutrient: 'sodium', limit: 140, dishLimit: 140}),
  },
  {
    name: 'sugar-free',
    also: ['sugars-free', 'no sugar', 'zero sugar'],
    about: 'sugars',
    source: '21 CFR 101.60(c)(1)',
    ways: free([[perServing('sugars'), 0.5]]),
  },
  {
    name: 'no added sugars',
    also: ['no added sugar', 'no sugar added', 'without added sugar', 'without added sugars'],
    about: 'sugars',
    source: '21 CFR 101.60(c)(2)',
    ways: () => [[noSugarAdded]],
  },
  {
    name: 'no added salt',
    also: ['unsalted', 'no salt added', 'without added salt'],
    about: 'sodium',
    source: '21 CFR 101.61(c)(2)',
    ways: () => [[noSaltAdded]],
  },
]

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

const reducible = [
  ['energy', ['reduced calorie', 'fewer calories', 'less energy', 'reduced in energy']],
  ['fat', ['less fat', 'reduced in fat']],
  ['saturated', ['less saturated fat', 'reduced in saturated fat']],
  ['cholesterol', ['less cholesterol', 'reduced in cholesterol']],
  ['sodium', ['less sodium', 'reduced in sodium', 'less salt', 'reduced salt']],
  ['sugars', ['less sugar', 'reduced sugar', 'less sugars', 'reduced in sugars']],
] as const

/** Less of something than the usual dish has, by a quarter: 21 CFR 101.60(b)(4), .61(b)(6), .62. */
const reducedShare = 0.25

const relativeClaims: readonly Claim[] = [
  ...reducible.map(
    ([nutrient, also]): Claim => ({
      name: `reduced ${nutrient === 'saturated' ? 'saturated fat' : nutrient}`,
      also,
      about: nutrient,
      source: '21 CFR 101.60(b)(4), (c)(5), .61(b)(6), .62(b)(4)',
      isRelative: true,
      ways: () => [[reducedBy(nutrient, reducedShare)]],
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

/** Every claim that US law gives conditions to and a recipe can be held to. */
export const usClaims: readonly Claim[] = [
  ...sourceClaims('protein'),
  ...dailyNutrients.flatMap(sourceClaims),
  ...freeAndLow,
  ...leanClaims,
  ...relativeClaims,
]
