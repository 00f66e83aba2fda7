import {expect, test} from 'vitest'
import {
  comparisonExamples,
  parseComparison,
} from '../../../src/check/comparison/parse-comparison.ts'

test.each([
  ['40 % less', 'most', 0.6],
  ['40% less', 'most', 0.6],
  ['at least 40 % less', 'most', 0.6],
  ['more than 25 % fewer calories', 'most', 0.75],
  ['12.5 % lower', 'most', 0.875],
  ['a third less', 'most', 2 / 3],
  ['100 % less', 'most', 0],
  ['half', 'most', 0.5],
  ['Half the energy', 'most', 0.5],
  ['half as much', 'most', 0.5],
  ['half as many calories', 'most', 0.5],
  ['a third of the energy', 'most', 1 / 3],
  ['1/3 of the energy', 'most', 1 / 3],
  ['⅓ the energy', 'most', 1 / 3],
  ['two thirds of the kcal', 'most', 2 / 3],
  ['60 % of the energy', 'most', 0.6],
  ['20 % more', 'least', 1.2],
  ['120 % more', 'least', 2.2],
  ['half more', 'least', 1.5],
  ['twice', 'least', 2],
  ['at least twice the energy', 'least', 2],
  ['three times as much energy', 'least', 3],
  ['2.5 times', 'least', 2.5],
  ['0.4 of the energy', 'most', 0.4],
  ['100 % of the energy', 'least', 1],
  ['at least 100 % of the energy', 'least', 1],
] as const)('%s', (words, bound, ratio) => {
  const read = parseComparison(words, 'energy')
  expect(read?.bound).toBe(bound)
  expect(read?.ratio).toBeCloseTo(ratio, 12)
})

test.each([
  'less',
  'lighter',
  'about 40 % less',
  'up to 40 % less',
  '30-40 % less',
  '120 % less',
  'three times less',
  'three times more',
  '2 times more',
  'twice more',
  '5 and 10 % less',
  '3',
  '1',
  'at least half',
  'half the fat',
  '40 % less fat',
  '40 less',
  '40 kcal less',
  '0 % less',
  '',
])('%s says nothing that could be checked about energy', (words) => {
  expect(parseComparison(words, 'energy')).toBeUndefined()
})

test.each(comparisonExamples)('%s can be read, as messages promise', (words) => {
  expect(parseComparison(words, 'energy')).toBeDefined()
})
