import fc from 'fast-check'
import {expect, test} from 'vitest'
import {percentages} from '../../src/report/percentages.ts'

test('three equal shares are 34, 33 and 33, not three times 33', () => {
  expect(percentages([1, 1, 1])).toEqual([34, 33, 33])
})

test('shares always add up to 100, each within 1 of its own', () => {
  const share = fc.double({min: 0, max: 1e6, noNaN: true})
  fc.assert(
    fc.property(fc.array(share, {minLength: 1, maxLength: 40}), (shares) => {
      const total = shares.reduce((sum, one) => sum + one, 0)
      fc.pre(total > 1e-6)
      const whole = percentages(shares)
      expect(whole.reduce((sum, one) => sum + one, 0)).toBe(100)
      for (const [index, percent] of whole.entries()) {
        expect(Math.abs(percent - (100 * (shares[index] ?? 0)) / total)).toBeLessThan(1 + 1e-6)
      }
    }),
  )
})
