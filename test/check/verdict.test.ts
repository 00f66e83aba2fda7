import {describe, expect, test} from 'vitest'
import {verdict} from '../../src/check/verdict.ts'
import {type Figure, known, unknown} from '../../src/food/figures.ts'
import type {PublishedNutrient} from '../../src/food/nutrients.ts'
import {exact, rectangular} from '../../src/units/uncertain.ts'
import {settings} from '../kitchen.ts'

function stated(nutrient: PublishedNutrient, value: number, increment = 1) {
  return {nutrient, value, increment}
}

const strict = {grams: 370, settings: {...settings, tolerance: 'strict' as const}}
const household = {grams: 370, settings}

/** Expanded uncertainty of `plusMinus`: width × 2/√12. */
function figure(value: number, plusMinus: number): Figure {
  const width = (plusMinus * Math.sqrt(12)) / 2
  return known(rectangular(value, width, {kind: 'label', subject: 'a label'}))
}

describe('verdict', () => {
  test('a whole gram is never held tighter than half of it', () => {
    expect(verdict(stated('protein', 38), known(exact(38.5)), strict)).toBe('agrees')
    expect(verdict(stated('protein', 38), known(exact(38.7)), strict)).toBe('drift')
  })

  test('agrees within the uncertainty of both figures together', () => {
    // Rounding to 1 kcal: 2/√12 = 0.577; together with 9: √(81 + 1/3) = 9.0185.
    expect(verdict(stated('energy', 462), figure(453, 9), strict)).toBe('agrees')
    expect(verdict(stated('energy', 462.1, 1), figure(453, 9), strict)).toBe('drift')
  })

  test('beyond that the tolerance speaks, its boundary passing', () => {
    // 2 % of 453 kcal is 9.06 kcal, more than half of a label's 10 kcal step.
    expect(verdict(stated('energy', 460), known(exact(453)), household)).toBe('tolerated')
    expect(verdict(stated('energy', 463), known(exact(453)), household)).toBe('drift')
    const own = {
      ...settings,
      tolerances: new Map([['energy', {kind: 'amount', amount: 10}]] as const),
    }
    expect(verdict(stated('energy', 463), known(exact(453)), {grams: 370, settings: own})).toBe(
      'tolerated',
    )
  })

  test('an incomplete figure is a lower bound: below it is drift, above it nobody knows', () => {
    const atLeastFive: Figure = {...known(exact(5)), missing: unknown('honey').missing}
    expect(verdict(stated('fibre', 8), atLeastFive, household)).toBe('unknown')
    expect(verdict(stated('fibre', 5), atLeastFive, household)).toBe('unknown')
    expect(verdict(stated('fibre', 2), atLeastFive, household)).toBe('drift')
  })
})

describe('policies', () => {
  const us = {grams: 370, settings: {...settings, tolerance: 'us' as const}}
  const eu = {grams: 100, settings: {...settings, tolerance: 'eu' as const}}

  // 21 CFR 101.9(g)(4)–(5): class II at least 80 % of declared; calories, fat, sodium at most 120 %.
  test.each([
    ['energy', 100, 120, 'tolerated'],
    ['energy', 100, 121, 'drift'],
    ['energy', 200, 100, 'tolerated'],
    ['protein', 10, 8, 'tolerated'],
    ['protein', 10, 7.9, 'drift'],
    ['protein', 10, 20, 'tolerated'],
  ] as const)('us: %s stated %d, computed %d: %s', (nutrient, value, computed, expected) => {
    expect(verdict(stated(nutrient, value, 0.1), known(exact(computed)), us)).toBe(expected)
  })

  // European Commission guidance on tolerances (Dec 2012), per 100 g: protein under 10 g ± 2 g (from
  // memory), 10 to 40 g ± 20 %, above 40 g ± 8 g (from memory); fat under 10 g ± 1.5 g (from memory).
  test.each([
    ['protein', 9.9, 7.9, 'tolerated'],
    ['protein', 9.9, 7.8, 'drift'],
    ['protein', 9.9, 11.9, 'tolerated'],
    ['protein', 9.9, 12, 'drift'],
    // Around what is declared: 20 % of 25 g reaches down to 20 g, 20 % of 20 g up to 24 g.
    ['protein', 25, 20, 'tolerated'],
    ['protein', 25.1, 20, 'drift'],
    ['protein', 20, 24, 'tolerated'],
    ['protein', 20, 24.2, 'drift'],
    ['carbohydrate', 58, 50, 'tolerated'],
    ['carbohydrate', 58.1, 50, 'drift'],
    ['carbohydrate', 42, 50, 'tolerated'],
    ['carbohydrate', 41.9, 50, 'drift'],
    ['fat', 6.5, 5, 'tolerated'],
    ['fat', 6.6, 5, 'drift'],
    // Table 1: a food may hold 45 % more of a mineral than declared, 35 % less; of a vitamin 50 %
    // more, 35 % less (vitamins: secondary texts; minerals: from memory).
    ['calcium', 100, 145, 'tolerated'],
    ['calcium', 100, 145.2, 'drift'],
    ['iron', 10, 6.5, 'tolerated'],
    ['iron', 10, 6.4, 'drift'],
    ['potassium', 200, 289, 'tolerated'],
    ['potassium', 200, 129, 'drift'],
    ['vitaminD', 10, 15, 'tolerated'],
    ['vitaminD', 10, 15.1, 'drift'],
    ['vitaminD', 10, 6.5, 'tolerated'],
    ['vitaminD', 10, 6.4, 'drift'],
    ['sodium', 1000, 1200, 'tolerated'],
    ['sodium', 1000, 1201, 'drift'],
    ['sodium', 1000, 800, 'tolerated'],
    ['sodium', 1000, 799, 'drift'],
  ] as const)('eu: %s stated %d, computed %d: %s', (nutrient, value, computed, expected) => {
    expect(verdict(stated(nutrient, value, 0.1), known(exact(computed)), eu)).toBe(expected)
  })
})
