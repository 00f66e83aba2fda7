/**
 * Limits: 21 CFR 101.54, .56 and .60–.62 with FDA, A Food Labeling Guide, Appendix A (2009), seen in
 * part and in reproductions; Daily Values: 21 CFR 101.9(c), rule of 2016.
 */
import {describe, expect, test} from 'vitest'
import {dishKind} from '../../../src/check/claims/dish-kind.ts'
import type {Aisle} from '../../../src/food/food.ts'
import type {Nutrient} from '../../../src/food/nutrients.ts'
import {computeCookbook} from '../../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, grams, line, recipe} from '../../kitchen.ts'
import {outcomeOf} from './kitchen-dish.ts'

const us = {rules: 'us'} as const

// claim, nutrient, limit per serving, side; a serving of 100 g, so per serving and per 100 g agree.
const limits: readonly (readonly [string, Nutrient, number, 'most' | 'least'])[] = [
  ['low calorie', 'energy', 40, 'most'],
  ['calorie-free', 'energy', 5, 'most'],
  ['low fat', 'fat', 3, 'most'],
  ['fat-free', 'fat', 0.5, 'most'],
  ['low sodium', 'sodium', 140, 'most'],
  ['very low sodium', 'sodium', 35, 'most'],
  ['sodium-free', 'sodium', 5, 'most'],
  ['sugar-free', 'sugars', 0.5, 'most'],
  // 10 and 20 % of 28 g, 1,300 mg, 18 mg, 4,700 mg and 20 µg.
  ['good source of fibre', 'fibre', 2.8, 'least'],
  ['high fibre', 'fibre', 5.6, 'least'],
  ['good source of calcium', 'calcium', 130, 'least'],
  ['high calcium', 'calcium', 260, 'least'],
  ['good source of iron', 'iron', 1.8, 'least'],
  ['high iron', 'iron', 3.6, 'least'],
  ['good source of potassium', 'potassium', 470, 'least'],
  ['high potassium', 'potassium', 940, 'least'],
  ['good source of vitamin D', 'vitaminD', 2, 'least'],
  ['high vitamin D', 'vitaminD', 4, 'least'],
]

test.each(limits)('%s: just inside %s %s, and just past it', (claim, nutrient, limit, side) => {
  const [inside, past] =
    side === 'most' ? [limit * 0.999, limit * 1.001] : [limit * 1.001, limit * 0.999]
  expect(outcomeOf(claim, {[nutrient]: inside}, us)).toBe('holds')
  expect(outcomeOf(claim, {[nutrient]: past}, us)).toBe('fails')
  expect(outcomeOf(claim, {}, us)).toBe('unknown')
})

test('free is less than, low is no more than', () => {
  expect(outcomeOf('fat-free', {fat: 0.5}, {...us, step: 0})).toBe('fails')
  expect(outcomeOf('low fat', {fat: 3}, {...us, step: 0})).toBe('holds')
})

describe('a small serving is held to 50 g as well', () => {
  // 2 g of fat in 30 g are 3.3 g in 50 g; in 31 g nobody asks.
  test.each([
    [30, 'fails'],
    [31, 'holds'],
  ])('a serving of %s g: %s', (portionGrams, outcome) => {
    expect(outcomeOf('low fat', {fat: 6.4}, {...us, portionGrams})).toBe(outcome)
  })
})

describe('what goes with it', () => {
  test('saturated fat: a share of the energy', () => {
    // 0.9 g × 9 kcal/g = 8.1 kcal is 15 % of 54 kcal.
    expect(outcomeOf('low saturated fat', {saturated: 0.9, energy: 55}, us)).toBe('holds')
    expect(outcomeOf('low saturated fat', {saturated: 0.9, energy: 53}, us)).toBe('fails')
  })

  test('cholesterol: no more than 2 g of saturated fat', () => {
    expect(outcomeOf('low cholesterol', {cholesterol: 19, saturated: 1.9}, us)).toBe('holds')
    expect(outcomeOf('low cholesterol', {cholesterol: 19, saturated: 2.1}, us)).toBe('fails')
    expect(outcomeOf('low cholesterol', {cholesterol: 19}, us)).toBe('unknown')
  })

  test('saturated-fat-free: trans fat too', () => {
    expect(outcomeOf('saturated-fat-free', {saturated: 0.4, trans: 0.4}, us)).toBe('holds')
    expect(outcomeOf('saturated-fat-free', {saturated: 0.4, trans: 0.6}, us)).toBe('fails')
    expect(outcomeOf('saturated-fat-free', {saturated: 0.4}, us)).toBe('unknown')
  })

  test('lean: per serving and per 100 g', () => {
    const figures = {fat: 9, saturated: 4, cholesterol: 90}
    expect(outcomeOf('lean', figures, us)).toBe('holds')
    expect(outcomeOf('lean', figures, {...us, portionGrams: 150})).toBe('fails')
    expect(outcomeOf('extra lean', figures, us)).toBe('fails')
  })
})

describe('protein counts by its quality', () => {
  // FAO/WHO 1991 (FAO Food and Nutrition Paper 51), from memory: milk near 1, whole wheat 0.4.
  test.each([
    ['dairy', 11.2, 'holds'],
    ['dairy', 11, 'fails'],
    ['plant', 25.1, 'holds'],
    ['plant', 24.9, 'fails'],
    ['gelatine', 80, 'fails'],
  ] as const)('high protein with %s and %s g: %s', (origin, protein, outcome) => {
    const more = {from: [origin]}
    expect(outcomeOf('high protein', {protein}, {...us, more})).toBe(outcome)
  })
})

describe('main dishes and meals', () => {
  function kindOf(weights: readonly (readonly [Aisle, number])[]): string | undefined {
    const foods = weights.map(([aisle]) => food(aisle, {}, {aisle}))
    const total = weights.reduce((sum, [, weight]) => sum + weight, 0)
    const one = recipe(
      'dish',
      weights.map(([aisle, weight]) => line(aisle, weight)),
      {serves: at(1), batch: at(grams(total))},
    )
    const computed = computeCookbook(cookbook(foods, [one])).computed.get('dish')
    return computed && dishKind(computed)
  }

  // 21 CFR 101.13(l)–(m), from memory: 6 oz are 170.1 g, 10 oz 283.5 g; groups of 40 g.
  test.each<[string, readonly (readonly [Aisle, number])[]]>([
    ['food', [['grains', 170]]],
    ['food', [['grains', 300]]],
    [
      'food',
      [
        ['grains', 131],
        ['vegetables', 39],
      ],
    ],
    [
      'food',
      [
        ['grains', 129],
        ['vegetables', 41],
      ],
    ],
    [
      'main dish',
      [
        ['grains', 130],
        ['vegetables', 41],
      ],
    ],
    [
      'main dish',
      [
        ['grains', 130],
        ['vegetables', 41],
        ['drinks', 110],
      ],
    ],
    [
      'meal',
      [
        ['grains', 130],
        ['vegetables', 41],
        ['drinks', 113],
      ],
    ],
    [
      'main dish',
      [
        ['grains', 41],
        ['vegetables', 41],
        ['drinks', 210],
      ],
    ],
  ])('%s: %j', (kind, weights) => {
    expect(kindOf(weights)).toBe(kind)
  })
})
