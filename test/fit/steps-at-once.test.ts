import {describe, expect, test} from 'vitest'
import {stepsAtOnce} from '../../src/fit/steps-at-once.ts'

describe('steps at once', () => {
  test.each([
    [4, [], 1],
    [4, [8], 1],
    [4, [6, 8], 2],
    [6, [4, 8], 3],
    [5, [6], 5],
    [12, [8, 18], 6],
  ])('for %d and %j', (serves, others, expected) => {
    expect(stepsAtOnce(serves, others)).toBe(expected)
  })

  test('are the fewest that are whole for every number, tried out one by one', () => {
    for (let serves = 1; serves <= 12; serves++) {
      for (let other = 1; other <= 12; other++) {
        const tried = Array.from({length: serves}, (_, index) => index + 1)
        const fewest = tried.find((steps) => (steps * other) % serves === 0)
        expect(stepsAtOnce(serves, [other]), `${serves} and ${other}`).toBe(fewest)
      }
    }
  })
})
