import {describe, expect, test} from 'vitest'
import type {Nutrient} from '../../src/food/nutrients.ts'
import {energyShares} from '../../src/nutrition/energy-shares.ts'
import {food} from '../templates/sample.ts'

function percent(per100g: Partial<Record<Nutrient, number>>): Record<string, number> | undefined {
  const shares = energyShares(food('a dish', per100g).per100g)
  return (
    shares &&
    Object.fromEntries(shares.map(({source, ratio}) => [source, Math.round(ratio * 1000) / 10]))
  )
}

describe('shares of the energy', () => {
  // Regulation (EU) 1169/2011 Annex XIV: protein 4, carbohydrate 4, fat 9, fibre 2 kcal/g. By hand:
  // 10 × 4 = 40, 20 × 4 = 80, 8 × 9 = 72, 4 × 2 = 8; 200 kcal in all.
  test('follow the factors of the EU', () => {
    expect(
      percent({
        protein: 10,
        fat: 8,
        carbohydrate: 24,
        availableCarbohydrate: 20,
        fibre: 4,
        polyols: 0,
        alcohol: 0,
      }),
    ).toEqual({protein: 20, carbohydrate: 40, fat: 36, fibre: 4})
  })

  test('name alcohol, at 7 kcal/g', () => {
    expect(
      percent({
        protein: 0,
        fat: 0,
        carbohydrate: 14,
        availableCarbohydrate: 14,
        fibre: 0,
        alcohol: 8,
        polyols: 0,
      }),
    ).toEqual({carbohydrate: 50, alcohol: 50})
  })

  test('count the whole carbohydrate where the fibre is unknown', () => {
    expect(percent({protein: 10, fat: 0, carbohydrate: 10})).toEqual({
      protein: 50,
      carbohydrate: 50,
    })
  })

  test('are not drawn where a macro is unknown', () => {
    expect(percent({protein: 10, carbohydrate: 10})).toBeUndefined()
  })

  test('are not drawn where there is no energy', () => {
    expect(percent({protein: 0, fat: 0, carbohydrate: 0})).toBeUndefined()
  })
})
