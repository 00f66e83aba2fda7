import {describe, expect, test} from 'vitest'
import {methodFactors} from '../../src/food/method-factors.ts'
import {type MethodEnergy, type Nutrient, nutrients} from '../../src/food/nutrients.ts'
import {energyBy, type MacroSpans} from '../../src/nutrition/energy-of-macros.ts'
import {type Span, spanOfRounded} from '../../src/units/span.ts'
import {coreFood} from './core-foods.ts'

function grams(value: number): Span {
  return {value, low: value, high: value}
}

const none: MacroSpans = {
  protein: grams(0),
  fat: grams(0),
  carbohydrate: grams(0),
  carbohydrateIs: 'available',
}

/** Energy of one gram of one thing. */
function energyOfGram(
  method: MethodEnergy,
  part: Exclude<keyof MacroSpans, 'carbohydrateIs'>,
): number {
  const gram = {...none, [part]: grams(1)}
  // A polyol is within the carbohydrate.
  return energyBy(method, part === 'polyols' ? {...gram, carbohydrate: grams(1)} : gram).value
}

// Regulation (EU) 1169/2011 Annex XIV, seen in reproductions. FAO Food and Nutrition Paper 77 (2003)
// has the same general factors (from memory but for ethanol).
describe('Regulation (EU) 1169/2011 Annex XIV, kJ and kcal a gram', () => {
  test.each([
    ['carbohydrate', 17, 4],
    ['polyols', 10, 2.4],
    ['protein', 17, 4],
    ['fat', 37, 9],
    ['alcohol', 29, 7],
    ['fibre', 8, 2],
  ] as const)('%s: %d kJ, %d kcal', (part, kilojoules, kilocalories) => {
    expect(energyOfGram('energyEuKilojoules', part)).toBeCloseTo(kilojoules, 12)
    expect(energyOfGram('energyEu', part)).toBeCloseTo(kilocalories, 12)
  })

  test('erythritol, 0, is the lower limit of a polyol of unknown kind', () => {
    expect(methodFactors.energyEu.polyols?.low).toBe(0)
    expect(methodFactors.energyEuKilojoules.polyols?.low).toBe(0)
  })
})

// 21 CFR 101.9(c)(1)(i)(B) and (C), wording seen quoted; ethanol at 7 kcal/g is label practice, from
// memory.
describe('21 CFR 101.9(c)(1)(i), kcal a gram', () => {
  test.each([
    ['protein', 4, 4],
    ['fat', 9, 9],
    ['carbohydrate', 4, 4],
    ['alcohol', 7, 7],
  ] as const)('%s: %d by (B), %d by (C)', (part, general, digestible) => {
    expect(energyOfGram('energyGeneral', part)).toBeCloseTo(general, 12)
    expect(energyOfGram('energyDigestible', part)).toBeCloseTo(digestible, 12)
  })

  test('fibre counts 4 by (B) and, soluble or not, 0 to 2 by (C)', () => {
    expect(energyOfGram('energyGeneral', 'fibre')).toBe(4)
    const {low, high} = energyBy('energyDigestible', {...none, fibre: grams(1)})
    expect([low, high]).toEqual([0, 2])
  })

  // Limits of the printed macros: fat 12, carbohydrate 31, protein 5, each to the gram. A published
  // programming contest asks for the least and the most energy: 243.5 to 260.5; 250 is consistent.
  test('a panel of 12 g fat, 31 g carbohydrate and 5 g protein has 243.5 to 260.5 kcal', () => {
    const panel: MacroSpans = {
      protein: spanOfRounded(5, 1),
      fat: spanOfRounded(12, 1),
      carbohydrate: spanOfRounded(31, 1),
      carbohydrateIs: 'total',
    }
    expect(energyBy('energyGeneral', panel)).toEqual({value: 252, low: 243.5, high: 260.5})
  })

  // Common practice, no source: a panel of 615 kcal.
  test('47 g protein, 72 g carbohydrate and 17 g fat are 629 kcal, 2.3 % from 615', () => {
    const {value} = energyBy('energyGeneral', {
      protein: spanOfRounded(47, 1),
      fat: spanOfRounded(17, 1),
      carbohydrate: spanOfRounded(72, 1),
      carbohydrateIs: 'total',
    })
    expect(value).toBe(629)
    expect((100 * (value - 615)) / 615).toBeCloseTo(2.3, 1)
  })
})

// Rows of USDA SR28 (2015), energy by each method worked by hand from protein, fat, carbohydrate,
// fibre and alcohol of the row: how far the methods lie apart for one and the same food.
describe('Energy of foods of the core table by each method', () => {
  test.each([
    // 2.82, 0.37, 6.64, 2.6: the release prints 34 by factors of vegetables.
    ['11090', 'broccoli', {energy: 34, energyGeneral: 41.17, energyEu: 35.97}],
    ['11090', 'broccoli', {energyEuKilojoules: 151.11}],
    // 21.15, 49.93, 21.55, 12.5.
    ['12061', 'almonds', {energy: 579, energyGeneral: 620.17, energyEu: 595.17}],
    // 12.56, 9.51, 0.72, 0.
    ['01123', 'egg', {energy: 143, energyGeneral: 138.71, energyEu: 138.71}],
    // 24.63, 1.06, 63.35, 10.7.
    ['16069', 'lentils', {energy: 352, energyGeneral: 361.46}],
    // 0.07, 0, 2.72, 0, alcohol 10.4.
    ['14084', 'wine', {energy: 83, energyGeneral: 83.96, energyEu: 83.96}],
  ] as const)('%s %s', (ndb, _name, expected) => {
    const {per100g} = coreFood(ndb)
    const printed: Partial<Record<Nutrient, number>> = expected
    for (const nutrient of nutrients) {
      const energy = printed[nutrient]
      if (energy !== undefined) expect(per100g[nutrient].value, nutrient).toBeCloseTo(energy, 2)
    }
  })
})
