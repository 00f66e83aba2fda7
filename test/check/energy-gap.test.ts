/** What would close the gap between a printed energy and the energy of its macros. */

import {describe, expect, test} from 'vitest'
import {energyGap} from '../../src/check/energy-gap.ts'
import type {MacroSpans} from '../../src/nutrition/energy-of-macros.ts'
import type {Span} from '../../src/units/span.ts'

const exactly = (value: number): Span => ({low: value, value, high: value})

/** 400 kcal by the general factors 4-4-9 (21 CFR 101.9(c)(1)(i)(B)), 50 g of macros beside fat. */
const macros: MacroSpans = {
  protein: exactly(10),
  fat: exactly(20),
  carbohydrate: exactly(45),
  carbohydrateIs: 'total',
}

const gap = (kcal: number, grams = 100, slack = 0) =>
  energyGap(exactly(kcal), macros, {slack, grams})

describe('printed energy beside its macros', () => {
  test('that is theirs fits, with no gap', () => {
    const {general, gapPercent, fits} = gap(400)
    expect(general.value).toBe(400)
    expect(gapPercent).toBe(0)
    expect(fits).toBe('energyGeneral')
  })

  test('is a share of itself away, and fits within the slack, which includes its end', () => {
    expect(gap(500).gapPercent).toBeCloseTo(20, 9)
    expect(gap(320).gapPercent).toBeCloseTo(25, 9)
    expect(gap(500, 100, 100).fits).toBeDefined()
    expect(gap(500, 100, 99).fits).toBeUndefined()
    expect(gap(0).gapPercent).toBe(0)
  })

  test('that is lower by 4 kcal is what lighter carbohydrate would explain', () => {
    // 4 ÷ (4 − 0), 4 ÷ (4 − 0.4), 4 ÷ (4 − 2) and 4 ÷ (4 − 2.4) g.
    expect(gap(396).wouldExplain).toEqual([
      'The stated energy is lower: 1.0 g of insoluble fibre or erythritol (0 kcal/g), 1.1 g of allulose (0.4 kcal/g), 2.0 g of other fibre (2 kcal/g) or 2.5 g of polyols (2.4 kcal/g) within the carbohydrate would explain it.',
    ])
  })

  test('that is lower names only what the carbohydrate has room for, up to all of it', () => {
    // 45 g of carbohydrate: all of it without energy is 180 kcal, as other fibre 90, as polyols 72.
    expect(gap(328).wouldExplain[0]).toContain('45.0 g of polyols')
    expect(gap(327).wouldExplain[0]).not.toContain('polyols')
    expect(gap(220).wouldExplain).toEqual([
      'The stated energy is lower: 45.0 g of insoluble fibre or erythritol (0 kcal/g) within the carbohydrate would explain it.',
    ])
    expect(gap(219).wouldExplain).toEqual([
      'The stated energy is lower than all of the carbohydrate would explain, whatever it is made of.',
    ])
  })

  test('that is higher is alcohol, as far as there is room beside the macros', () => {
    // 100 g less 75 g of macros leave 25 g: 175 kcal at 7 kcal/g.
    expect(gap(470).wouldExplain).toEqual([
      'The stated energy is higher: 10.0 g of alcohol (7 kcal/g) would explain it.',
    ])
    expect(gap(575).wouldExplain[0]).toContain('25.0 g of alcohol')
    expect(gap(576).wouldExplain).toEqual([
      'The stated energy is higher than alcohol (7 kcal/g) would explain.',
    ])
    expect(gap(576, 101).wouldExplain[0]).toContain('of alcohol (7 kcal/g) would explain it')
  })

  test('that is 4.184 times theirs is the line of the kilojoules', () => {
    expect(gap(1674).wouldExplain).toEqual([
      'The stated energy may be the kilojoules of the packet: 1674 kJ are 400 kcal.',
    ])
    // Up to 15 % of the macros' energy, either way: 340 to 460 kcal.
    for (const kcal of [341, 459]) expect(gap(kcal * 4.184).wouldExplain[0]).toContain('kilojoules')
    for (const kcal of [339, 461]) {
      expect(gap(kcal * 4.184).wouldExplain[0]).not.toContain('kilojoules')
    }
  })
})
