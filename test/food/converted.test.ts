import {expect, test} from 'vitest'
import {convertedWidth} from '../../src/food/rounding/converted.ts'

// Rounding of US labels: 21 CFR 101.9(c), as tabulated in FDA, A Food Labeling Guide, Appendix H (Oct
// 2009). Widths worked out by hand.

test.each<[string, Parameters<typeof convertedWidth>, number]>([
  // 110 kcal in 30 g is 105 to 115 kcal; 367 is 110 × 100 ÷ 30, rounded.
  ['energy to 10 kcal', ['energy', {value: 367, increment: 1}, 30], 1000 / 30],
  // 45 kcal in 15 g: up to 50 kcal in steps of 5.
  ['energy to 5 kcal', ['energy', {value: 300, increment: 1}, 15], 500 / 15],
  // 1 g of fat in 14 g: below 5 g in steps of 0.5.
  ['fat to half a gram', ['fat', {value: 7.14, increment: 0.01}, 14], 50 / 14],
  ['fat to a gram', ['fat', {value: 50, increment: 0.1}, 32], 100 / 32],
  ['sodium to 5 mg', ['sodium', {value: 344, increment: 1}, 32], 500 / 32],
  // 140 mg parts steps of 5 from steps of 10: 137.5 to 145 mg.
  ['sodium where the steps change', ['sodium', {value: 438, increment: 1}, 32], 750 / 32],
  // 0 g of sugars is below 0.5 g in a serving of 25 g: up to 2 g in 100 g.
  ['a printed nothing', ['sugars', {value: 0, increment: 1}, 25], 2],
  // The larger the serving, the better a label is known.
  ['a large serving', ['protein', {value: 3.5, increment: 0.1}, 400], 0.25],
])('%s', (_, given, width) => {
  expect(convertedWidth(...given)).toBeCloseTo(width, 9)
})

test('a figure is never known better than to its own last digit', () => {
  expect(convertedWidth('protein', {value: 3, increment: 1}, 400)).toBe(1)
})

test('what no US label has is as wide as its last digit', () => {
  expect(convertedWidth('water', {value: 80.1, increment: 0.1}, 30)).toBe(0.1)
})

test('an amount that the law would not print is as wide as its steps there', () => {
  // 2.3 g of fat in a serving: declared for another serving, but by the same steps of 0.5 g.
  expect(convertedWidth('fat', {value: 2.3, increment: 0.1}, 100)).toBeCloseTo(0.5, 9)
  // 0.72 mg of iron is 4 % of 18 mg: a percentage, in steps of 2 % up to 10 %, which is 0.36 mg.
  expect(convertedWidth('iron', {value: 2.4, increment: 0.01}, 30)).toBeCloseTo(36 / 30, 9)
  // 1.98 mg is 11 %: between 10 and 50 % the steps are 5 %, which is 0.9 mg.
  expect(convertedWidth('iron', {value: 6.599, increment: 0.001}, 30)).toBeCloseTo(90 / 30, 9)
})
