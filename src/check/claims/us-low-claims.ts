import type {Nutrient} from '../../food/nutrients.ts'
import type {Claim} from './claim.ts'
import {atMost, below, type Condition, notFor} from './condition.ts'
import type {Dish} from './dish.ts'
import {type Freedom, notKnownFor} from './known-for.ts'
import {type Measure, per50g, per100g, perServing, shareOfEnergy} from './measure.ts'
import {noSaltAdded, noSugarAdded} from './nothing-added.ts'

/** A serving as small as this is held to 50 g as well: 21 CFR 101.60–.62. */
const smallServingGrams = 30

/** Less than a number per serving, of a main dish or meal the same, and no ingredient known for it. */
function free(freedom: Freedom, measures: readonly (readonly [Measure, number])[]): Claim['ways'] {
  return () => [
    [...measures.map(([measure, limit]) => below(measure, limit)), notKnownFor(freedom)],
  ]
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

export const fatShare = shareOfEnergy('fat', ['fat'])
const saturatedShare = shareOfEnergy('saturated fat', ['saturated'])

/** Saturated fat that a claim about cholesterol allows: 21 CFR 101.62(d). */
export const saturatedLimit = (dish: Dish): Condition =>
  atMost(dish.kind === 'food' ? perServing('saturated') : per100g('saturated'), 2)

/** Free of something, low in it, or with none added. */
export const usLowClaims: readonly Claim[] = [
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
    ways: free('fat', [[perServing('fat'), 0.5]]),
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
    ways: free('saturated fat', [
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
    ways: (dish) => [
      [below(perServing('cholesterol'), 2), saturatedLimit(dish), notKnownFor('cholesterol')],
    ],
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
    ways: free('sodium', [[perServing('sodium'), 5]]),
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
    ways: free('sugar', [[perServing('sugars'), 0.5]]),
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
