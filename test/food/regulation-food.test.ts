import {describe, expect, test} from 'vitest'
import {coreTable} from '../../src/food/core-table.ts'
import {isComplete} from '../../src/food/figures.ts'
import {nutrients} from '../../src/food/nutrients.ts'
import {expandedUncertainty} from '../../src/units/uncertain.ts'

// US: 21 CFR 101.9(c)(1)(i)(F), FDA guidance on allulose (October 2020) and polydextrose (June
// 2018). EU: Regulation (EU) 1169/2011 Annex XIV. All seen in secondary tables; the US 0 of
// erythritol is from memory, the EU figures of allulose and polydextrose follow from the Annex.
describe('Energy of pure sweeteners and fibres by law, kcal per 100 g', () => {
  test.each([
    ['erythritol', 0, 0],
    ['xylitol', 240, 240],
    ['maltitol', 210, 240],
    ['sorbitol', 260, 240],
    ['mannitol', 160, 240],
    ['isomalt', 200, 240],
    ['lactitol', 200, 240],
    ['allulose', 40, 400],
    ['inulin', 200, 200],
    ['polydextrose', 100, 200],
  ])('%s: US %d, EU %d', (name, us, eu) => {
    expect(coreTable('us').lookUp(name)?.per100g.energy.value).toBeCloseTo(us, 9)
    expect(coreTable('eu').lookUp(name)?.per100g.energy.value).toBeCloseTo(eu, 9)
  })
})

describe('A pure polyol', () => {
  const xylitol = coreTable('us').lookUp('xylitol')

  test('is 100 g of polyols and of carbohydrate, and no sugar', () => {
    const figures = xylitol?.per100g
    expect(figures?.polyols.value).toBe(100)
    expect(figures?.carbohydrate.value).toBe(100)
    expect(figures?.availableCarbohydrate.value).toBe(100)
    expect(figures?.sugars.value).toBe(0)
  })

  test('has every figure known', () => {
    for (const nutrient of nutrients) {
      expect(xylitol && isComplete(xylitol.per100g[nutrient])).toBe(true)
    }
  })

  test('knows its energy to the last digit of the factor; that erythritol has none is exact', () => {
    const energy = xylitol?.per100g.energy
    expect(energy && expandedUncertainty(energy)).toBeCloseTo((2 * 10) / Math.sqrt(12), 9)
    const none = coreTable('us').lookUp('erythritol')?.per100g.energy
    expect(none && expandedUncertainty(none)).toBe(0)
  })

  test('says which law its energy is from', () => {
    expect(xylitol?.provenance).toEqual({
      kind: 'regulation',
      document: '21 CFR 101.9(c)(1)(i)(F)',
    })
  })
})

test('A pure fibre is carbohydrate with nothing but fibre in it', () => {
  const figures = coreTable('eu').lookUp('inulin')?.per100g
  expect(figures?.fibre.value).toBe(100)
  expect(figures?.availableCarbohydrate.value).toBe(0)
  expect(figures?.polyols.value).toBe(0)
})

// Regulation (EU) 1169/2011 Annex XIV, kJ/g: polyols 10, erythritol 0, fibre 8, carbohydrate 17.
test.each([
  ['xylitol', 1000],
  ['erythritol', 0],
  ['inulin', 800],
  ['allulose', 1700],
])('%s has its energy in kJ from the kJ column of the law', (name, kilojoules) => {
  const energy = coreTable('eu').lookUp(name)?.per100g.energyEuKilojoules
  expect(energy?.value).toBeCloseTo(kilojoules, 9)
})
