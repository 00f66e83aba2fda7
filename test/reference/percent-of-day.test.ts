import {describe, expect, test} from 'vitest'
import {percentOfDay} from '../../src/food/rounding/percent-of-day.ts'

// FDA, sample label of the 2016 rule on the agency's "Nutrition Facts label" page, figures from memory; the Daily Values
// are those of 21 CFR 101.9(c)(8)(iv) and (c)(9).
test.each([
  ['fat', 8, 10],
  ['saturated', 1, 5],
  ['cholesterol', 0, 0],
  ['sodium', 160, 7],
  ['carbohydrate', 37, 13],
  ['fibre', 4, 14],
  ['addedSugars', 10, 20],
  ['vitaminD', 2, 10],
  ['calcium', 260, 20],
  ['iron', 8, 45],
  ['potassium', 240, 6],
] as const)('the sample label has %s %d as %d %% of the day', (nutrient, amount, percent) => {
  expect(percentOfDay('us', nutrient, amount)).toBe(percent)
})

// 21 CFR 101.9(c)(8)(iii), as secondary texts have it: nearest 2 % to 10 %, 5 % to 50 %, 10 % above.
test.each([
  [25, 0],
  [26, 2],
  [130, 10],
  [150, 10],
  [170, 15],
  [650, 50],
  [700, 50],
  [720, 60],
] as const)('%d mg of calcium are %d %% in steps', (milligrams, percent) => {
  expect(percentOfDay('us', 'calcium', milligrams)).toBe(percent)
})

describe('where there is no percentage', () => {
  test.each([
    ['us', 'trans'],
    ['us', 'sugars'],
    ['us', 'energy'],
    ['us', 'protein'],
    ['eu', 'fibre'],
    ['eu', 'polyols'],
  ] as const)('%s %s', (rules, nutrient) => {
    expect(percentOfDay(rules, nutrient, 10)).toBeUndefined()
  })
})

// Regulation (EU) 1169/2011 Annex XIII part B: 2,000 kcal, salt 6 g, sugars 90 g.
test.each([
  ['energy', 500, 25],
  ['salt', 1.5, 25],
  ['sugars', 22, 24],
] as const)('EU %s %d is %d %% of the reference intake', (nutrient, amount, percent) => {
  expect(percentOfDay('eu', nutrient, amount)).toBe(percent)
})
