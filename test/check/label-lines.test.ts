/** What a doubted packet is told, and where panels of the two laws differ. */

import {expect, test} from 'vitest'
import {labelSanity} from '../../src/check/rules/label-sanity.ts'
import {findingsInFoods} from './foods-text.ts'

test('the note of a doubted energy works out every method, and says what would explain it', () => {
  const [finding, ...more] = findingsInFoods(
    'curd: { label: { per: 100 g, energy: 98 kcal, protein: 11 g, fat: 0 g, carbohydrate: 4 g, fibre: 0 g, rules: us } }',
  )
  expect(more).toEqual([])
  expect(finding?.ruleId).toBe(labelSanity.id)
  expect(finding?.expected).toEqual(['60 kcal'])
  const lines = finding?.note?.split('\n') ?? []
  // 4 × 11 + 4 × 4 = 60 by the general factors of 21 CFR 101.9(c)(1)(i)(B).
  expect(lines[0]).toMatch(/general factors.*: 60 kcal\.$/u)
  expect(lines.at(-1)).toBe(
    'The stated energy is higher: 5.4 g of alcohol (7 kcal/g) would explain it.',
  )
})

test('fibre and salt weigh beside the carbohydrate on an EU panel, and are in it on a US one', () => {
  const panel = (rules: string) =>
    `bran: { label: { per: 100 g, protein: 20 g, fat: 20 g, carbohydrate: 50 g, fibre: 15 g, salt: 1 g, rules: ${rules} } }`
  expect(findingsInFoods(panel('eu')).map(({reason}) => reason)).toEqual([
    expect.stringMatching(/^Parts of `bran` add up to `10\d\.\d g`, expected `100 g` or less/u),
  ])
  expect(findingsInFoods(panel('us'))).toEqual([])
})

test('a weight of the parts that is just that of the serving passes', () => {
  // At least 33 + 33 + 33 g within their rounding.
  const panel = (carbohydrate: number) =>
    `block: { label: { per: 100 g, protein: 34 g, fat: 33 g, carbohydrate: ${carbohydrate} g, rules: us } }`
  expect(findingsInFoods(panel(34))).toEqual([])
  expect(findingsInFoods(panel(36))).toHaveLength(1)
})
