/** Where the audit's slacks end, on foods made up for it. */

import {describe, expect, test} from 'vitest'
import {outlierOddities, sameNameOddities} from '../../../src/check/audit/outlier.ts'
import {followsOwnFactors, rowOddities} from '../../../src/check/audit/row-sanity.ts'
import type {Food} from '../../../src/food/food.ts'
import type {Nutrient} from '../../../src/food/nutrients.ts'
import {food} from '../../kitchen.ts'

/** 20 g of protein and 10 g of fat: 170 kcal. */
const macros = {protein: 20, fat: 10, carbohydrate: 0, fibre: 0}

function row(name: string, figures: Partial<Record<Nutrient, number>>, more: Partial<Food> = {}) {
  return food(name, {...macros, energy: 170, ...figures}, {increment: 0, ...more})
}

const table = (energy: number, figures: Partial<Record<Nutrient, number>> = {}) =>
  ['a', 'b', 'c'].map((name) => row(name, {energy, ...figures}))

describe('an energy unlike its neighbours’', () => {
  test('is more than a quarter of theirs away, and more than 25 kcal', () => {
    expect(outlierOddities(row('own', {energy: 250}), table(200))).toEqual([])
    expect(outlierOddities(row('own', {energy: 251}), table(200))).toEqual([
      {
        reason:
          'Energy `251 kcal` of `own`, expected about `200 kcal`: `a` (test/a) has nearly the same macros',
        note: expect.stringContaining('Read the energy and the macros again'),
      },
    ])
    expect(outlierOddities(row('own', {energy: 65}), table(40))).toEqual([])
    expect(outlierOddities(row('own', {energy: 66}), table(40))).toHaveLength(1)
    expect(outlierOddities(row('own', {energy: 149}), table(200))).toHaveLength(1)
  })

  test('is measured by foods within 25 kcal of macros, three at most, not by itself', () => {
    const own = row('own', {energy: 400})
    // 6.25 g of protein are 25 kcal.
    expect(outlierOddities(own, table(170, {protein: 26.25}))).toHaveLength(1)
    expect(outlierOddities(own, table(170, {protein: 26.3}))).toEqual([])
    expect(outlierOddities(own, [own])).toEqual([])
    const farther = row('d', {energy: 400, protein: 21})
    expect(outlierOddities(own, [...table(170), farther])).toHaveLength(1)
    expect(outlierOddities(own, [...table(170).slice(0, 2), farther])).toEqual([])
  })

  test('is measured by foods with about as much fibre, polyols and alcohol', () => {
    const own = row('own', {energy: 400})
    for (const nutrient of ['fibre', 'polyols', 'alcohol'] as const) {
      expect(outlierOddities(own, table(170, {[nutrient]: 3})), nutrient).toHaveLength(1)
      expect(outlierOddities(own, table(170, {[nutrient]: 3.1})), nutrient).toEqual([])
    }
  })

  test('is not judged where a figure is unknown, or its own factors give it', () => {
    const nobodyKnows = food('own', macros)
    expect(outlierOddities(nobodyKnows, table(170))).toEqual([])
    expect(outlierOddities(row('own', {energy: 400}), [food('a', macros)])).toEqual([])
    const factors = {protein: 10, fat: 20, carbohydrate: 4}
    expect(outlierOddities(row('own', {energy: 400}, {factors}), table(170))).toEqual([])
  })
})

describe('an energy unlike that of the food of the same name', () => {
  test('is more than two fifths of it away, and more than 40 kcal', () => {
    const other = [row('Barley', {energy: 350})]
    const own = (energy: number) => row('barley', {energy}, {id: 'own/barley'})
    expect(sameNameOddities(own(210), other)).toEqual([])
    expect(sameNameOddities(own(209), other)).toEqual([
      {
        reason:
          'Energy `209 kcal` of `barley`, expected about `350 kcal`: `Barley` (test/Barley) has the same name',
        note: expect.stringContaining('per serving'),
      },
    ])
    const thin = [row('Barley', {energy: 50})]
    expect(sameNameOddities(own(90), thin)).toEqual([])
    expect(sameNameOddities(own(91), thin)).toHaveLength(1)
  })

  test('other names count on both sides; the food itself and unknown energy do not', () => {
    const own = row('our barley', {energy: 100}, {also: ['pearled grain']})
    const other = row('Barley', {energy: 350}, {also: ['Pearled grain']})
    expect(sameNameOddities(own, [other])).toHaveLength(1)
    expect(sameNameOddities(own, [row('Barley', {energy: 350})])).toEqual([])
    expect(sameNameOddities(own, [{...other, id: own.id}])).toEqual([])
    expect(sameNameOddities(own, [food('our barley', macros, {id: 'other'})])).toEqual([])
    expect(sameNameOddities(food('Barley', macros, {id: 'own'}), [other])).toEqual([])
  })
})

describe('a row by itself', () => {
  test('may follow from the factors of its own, within a quarter or 20 kcal', () => {
    const factors = {protein: 4, fat: 9, carbohydrate: 4}
    for (const [energy, follows] of [
      [212.5, true],
      [213, false],
      [127.5, true],
      [127, false],
    ] as const) {
      expect(followsOwnFactors(row('own', {energy}, {factors})), String(energy)).toBe(follows)
    }
    const little = {protein: 1, fat: 0, carbohydrate: 0}
    expect(followsOwnFactors(row('own', {...little, energy: 24}, {factors}))).toBe(true)
    expect(followsOwnFactors(row('own', {...little, energy: 25}, {factors}))).toBe(false)
  })

  test('does not follow from factors that are missing', () => {
    expect(followsOwnFactors(row('own', {}))).toBe(false)
    for (const gap of ['protein', 'fat', 'carbohydrate'] as const) {
      const factors = {protein: 4, fat: 9, carbohydrate: 4, [gap]: null}
      expect(followsOwnFactors(row('own', {}, {factors})), gap).toBe(false)
    }
  })

  test('counts its ash to the 100 g', () => {
    const heavy = (ashGrams: number) =>
      rowOddities(row('own', {water: 72}, {ashGrams})).map(({reason}) => reason)
    expect(heavy(1)).toEqual([])
    expect(heavy(2)).toEqual([
      'Parts of `own` add up to `104.0 g`, expected `100 g` or a little less',
    ])
  })

  test('is told which column to doubt, and what would explain its energy', () => {
    const [part] = rowOddities(row('own', {saturated: 12, energy: 170}))
    expect(part).toEqual({
      reason: 'Saturated `12 g` of `own`, expected `10 g` or less: it is part of the fat',
      note: 'A column of the table may stand for something else than its heading says.',
    })
    const [energy] = rowOddities(row('own', {energy: 240}))
    expect(energy?.reason).toContain('Energy `240 kcal` of `own`, expected about `170 kcal`')
    expect(energy?.note).toContain('10.0 g of alcohol (7 kcal/g) would explain it')
    const [drink] = rowOddities(row('own', {energy: 240, alcohol: 10}))
    expect(drink).toBeUndefined()
  })
})
