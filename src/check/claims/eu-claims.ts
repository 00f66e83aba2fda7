import {dailyValue} from '../../food/daily-values.ts'
import {type Nutrient, nutrientName} from '../../food/nutrients.ts'
import {leastReduction} from '../comparison/minimum.ts'
import type {Claim} from './claim.ts'
import {atLeast, atMost, type Condition, notFor} from './condition.ts'
import {
  type Measure,
  per100g,
  per100kcal,
  saturatedAndTransPer100g,
  shareOfEnergy,
} from './measure.ts'
import {noSaltAdded, noSugarAdded} from './nothing-added.ts'
import {increasedBy, reducedBy} from './relative.ts'

/*
 * Claims of Regulation (EC) 1924/2006, Annex, as amended by Regulation (EU) 1047/2012: per 100 g of
 * what is eaten, per 100 ml of a drink, per 100 kcal, or as a share of the energy. Seen in secondary
 * summaries.
 */

const document = 'Regulation (EC) 1924/2006, Annex'

/** A limit for 100 g and one for 100 ml of a drink. */
function atMostIn(
  measure: Measure,
  limit: number,
  ofDrink: number,
  and: readonly Condition[] = [],
) {
  return ({isDrink}: {readonly isDrink: boolean}) => [
    [atMost(measure, isDrink ? ofDrink : limit), ...and],
  ]
}

const lowClaims: readonly Claim[] = [
  {
    name: 'energy-free',
    also: ['calorie-free', 'zero calories', 'no calories'],
    about: 'energy',
    source: document,
    ways: ({isDrink}) =>
      isDrink ? [[atMost(per100g('energy'), 4)]] : [[notFor('a dish that is no drink')]],
  },
  {
    name: 'low energy',
    also: ['low calorie', 'low in energy', 'low in calories'],
    about: 'energy',
    source: document,
    ways: atMostIn(per100g('energy'), 40, 20),
  },
  {
    name: 'fat-free',
    also: ['no fat', 'zero fat', 'without fat'],
    about: 'fat',
    source: document,
    ways: atMostIn(per100g('fat'), 0.5, 0.5),
  },
  {
    name: 'low fat',
    also: ['low in fat'],
    about: 'fat',
    source: document,
    ways: atMostIn(per100g('fat'), 3, 1.5),
  },
  {
    name: 'saturated-fat-free',
    also: ['no saturated fat', 'no saturates'],
    about: 'saturated',
    source: document,
    ways: atMostIn(saturatedAndTransPer100g, 0.1, 0.1),
  },
  {
    name: 'low saturated fat',
    also: ['low in saturated fat', 'low saturates', 'low in saturates'],
    about: 'saturated',
    source: document,
    ways: atMostIn(saturatedAndTransPer100g, 1.5, 0.75, [
      atMost(shareOfEnergy('saturated and trans fat', ['saturated', 'trans']), 10),
    ]),
  },
  {
    name: 'sugars-free',
    also: ['sugar-free', 'no sugar', 'zero sugar'],
    about: 'sugars',
    source: document,
    ways: atMostIn(per100g('sugars'), 0.5, 0.5),
  },
  {
    name: 'low sugars',
    also: ['low sugar', 'low in sugar', 'low in sugars'],
    about: 'sugars',
    source: document,
    ways: atMostIn(per100g('sugars'), 5, 2.5),
  },
  {
    name: 'no added sugars',
    also: ['no added sugar', 'no sugar added', 'without added sugar', 'without added sugars'],
    about: 'sugars',
    source: document,
    ways: () => [[noSugarAdded]],
  },
  {
    name: 'salt-free',
    also: ['sodium-free', 'no salt', 'no sodium'],
    about: 'sodium',
    source: document,
    ways: atMostIn(per100g('sodium'), 5, 5),
  },
  {
    name: 'very low salt',
    also: ['very low sodium', 'very low in salt', 'very low in sodium'],
    about: 'sodium',
    source: document,
    ways: atMostIn(per100g('sodium'), 40, 40),
  },
  {
    name: 'low salt',
    also: ['low sodium', 'low in salt', 'low in sodium'],
    about: 'sodium',
    source: document,
    ways: atMostIn(per100g('sodium'), 120, 120),
  },
  {
    name: 'no added salt',
    also: ['no added sodium', 'unsalted', 'no salt added', 'without added salt'],
    about: 'sodium',
    source: `${document}, as amended by Regulation (EU) 1047/2012`,
    ways: atMostIn(per100g('sodium'), 120, 120, [noSaltAdded]),
  },
]

const proteinShare = shareOfEnergy('protein', ['protein'])

const sourceClaims: readonly Claim[] = [
  {
    name: 'high protein',
    also: ['high in protein', 'rich in protein'],
    about: 'protein',
    source: document,
    ways: () => [[atLeast(proteinShare, 20)]],
  },
  {
    name: 'source of protein',
    also: ['good source of protein', 'contains protein'],
    about: 'protein',
    source: document,
    ways: () => [[atLeast(proteinShare, 12)]],
  },
  {
    name: 'high fibre',
    also: ['high in fibre', 'rich in fibre', 'high fiber', 'high in fiber'],
    about: 'fibre',
    source: document,
    ways: () => [[atLeast(per100g('fibre'), 6)], [atLeast(per100kcal('fibre'), 3)]],
  },
  {
    name: 'source of fibre',
    also: ['good source of fibre', 'contains fibre', 'source of fiber', 'good source of fiber'],
    about: 'fibre',
    source: document,
    ways: () => [[atLeast(per100g('fibre'), 3)], [atLeast(per100kcal('fibre'), 1.5)]],
  },
]

/**
 * A significant amount: 15 % of the reference value in 100 g, 7.5 % in 100 ml of a drink
 * (Regulation (EU) 1169/2011 Annex XIII part A); "high" is twice that.
 */
const significantShare = 0.15
const significantInDrinkShare = 0.075

function micronutrientClaims(nutrient: Nutrient): readonly Claim[] {
  const name = nutrientName[nutrient]
  const day = dailyValue.eu[nutrient] ?? Number.POSITIVE_INFINITY
  const ways =
    (times: number): Claim['ways'] =>
    ({isDrink}) => {
      const share = isDrink ? significantInDrinkShare : significantShare
      return [[atLeast(per100g(nutrient), times * share * day)]]
    }
  return [
    {
      name: `high ${name}`,
      also: [`high in ${name}`, `rich in ${name}`],
      about: 'micronutrient',
      source: document,
      ways: ways(2),
    },
    {
      name: `source of ${name}`,
      also: [`good source of ${name}`, `contains ${name}`],
      about: 'micronutrient',
      source: document,
      ways: ways(1),
    },
  ]
}

const reducible = [
  [
    'energy',
    'reduced energy',
    ['energy-reduced', 'reduced calorie', 'fewer calories', 'less energy'],
  ],
  ['fat', 'reduced fat', ['less fat', 'reduced in fat']],
  ['saturated', 'reduced saturated fat', ['less saturated fat', 'reduced saturates']],
  ['sugars', 'reduced sugars', ['reduced sugar', 'less sugar', 'less sugars']],
  ['salt', 'reduced salt', ['reduced sodium', 'less salt', 'less sodium']],
] as const

/** "Increased" wants this much more than the usual dish: Regulation (EC) 1924/2006, Annex, from memory. */
const increasedShare = 0.3

function reduction(nutrient: (typeof reducible)[number][0]): Condition {
  return reducedBy(nutrient, leastReduction(nutrient, 'eu'))
}

const relativeClaims: readonly Claim[] = [
  ...reducible.map(
    ([nutrient, name, also]): Claim => ({
      name,
      also,
      about: nutrient === 'salt' ? 'sodium' : nutrient,
      source: document,
      isRelative: true,
      // Less sugar or saturated fat that is made up for elsewhere is no reduction (1047/2012).
      ways: () => [
        nutrient === 'sugars' || nutrient === 'saturated'
          ? [reduction(nutrient), reducedBy('energy', 0)]
          : [reduction(nutrient)],
      ],
    }),
  ),
  {
    name: 'light',
    also: ['lite', 'lighter'],
    about: 'several',
    source: document,
    isRelative: true,
    ways: () => [[reduction('energy')], [reduction('fat')]],
  },
  {
    name: 'increased protein',
    also: ['more protein', 'extra protein'],
    about: 'protein',
    source: document,
    isRelative: true,
    ways: () => [[atLeast(proteinShare, 12), increasedBy('protein', increasedShare)]],
  },
  {
    name: 'increased fibre',
    also: ['more fibre', 'extra fibre'],
    about: 'fibre',
    source: document,
    isRelative: true,
    ways: () => [
      [atLeast(per100g('fibre'), 3), increasedBy('fibre', increasedShare)],
      [atLeast(per100kcal('fibre'), 1.5), increasedBy('fibre', increasedShare)],
    ],
  },
]

const micronutrients = ['calcium', 'iron', 'potassium', 'vitaminD'] as const

/** Every claim that EU law gives conditions to and a recipe can be held to. */
export const euClaims: readonly Claim[] = [
  ...sourceClaims,
  ...micronutrients.flatMap(micronutrientClaims),
  ...lowClaims,
  ...relativeClaims,
]
