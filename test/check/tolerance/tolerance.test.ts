/** What each policy allows, at and around the borders of its bands. */

import {describe, expect, test} from 'vitest'
import {allowance} from '../../../src/check/tolerance/tolerance.ts'
import type {Settings, ToleranceName} from '../../../src/cookbook/cookbook.ts'
import type {PublishedNutrient} from '../../../src/food/nutrients.ts'
import {settings} from '../../kitchen.ts'

function allowed(
  tolerance: ToleranceName,
  nutrient: PublishedNutrient,
  value: number,
  {stated = value, grams = 100, tolerances = settings.tolerances} = {},
): readonly [below: number, above: number] {
  const policy: Pick<Settings, 'tolerance' | 'tolerances'> = {tolerance, tolerances}
  const {below, above} = allowance({nutrient, value, stated, grams}, policy)
  return [below, above]
}

describe('household', () => {
  // Steps of a US label, 21 CFR 101.9(c)(1)–(8) as in force 2026: half of one is allowed. From memory
  // for the minerals; small values, so that 2 % of the figure is less.
  test.each([
    ['energy', 50, 2.5],
    ['energy', 51, 5],
    ['fat', 4.9, 0.25],
    ['fat', 5, 0.5],
    ['saturated', 4.9, 0.25],
    ['trans', 1, 0.25],
    ['cholesterol', 20, 2.5],
    ['sodium', 100, 2.5],
    ['sodium', 141, 5],
    ['salt', 0.2, 0.005],
    ['salt', 1, 0.05],
    ['potassium', 100, 5],
    ['calcium', 100, 5],
    ['iron', 1, 0.05],
    ['vitaminD', 1, 0.05],
    ['protein', 10, 0.5],
    ['carbohydrate', 10, 0.5],
    ['fibre', 10, 0.5],
    ['sugars', 10, 0.5],
  ] as const)('%s of %d: half a step of the label, %d', (nutrient, value, half) => {
    expect(allowed('household', nutrient, value)).toEqual([half, half])
  })

  test('2 % of the figure where that is more', () => {
    const [below, above] = allowed('household', 'sodium', 140)
    expect(below).toBeCloseTo(2.8, 9)
    expect(above).toBe(below)
    expect(allowed('household', 'energy', 500)).toEqual([10, 10])
    expect(allowed('household', 'protein', 40)).toEqual([0.8, 0.8])
  })
})

describe('us: 21 CFR 101.9(g)', () => {
  // A food may have at most 120 % of these: stated not below 100/120 of what was found.
  test.each([
    'energy',
    'sugars',
    'addedSugars',
    'fat',
    'saturated',
    'trans',
    'cholesterol',
    'sodium',
    'salt',
  ] as const)('%s may be stated too high, and not far too low', (nutrient) => {
    const [below, above] = allowed('us', nutrient, 120)
    expect(below).toBeCloseTo(20, 9)
    expect(above).toBe(Number.POSITIVE_INFINITY)
  })

  // At least 80 % of these: stated at most 100/80 of what was found.
  test.each([
    'protein',
    'carbohydrate',
    'fibre',
    'potassium',
    'calcium',
    'iron',
    'vitaminD',
  ] as const)('%s may be stated too low, and not far too high', (nutrient) => {
    const [below, above] = allowed('us', nutrient, 80)
    expect(below).toBe(Number.POSITIVE_INFINITY)
    expect(above).toBeCloseTo(20, 9)
  })

  test('both ways: the same shares on both sides, for every nutrient', () => {
    for (const nutrient of ['energy', 'protein'] as const) {
      const [below, above] = allowed('us both ways', nutrient, 240)
      expect(below).toBeCloseTo(40, 9)
      expect(above).toBeCloseTo(60, 9)
    }
  })
})

describe('eu: guidance on tolerances (European Commission, December 2012)', () => {
  // Bands per 100 g. The 20 % was seen in secondary texts, the gram bands are from memory.
  test.each([
    ['protein', 9.99, 2, 2],
    ['protein', 10, 2, 2],
    ['protein', 30, 6, 6],
    ['protein', 40, 8, 8],
    ['protein', 60, 8, 8],
    ['fat', 5, 1.5, 1.5],
    ['fat', 10, 2, 2],
    ['fat', 60, 8, 8],
    ['saturated', 3.9, 0.8, 0.8],
    ['saturated', 5, 1, 1],
    ['saturated', 50, 10, 10],
    ['trans', 1, 0.8, 0.8],
    ['salt', 1, 0.375, 0.375],
    ['salt', 2, 0.4, 0.4],
    ['sodium', 400, 150, 150],
    ['sodium', 800, 160, 160],
    ['energy', 100, 20, 20],
    ['cholesterol', 100, 20, 20],
    ['vitaminD', 100, 50, 35],
    ['potassium', 100, 45, 35],
    ['calcium', 100, 45, 35],
    ['iron', 10, 4.5, 3.5],
  ] as const)('%s stated as %d', (nutrient, stated, below, above) => {
    const found = allowed('eu', nutrient, 1, {stated})
    expect(found[0]).toBeCloseTo(below, 9)
    expect(found[1]).toBeCloseTo(above, 9)
  })

  test('a serving has the band of its 100 g, carried to its weight', () => {
    // 12 g in 400 g are 3 g per 100 g: ± 2 g, so ± 8 g for the serving.
    expect(allowed('eu', 'protein', 1, {stated: 12, grams: 400})).toEqual([8, 8])
  })
})

test('strict allows nothing', () => {
  expect(allowed('strict', 'energy', 500)).toEqual([0, 0])
})

test('a tolerance of the cookbook’s own comes before its policy, for its nutrient alone', () => {
  const tolerances: Settings['tolerances'] = new Map([
    ['energy', {kind: 'ratio', ratio: 0.1}],
    ['fat', {kind: 'amount', amount: 3}],
  ])
  expect(allowed('strict', 'energy', 500, {tolerances})).toEqual([50, 50])
  expect(allowed('strict', 'fat', 500, {tolerances})).toEqual([3, 3])
  expect(allowed('strict', 'protein', 500, {tolerances})).toEqual([0, 0])
})
