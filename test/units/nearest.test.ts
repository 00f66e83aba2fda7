import {expect, test} from 'vitest'
import {nearest, slips} from '../../src/units/nearest.ts'

// Damerau (1964), A technique for computer detection and correction of spelling errors: a wrong
// letter, a missing one, an extra one, or two neighbours swapped are one error each.
test.each([
  ['serves', 'serves', 0],
  ['servas', 'serves', 1],
  ['serve', 'serves', 1],
  ['serrves', 'serves', 1],
  ['srevs', 'serves', 2],
  ['sevres', 'serves', 1],
  ['', 'abc', 3],
])('%s and %s are %d slips apart', (left, right, count) => {
  expect(slips(left, right, 9)).toBe(count)
  expect(slips(right, left, 9)).toBe(count)
})

test('Counting stops at the limit', () => {
  expect(slips('kitten', 'sitting', 2)).toBe(2)
})

test('The nearest word is offered, a far one is not', () => {
  expect(nearest('Ingredents', ['instead', 'ingredients', 'image'])).toBe('ingredients')
  expect(nearest('gr', ['kg', 'g', 'mg'])).toBe('g')
  expect(nearest('colour', ['serves', 'title'])).toBeUndefined()
  expect(nearest('t', ['l', 'g'])).toBeUndefined()
})
