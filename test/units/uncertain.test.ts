import {describe, expect, test} from 'vitest'
import {
  exact,
  expandedUncertainty,
  product,
  quotient,
  rectangular,
  type Source,
  scaled,
  standardUncertainty,
  sum,
} from '../../src/units/uncertain.ts'

const scale: Source = {kind: 'weighing', subject: 'one weighing'}
const label: Source = {kind: 'label', subject: 'one label'}

describe('rectangular', () => {
  test('a reading to the gram has a standard uncertainty of 1/√12 g (GUM F.2.2.1)', () => {
    // JCGM 100:2008, F.2.2.1: resolution δx gives u = 0.29 δx.
    expect(standardUncertainty(rectangular(150, 1, scale))).toBeCloseTo(0.2887, 4)
  })

  test('a width of nothing is an exact value', () => {
    expect(rectangular(150, 0, scale).parts.size).toBe(0)
  })
})

describe('propagation', () => {
  test('independent sources add as squares', () => {
    const total = sum([rectangular(10, 6, scale), rectangular(20, 8, label)])
    expect(total.value).toBe(30)
    // √((6/√12)² + (8/√12)²) = 10/√12
    expect(standardUncertainty(total)).toBeCloseTo(10 / Math.sqrt(12), 12)
  })

  test('the same source met twice adds up before squaring', () => {
    const once = rectangular(10, 1, label)
    expect(standardUncertainty(sum([once, once]))).toBeCloseTo(2 / Math.sqrt(12), 12)
    expect(standardUncertainty(sum([once, scaled(once, -1)]))).toBe(0)
  })

  test('a product of two readings adds relative variances', () => {
    const area = product(rectangular(200, 1, scale), rectangular(50, 1, label))
    const expected = 10_000 * Math.hypot(1 / Math.sqrt(12) / 200, 1 / Math.sqrt(12) / 50)
    expect(area.value).toBe(10_000)
    expect(standardUncertainty(area)).toBeCloseTo(expected, 9)
  })

  test('a reading divided by itself is exactly one', () => {
    const weight = rectangular(430, 1, scale)
    const one = quotient(weight, weight)
    expect(one.value).toBe(1)
    expect(standardUncertainty(one)).toBeCloseTo(0, 15)
  })

  test('the ± is twice the standard uncertainty', () => {
    expect(expandedUncertainty(rectangular(10, Math.sqrt(12), scale))).toBeCloseTo(2, 12)
    expect(expandedUncertainty(exact(10))).toBe(0)
  })
})
