import {expect, test} from 'vitest'
import {formatWrittenGrams} from '../../src/units/format-weight.ts'

test.each([
  [{value: 150, halfRange: 0, increment: 1}, '150 g'],
  [{value: 13.5, halfRange: 0, increment: 0.1}, '13.5 g'],
  [{value: 2.25, halfRange: 0, increment: 0.01}, '2.25 g'],
  // 1½ lb: half a pound is the last digit written, and 1 lb is 453.59237 g exactly.
  [{value: 680.388555, halfRange: 0, increment: 226.796185}, '680 g'],
  [{value: 11, halfRange: 1, increment: 1}, '10–12 g'],
  [{value: 1500, halfRange: 0, increment: 100}, '1500 g'],
])('a weight keeps the digits it was written with: %o is %s', (grams, text) => {
  expect(formatWrittenGrams(grams)).toBe(text)
})
