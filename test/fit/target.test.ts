import {describe, expect, test} from 'vitest'
import {parseTarget} from '../../src/fit/target.ts'

describe('a target', () => {
  test('is a figure of a serving and a bound, in any unit of it', () => {
    expect(parseTarget('energy <= 500 kcal')).toMatchObject({
      ok: true,
      value: {
        sense: '<=',
        bound: 500,
        unit: 'kcal',
        figure: {nutrient: 'energy', weight: 1},
        per: 'serving',
      },
    })
    // 1 kcal = 4.184 kJ.
    expect(parseTarget('energy ≤ 2092 kJ')).toMatchObject({value: {sense: '<=', bound: 500}})
    expect(parseTarget('Added sugars>=1000mg')).toMatchObject({
      value: {sense: '>=', bound: 1, figure: {nutrient: 'addedSugars'}},
    })
  })

  // EU 1924/2006, annex: "high protein" is 20 % of the energy, at 4 kcal/g by EU 1169/2011.
  test('may be a share of the energy', () => {
    expect(parseTarget('protein >= 20 % of energy')).toMatchObject({
      value: {
        bound: 20,
        unit: '%',
        figure: {nutrient: 'protein', weight: 400},
        per: {nutrient: 'energy', weight: 1},
      },
    })
  })

  // EU 1924/2006, annex: "high fibre" is 3 g per 100 kcal.
  test('may be an amount per 100 kcal', () => {
    expect(parseTarget('fibre >= 3 g per 100 kcal')).toMatchObject({
      value: {
        bound: 3,
        unit: 'g',
        figure: {nutrient: 'fibre', weight: 1},
        per: {nutrient: 'energy', weight: 0.01},
      },
    })
  })

  test('may be about 100 g of the finished dish', () => {
    expect(parseTarget('salt <= 0.3 g per 100 g')).toMatchObject({
      value: {bound: 0.3, unit: 'g', figure: {nutrient: 'salt', weight: 1}, per: '100 g'},
    })
    expect(parseTarget('salt <= 0.3 g per serving')).toMatchObject({value: {per: 'serving'}})
  })

  test.each(['1/4', '0.25', '1 : 4', '¼'])('may be a proportion: %s', (bound) => {
    expect(parseTarget(`protein / carbohydrate >= ${bound}`)).toMatchObject({
      value: {
        sense: '>=',
        bound: 0.25,
        unit: '',
        figure: {nutrient: 'protein', weight: 1},
        per: {nutrient: 'carbohydrate', weight: 1},
      },
    })
  })

  test('compares weights, whatever the units of the two', () => {
    // 100 mg of sodium by 200 mg of potassium; by 0.2 g of salt it is the same number.
    expect(parseTarget('sodium / potassium <= 0.5')).toMatchObject({
      value: {figure: {weight: 1e-3}, per: {weight: 1e-3}},
    })
    expect(parseTarget('sodium / salt <= 0.5')).toMatchObject({
      value: {figure: {weight: 1e-3}, per: {weight: 1}},
    })
  })

  test.each([
    ['energy 500 kcal', /energy <= 500 kcal/u],
    ['protien >= 40 g', /`protein`/u],
    ['protein >= 40', /unit/u],
    ['protein >= 40 kcal', /`g`/u],
    ['fibre >= 5 % of energy', /`protein`, `fat`/u],
    ['protein >= 5 g per bowl', /`per 100 g`/u],
    ['protein / fat >= 2 g', /`1 : 2`/u],
    ['protein / fat >= 1 : 0', /`1 : 2`/u],
    ['protein / energy >= 1', /per 100 kcal/u],
    ['protein / fatt >= 1', /`fat`/u],
    ['protein / fat / salt >= 1', /one nutrient, or two/u],
  ])('that is none says what would be one: %s', (text, expected) => {
    const read = parseTarget(text)
    expect(read.ok ? '' : read.expected).toMatch(expected)
  })
})
