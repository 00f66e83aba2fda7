import {describe, expect, test} from 'vitest'
import {readOwnFoods} from '../../src/cookbook/own-foods.ts'
import type {Food} from '../../src/food/food.ts'
import type {PublishedFoods} from '../../src/food/published-foods.ts'
import {standardUncertainty} from '../../src/units/uncertain.ts'
import {food} from '../kitchen.ts'

const flour = food(
  'white wheat flour',
  {energy: 364, protein: 10.33},
  {
    id: 'usda/20081',
    contains: new Set(['wheat']),
    measures: new Map([['cup', 125]]),
    aisle: 'baking',
  },
)

const published: PublishedFoods = {
  names: ['white wheat flour', 'wholemeal flour'],
  lookUp: (name) => (name === 'usda/20081' || name === 'white wheat flour' ? flour : undefined),
  foods: () => [flour],
}

function read(text: string) {
  const {foods, refused, problems} = readOwnFoods(
    {path: 'foods.yaml', text},
    {published, rules: 'us', cups: 'us'},
  )
  const told = problems.map(({place, ruleId, reason}) => {
    const {line, column} = place?.start ?? {}
    return `${line}:${column} ${ruleId} ${reason}`
  })
  return {foods, refused, told}
}

function only(text: string): Food {
  const {foods, told} = read(text)
  expect(told).toEqual([])
  const [first] = foods
  if (!first) throw new Error('a food was expected')
  return first
}

describe('A packet label', () => {
  const skyr = only(`skyr, plain:
  label: { per: 150 g, energy: 98 kcal, protein: 16 g, carbohydrate: 6 g, sugars: 6 g, fat: 0.3 g, salt: 0.13 g, rules: eu, read: 2026-10-03 }
  sold: { weight: 450 g, price: 2.89, aisle: dairy }
  contains: [milk]
  may contain: [almond]
  made from: [dairy]
  measures: { tablespoon: 17 g, pots: 150 g }
  also: [plain skyr, skyr]
`)

  test('becomes a food per 100 g with the figures of its packet', () => {
    expect(skyr.per100g.energy.value).toBeCloseTo(98 / 1.5, 9)
    expect(standardUncertainty(skyr.per100g.energy)).toBeCloseTo(1 / 1.5 / Math.sqrt(12), 9)
    expect(skyr.per100g.availableCarbohydrate.value).toBeCloseTo(4, 9)
    expect(skyr.per100g.iron.missing).toEqual(new Set(['skyr, plain']))
  })

  test('keeps the panel as printed', () => {
    expect(skyr.label).toMatchObject({
      perGrams: 150,
      perText: '150 g',
      rules: 'eu',
      readOn: {day: '2026-10-03'},
      state: 'as sold',
    })
    expect(skyr.label?.printed.get('salt')).toMatchObject({value: 0.13, text: '0.13 g'})
    expect(skyr.label?.printed.get('energy')?.place.start).toMatchObject({line: 2, column: 32})
  })

  test('has names, aisle, pack, allergens and measures', () => {
    expect(skyr).toMatchObject({
      id: 'own/skyr, plain',
      name: 'skyr, plain',
      also: ['plain skyr', 'skyr'],
      aisle: 'dairy',
      from: ['dairy'],
      sold: {grams: 450, price: 2.89},
      contains: new Set(['milk']),
      mayContain: new Set(['almond']),
      allergensKnown: true,
      measures: new Map([
        ['tbsp', 17],
        ['pot', 150],
      ]),
    })
    expect(skyr.provenance).toMatchObject({kind: 'label', file: 'foods.yaml'})
  })
})

test('The household measure beside the serving says what one of it weighs', () => {
  const spread = only('nut spread: { label: { per: 32 g (2 tbsp), energy: 190 kcal } }')
  expect(spread.measures).toEqual(new Map([['tbsp', 16]]))
})

test('A label that does not say its rules follows the cookbook', () => {
  expect(only('bar: { label: { per: 28 g, energy: 80 kcal } }').label?.rules).toBe('us')
})

test('A label without `contains` says nothing of allergens; an empty list says there are none', () => {
  const label = 'label: { per: 100 g, energy: 80 kcal }'
  expect(only(`syrup: { ${label} }`).allergensKnown).toBe(false)
  expect(only(`syrup: { ${label}, contains: [] }`).allergensKnown).toBe(true)
})

test('Polyols may be one figure or told by kind', () => {
  const one = only('bar: { label: { per: 50 g, polyols: 12 g } }')
  expect(one.per100g.polyols.value).toBe(24)
  const kinds = only('bar: { label: { per: 50 g, polyols: { erythritol: 8 g, maltitol: 4 g } } }')
  expect(kinds.per100g.polyols.value).toBe(24)
  expect([...(kinds.label?.printedPolyols.keys() ?? [])]).toEqual(['erythritol', 'maltitol'])
})

test('Waste is a percentage of the purchase', () => {
  const text = 'sprouts: { label: { per: 100 g, energy: 43 kcal }, refuse: 12 % }'
  expect(only(text).refuseRatio).toBeCloseTo(0.12, 12)
})

describe('Another name for a food of a table', () => {
  test('has the same figures, on the same sources', () => {
    const own = only('plain flour: { same as: usda/20081, sold: { weight: 1 kg, price: 0.95 } }')
    expect(own).toMatchObject({id: 'usda/20081', name: 'plain flour', sold: {grams: 1000}})
    expect(own.per100g).toBe(flour.per100g)
    expect(own.aisle).toBe('baking')
  })

  test('adds to what the table says, and takes nothing away', () => {
    const own = only(
      'plain flour: { same as: white wheat flour, contains: [lupin], measures: { scoop: 30 g } }',
    )
    expect(own.contains).toEqual(new Set(['wheat', 'lupin']))
    expect(own.measures).toEqual(
      new Map([
        ['cup', 125],
        ['scoop', 30],
      ]),
    )
    expect(own.also).toEqual([])
  })
})

describe('What is wrong is told at its place, in a writer’s words', () => {
  test.each([
    [
      'oats: { sold: { weight: 1 kg } }',
      '1:1 key-present `oats` has neither `label` nor `same as`: where do its figures come from?',
    ],
    [
      'oats: { same as: usda/1, label: { per: 30 g, fat: 2 g } }',
      '1:18 readable-value `oats` has a `label` and is `same as` another food, expected one of them',
    ],
    [
      'oats: { same as: wholemeal flower }',
      '1:18 readable-value `same as` of `oats` is `wholemeal flower`, expected `wholemeal flour`',
    ],
    [
      'oats: { same as: usda/99999 }',
      '1:18 readable-value `same as` of `oats` is `usda/99999`, expected a name or id of a food in the tables, such as `usda/20081`',
    ],
    [
      'oats: { label: { energy: 80 kcal } }',
      '1:18 key-present `per` in `label` is missing: what weight are the figures for?',
    ],
    [
      'oats: { label: { per: 100 g } }',
      '1:23 key-present `label` in `oats` has no figures, expected those of the packet',
    ],
    [
      'oats: { label: { per: 1 cup, fat: 2 g } }',
      '1:23 readable-value `per` in `label` is `1 cup`, expected a weight such as `150 g`',
    ],
    [
      'oats: { label: { per: 30 g, protien: 2 g } }',
      '1:29 known-key Unknown key `protien` in `label`, expected `protein`',
    ],
    [
      'oats: { label: { per: 30 g, energy: 335 kJ } }',
      '1:37 readable-value `energy` in `label` is `335 kJ`, expected `kcal`, with `energy kJ: 335 kJ` beside it or instead',
    ],
    [
      'oats: { label: { per: 30 g, fat: -2 g } }',
      '1:34 readable-value `fat` in `label` is `-2 g`, expected a number without a sign',
    ],
    [
      'oats: { label: { per: 30 g, fat: 2 g, rules: uk } }',
      '1:46 readable-value `rules` in `label` is `uk`, expected one of `us`, `eu`',
    ],
    [
      'oats: { label: { per: 30 g, fat: 2 g, read: 2026-02-30 } }',
      '1:45 readable-value `read` in `label` is `2026-02-30`, expected a day that the month has',
    ],
    [
      'oats: { same as: usda/20081, refuse: 100 % }',
      '1:38 readable-value `refuse` in `oats` is `100 %`, expected less than `100 %`',
    ],
    [
      'oats: { same as: usda/20081, sold: { price: 2 } }',
      '1:45 key-present `weight` in `sold` is missing: how much is in the pack the price is for?',
    ],
  ])('%s', (text, message) => {
    expect(read(text).told).toEqual([message])
  })

  test('an allergen that is none of the list', () => {
    const {told} = read('oats: { same as: usda/20081, contains: [gluten] }')
    expect(told).toHaveLength(1)
    expect(told[0]).toMatch(/^1:41 readable-value .*`gluten`, expected one of `wheat`, `rye`/)
  })

  test('a name that means two foods: the first keeps it', () => {
    const {foods, told} = read(
      'Skyr: { same as: usda/20081 }\nquark:\n  same as: usda/20081\n  also: [sKYR ]\n',
    )
    expect(told).toEqual([
      '4:10 no-duplicate-key Name `sKYR` is taken by `Skyr`, expected one food a name',
    ])
    expect(foods.map(({name}) => name)).toEqual(['Skyr'])
  })

  test('one bad food leaves the others alone', () => {
    const {foods, told} = read('oats: {}\nplain flour: { same as: usda/20081 }\n')
    expect(told).toHaveLength(1)
    expect(foods.map(({name}) => name)).toEqual(['plain flour'])
  })

  test('unreadable YAML gives no foods', () => {
    const {foods, told} = read('oats: { label: \n')
    expect(foods).toEqual([])
    expect(told.length).toBeGreaterThan(0)
  })
})

test('An empty foods.yaml has no foods and no problems', () => {
  expect(read('')).toEqual({foods: [], refused: [], told: []})
  expect(read('# later\n')).toEqual({foods: [], refused: [], told: []})
})
