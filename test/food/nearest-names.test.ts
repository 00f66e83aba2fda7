import {describe, expect, test} from 'vitest'
import {nearestNames} from '../../src/food/nearest-names.ts'

const names = [
  'plain flour',
  'wholemeal flour',
  'self-raising flour',
  'rice flour',
  'courgette',
  'zucchini',
  'sour cream',
  'cream cheese',
  'crème fraîche',
  'chicken thigh, skinless',
  'chicken breast, skinless',
  'pearl barley',
  'parsley',
]

describe('The nearest name comes first', () => {
  test.each([
    ['flour, plain', 'plain flour'],
    ['plane flour', 'plain flour'],
    ['zuchini', 'zucchini'],
    ['corgette', 'courgette'],
    ['sourcream', 'sour cream'],
    ['creme fraiche', 'crème fraîche'],
    ['Skinless Chicken Thigh', 'chicken thigh, skinless'],
    ['chicken thighs', 'chicken thigh, skinless'],
    ['barley', 'pearl barley'],
    ['parsely', 'parsley'],
  ])('%s: %s', (written, meant) => {
    expect(nearestNames(written, names, 3)[0]).toBe(meant)
  })
})

test('Nothing is offered for a word that is like no other', () => {
  expect(nearestNames('saffron', names, 3)).toEqual([])
  expect(nearestNames('', names, 3)).toEqual([])
  expect(nearestNames('???', names, 3)).toEqual([])
  expect(nearestNames('plain flour '.repeat(1000), names, 3)).toEqual([])
})

test('Accents do not count', () => {
  expect(nearestNames('puree', ['pures', 'purée'], 1)).toEqual(['purée'])
})

test('The list is no longer than asked for', () => {
  expect(nearestNames('flour', names, 2)).toHaveLength(2)
})

test('The order does not depend on the order of the names', () => {
  const forwards = nearestNames('chicken', names, 5)
  expect(nearestNames('chicken', names.toReversed(), 5)).toEqual(forwards)
})
