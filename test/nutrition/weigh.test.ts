import {describe, expect, test} from 'vitest'
import {weighed} from '../../src/nutrition/weigh.ts'
import {standardUncertainty} from '../../src/units/uncertain.ts'
import {grams} from '../kitchen.ts'

const reading = {kind: 'weighing', subject: 'a reading'} as const

/** Full width of the rectangle that a reading may lie in, g: GUM 4.3.7, width/√12. */
function widthGrams(value: number, increment: number, scaleGrams: number): number {
  return Math.sqrt(12) * standardUncertainty(weighed(grams(value, increment), scaleGrams, reading))
}

describe('a weight', () => {
  test.each([
    ['500 g on a 1 g scale', 500, 1, 1, 1],
    ['500 g on a 5 g scale', 500, 1, 5, 5],
    ['500 g on a 0.1 g scale', 500, 1, 0.1, 0.1],
    ['0.3 g on a 0.1 g scale, which in doubles is no multiple', 0.3, 0.1, 0.1, 0.1],
  ])('%s may be anywhere within its step', (_, value, increment, scale, width) => {
    expect(widthGrams(value, increment, scale)).toBeCloseTo(width, 9)
  })

  test.each([
    ['13.5 g beside a 1 g scale', 13.5, 0.1, 1, 0.1],
    ['503 g beside a 5 g scale', 503, 1, 5, 1],
    ['8 oz beside a 5 g scale', 226.796, 28.35, 5, 5],
  ])('%s was read on a finer one, to the digit written', (_, value, increment, scale, width) => {
    expect(widthGrams(value, increment, scale)).toBeCloseTo(width, 9)
  })
})
