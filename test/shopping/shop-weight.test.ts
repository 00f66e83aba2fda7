import fc from 'fast-check'
import {expect, test} from 'vitest'
import {shopGrams, shopWeightText} from '../../src/shopping/shop-weight.ts'

test.each([
  [3.2, 4],
  [41, 45],
  [321, 330],
  [320.0000000001, 320],
  [1201, 1250],
  [1200, 1200],
  [0, 0],
])('%d g are bought as %d g', (grams, bought) => {
  expect(shopGrams(grams)).toBe(bought)
})

test('there is always enough, and never a fifth too much above a handful', () => {
  fc.assert(
    fc.property(fc.double({min: 25, max: 50_000, noNaN: true}), (grams) => {
      const bought = shopGrams(grams)
      return bought >= grams * (1 - 1e-6) && bought <= grams * 1.2
    }),
  )
})

test.each([
  [45, '45 g'],
  [999, '999 g'],
  [1000, '1 kg'],
  [1450, '1.45 kg'],
  [1200, '1.2 kg'],
])('%d g reads %s', (grams, text) => {
  expect(shopWeightText(grams)).toBe(text)
})
