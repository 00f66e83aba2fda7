import {describe, expect, test} from 'vitest'
import {parseTarget} from '../../src/fit/target.ts'

describe('a target', () => {
  test('is a figure of a serving and a bound, in any unit of it', () => {
    expect(parseTarget('energy <= 500 kcal')).toMatchObject({
      ok: true,
      value: {sense: '<=', bound: 500, unit: 'kcal', terms: [{nutrient: 'energy', weight: 1}]},
    })
    // 1 kcal = 4.184 kJ.
    expect(parseTarget('energy ≤ 2092 kJ')).toMatchObject({value: {sense: '<=', bound: 500}})
    expect(parseTarget('Added sugars>=1000mg')).toMatchObject({
      value: {sense: '>=', bound: 1, terms: [{nutrient: 'addedSugars'}]},
    })
  })

  // EU 1924/2006, annex: "high protein" is 20 % of the energy, at 4 kcal/g by EU 1169/2011.
  test('may be a share of the energy', () => {
    expect(parseTarget('protein >= 20 % of energy')).toMatchObject({
      value: {
        bound: 0,
        terms: [
          {nutrient: 'protein', weight: 4},
          {nutrient: 'energy', weight: -0.2},
        ],
      },
    })
  })

  // EU 1924/2006, annex: "high fibre" is 3 g per 100 kcal.
  test('may be an amount per 100 kcal', () => {
    expect(parseTarget('fibre >= 3 g per 100 kcal')).toMatchObject({
      value: {
        bound: 0,
        unit: 'g',
        terms: [
          {nutrient: 'fibre', weight: 1},
          {nutrient: 'energy', weight: -0.03},
        ],
      },
    })
  })

  test.each([
    ['energy 500 kcal', /energy <= 500 kcal/u],
    ['protien >= 40 g', /`protein`/u],
    ['protein >= 40', /unit/u],
    ['protein >= 40 kcal', /`g`/u],
    ['fibre >= 5 % of energy', /`protein`, `fat`/u],
  ])('that is none says what would be one: %s', (text, expected) => {
    const read = parseTarget(text)
    expect(read.ok ? '' : read.expected).toMatch(expected)
  })
})
