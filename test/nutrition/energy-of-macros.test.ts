import {describe, expect, test} from 'vitest'
import {energyGap} from '../../src/check/energy-gap.ts'
import {energyBy, type MacroSpans} from '../../src/nutrition/energy-of-macros.ts'
import {spanOfRounded} from '../../src/units/span.ts'

function gramsTo1(value: number) {
  return spanOfRounded(value, 1)
}

/** Broccoli, USDA SR28 11090: protein 2.82, fat 0.37, carbohydrate by difference 6.64, fibre 2.6. */
const broccoli: MacroSpans = {
  protein: spanOfRounded(2.82, 0.01),
  fat: spanOfRounded(0.37, 0.01),
  carbohydrate: spanOfRounded(6.64, 0.01),
  carbohydrateIs: 'total',
  fibre: spanOfRounded(2.6, 0.1),
}

describe('energy of macros', () => {
  test('general factors count all carbohydrate at 4 kcal/g (21 CFR 101.9(c)(1)(i)(B))', () => {
    expect(energyBy('energyGeneral', broccoli).value).toBeCloseTo(
      4 * 2.82 + 9 * 0.37 + 4 * 6.64,
      10,
    )
  })

  test('the EU factors take fibre out of the carbohydrate, kcal and kJ each by its own column', () => {
    // Regulation (EU) 1169/2011 Annex XIV: 17/4 protein and carbohydrate, 37/9 fat, 8/2 fibre.
    expect(energyBy('energyEu', broccoli).value).toBeCloseTo(
      4 * 2.82 + 9 * 0.37 + 4 * (6.64 - 2.6) + 2 * 2.6,
      10,
    )
    expect(energyBy('energyEuKilojoules', broccoli).value).toBeCloseTo(
      17 * 2.82 + 37 * 0.37 + 17 * (6.64 - 2.6) + 8 * 2.6,
      10,
    )
  })

  test('fibre of unknown kind gives 0 to 2 kcal/g by 21 CFR 101.9(c)(1)(i)(C)', () => {
    const {low, high} = energyBy('energyDigestible', {...broccoli, fibre: spanOfRounded(2.6, 0)})
    const digestible = 4 * 2.82 + 9 * 0.37 + 4 * (6.64 - 2.6)
    const rounding = 4 * 0.005 + 9 * 0.005 + 4 * 0.005
    expect(low).toBeCloseTo(digestible - rounding, 9)
    expect(high).toBeCloseTo(digestible + 2 * 2.6 + rounding, 9)
  })

  test('carbohydrate printed without fibre gets it back for the general factors', () => {
    const eu: MacroSpans = {
      ...broccoli,
      carbohydrate: spanOfRounded(4.04, 0.01),
      carbohydrateIs: 'available',
    }
    expect(energyBy('energyGeneral', eu).value).toBeCloseTo(
      energyBy('energyGeneral', broccoli).value,
      9,
    )
  })
})

describe('a printed energy beside its macros', () => {
  // A panel of 615 kcal, 47 g protein, 72 g carbohydrate, 17 g fat: common practice, no source.
  const panel: MacroSpans = {
    protein: gramsTo1(47),
    fat: gramsTo1(17),
    carbohydrate: gramsTo1(72),
    carbohydrateIs: 'total',
  }

  const around = {slack: 0, grams: 500}

  test('says 629 by general factors, 2.3 % apart, and what would explain it', () => {
    const gap = energyGap(spanOfRounded(615, 1), panel, around)
    expect(gap.general.value).toBe(629)
    expect(gap.gapPercent).toBeCloseTo(2.28, 2)
    expect(gap.wouldExplain).toEqual([
      'The stated energy is lower: 3.5 g of insoluble fibre or erythritol (0 kcal/g), 3.9 g of allulose (0.4 kcal/g), 7.0 g of other fibre (2 kcal/g) or 8.8 g of polyols (2.4 kcal/g) within the carbohydrate would explain it.',
    ])
    // Rounding alone could be 4×0.5 + 9×0.5 + 4×0.5 + 0.5 = 9 kcal, and the gap is 14.
    expect(gap.fits).toBeUndefined()
  })

  test('is not explained by more than there is carbohydrate', () => {
    const lean = {...panel, carbohydrate: gramsTo1(5)}
    // 361 kcal by general factors: 16 less are 4.0 g of what gives none, 10.0 g of polyols.
    const {wouldExplain} = energyGap(spanOfRounded(345, 1), lean, around)
    expect(wouldExplain[0]).toContain('4.0 g of insoluble fibre')
    expect(wouldExplain[0]).not.toContain('polyols')
    expect(energyGap(spanOfRounded(200, 1), lean, around).wouldExplain).toEqual([
      'The stated energy is lower than all of the carbohydrate would explain, whatever it is made of.',
    ])
  })

  test('is explained by fibre where there is enough of it', () => {
    expect(energyGap(spanOfRounded(615, 1), {...panel, fibre: gramsTo1(7)}, around).fits).toBe(
      'energyDigestible',
    )
  })

  // Regulation (EU) 1169/2011 Annex XV gives kJ before kcal: the line above is easily copied.
  test('is told from the kilojoules of the packet: 2632 kJ are 629 kcal', () => {
    expect(energyGap(spanOfRounded(2632, 1), panel, around).wouldExplain).toEqual([
      'The stated energy may be the kilojoules of the packet: 2632 kJ are 629 kcal.',
    ])
  })

  test('is not explained by more alcohol than there is room for', () => {
    // 136 g of macros leave 64 g of 200 g; 448 kcal of alcohol are 64 g.
    const near = {slack: 0, grams: 200}
    expect(energyGap(spanOfRounded(629 + 434, 1), panel, near).wouldExplain).toEqual([
      'The stated energy is higher: 62.0 g of alcohol (7 kcal/g) would explain it.',
    ])
    expect(energyGap(spanOfRounded(629 + 476, 1), panel, near).wouldExplain).toEqual([
      'The stated energy is higher than alcohol (7 kcal/g) would explain.',
    ])
  })
})
