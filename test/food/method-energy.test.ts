import {describe, expect, test} from 'vitest'
import {coreTable} from '../../src/food/core-table.ts'
import {isComplete} from '../../src/food/figures.ts'
import type {MethodEnergy} from '../../src/food/nutrients.ts'
import {expandedUncertainty} from '../../src/units/uncertain.ts'

const table = coreTable('eu')

function energy(id: string, method: MethodEnergy) {
  const food = table.lookUp(id)
  if (food === undefined) throw new Error(`no food ${id}`)
  return food.per100g[method]
}

// Worked by hand from USDA SR28 (2015) figures per 100 g and the factors of 21 CFR
// 101.9(c)(1)(i)(B) (4-4-9) and Regulation (EU) 1169/2011 Annex XIV.
describe('energy of a food by a method', () => {
  test.each([
    ['usda/11090', 'broccoli', 41.2, 36.0, 151.1],
    ['usda/01123', 'egg', 138.7, 138.7, 577.6],
    ['usda/12061', 'almonds', 620.2, 595.2, 2460.8],
  ] as const)(
    '%s (%s): %d kcal general, %d kcal and %d kJ by the EU',
    (id, _, general, eu, kilojoules) => {
      expect(energy(id, 'energyGeneral').value).toBeCloseTo(general, 0)
      expect(energy(id, 'energyEu').value).toBeCloseTo(eu, 0)
      expect(Math.abs(energy(id, 'energyEuKilojoules').value - kilojoules)).toBeLessThan(0.5)
    },
  )

  test('alcohol gives 7 kcal/g: red wine, SR28 14096, 10.6 g', () => {
    expect(energy('usda/14096', 'energyEu').value).toBeCloseTo(4 * 0.07 + 4 * 2.61 + 7 * 10.6, 0)
  })

  test('fibre of unknown solubility widens the US figure, not the general one', () => {
    const plusMinus = expandedUncertainty(energy('usda/11090', 'energyDigestible'))
    // 2.6 g of fibre at 0 to 2 kcal/g: 2 × 2.6 × 2/√12 = 3.0 kcal.
    expect(plusMinus).toBeGreaterThan(3.0)
    expect(plusMinus).toBeLessThan(3.2)
    expect(expandedUncertainty(energy('usda/11090', 'energyGeneral'))).toBeLessThan(0.5)
  })

  test('erythritol gives nothing, other polyols 2.4 kcal/g (EU Annex XIV)', () => {
    expect(energy('core/erythritol', 'energyEu').value).toBe(0)
    expect(energy('core/xylitol', 'energyEu').value).toBeCloseTo(240, 9)
  })

  test('unknown fibre leaves the EU energy unknown, and the general one known', () => {
    const food = table
      .foods()
      .find(({per100g}) => !isComplete(per100g.fibre) && isComplete(per100g.carbohydrate))
    if (food === undefined) throw new Error('every food of the table has fibre')
    expect(isComplete(food.per100g.energyEu)).toBe(false)
    expect(isComplete(food.per100g.energyGeneral)).toBe(true)
  })
})
