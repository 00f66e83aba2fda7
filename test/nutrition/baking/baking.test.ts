import {describe, expect, test} from 'vitest'
import type {Pan} from '../../../src/cookbook/recipe.ts'
import {bakersPercentages} from '../../../src/nutrition/baking/bakers-percentages.ts'
import {piecesByCount, piecesByWeight} from '../../../src/nutrition/baking/dough-pieces.ts'
import {panScale} from '../../../src/nutrition/baking/pan-size.ts'
import {frictionFactor, waterTemperature} from '../../../src/nutrition/baking/water-temperature.ts'
import {computeCookbook} from '../../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, grams, line, recipe} from '../../kitchen.ts'

const flour = food('flour', {water: 12}, {traits: new Set(['flour'])})
const water = food('water', {water: 99.9})
const milk = food('milk', {water: 88})
const salt = food('salt', {water: 0})

function formula(...lines: readonly (readonly [string, number])[]) {
  const dough = recipe(
    'dough',
    lines.map(([name, weight]) => line(name, weight)),
  )
  const starter = recipe('starter', [line('flour', 100), line('water', 100)], {
    batch: at(grams(200)),
  })
  const bread = recipe('bread', [
    line('flour', 400),
    line('water', 220),
    line('starter', 200, {recipe: at('starter')}),
    line('salt', 10),
  ])
  const {computed} = computeCookbook(cookbook([flour, water, milk, salt], [dough, starter, bread]))
  return {dough: computed.get('dough'), bread: computed.get('bread')}
}

describe("baker's percentages", () => {
  test('all flour is 100 %, and hydration counts plain water', () => {
    const {dough} = formula(['flour', 500], ['water', 325], ['salt', 10])
    const found = dough && bakersPercentages(dough)
    expect(found?.hydrationPercent).toBeCloseTo(65, 10)
    expect(found?.rows.map(({food: {name}, percent}) => [name, percent])).toEqual([
      ['flour', 100],
      ['water', 65],
      ['salt', 2],
    ])
  })

  test('flour and water of a preferment count with the rest', () => {
    const {bread} = formula(['flour', 1])
    const found = bread && bakersPercentages(bread)
    expect(found?.flourGrams).toBeCloseTo(500, 10)
    expect(found?.hydrationPercent).toBeCloseTo(64, 10)
  })

  test('water of milk is effective hydration, and not plain', () => {
    const {dough} = formula(['flour', 500], ['milk', 350])
    const found = dough && bakersPercentages(dough)
    expect(found?.hydrationPercent).toBe(0)
    expect(found?.effectiveHydrationPercent).toBeCloseTo((350 * 0.88) / 5, 10)
  })

  test('a spoonful of flour in a sauce makes no dough', () => {
    const {dough} = formula(['flour', 20], ['milk', 500])
    expect(dough && bakersPercentages(dough)).toBeUndefined()
  })
})

describe('dough pieces', () => {
  test('by count, with what is left over', () => {
    expect(piecesByCount(850, 8)).toEqual({count: 8, gramsEach: 106, leftGrams: 2})
  })

  test('by weight, with what is left over', () => {
    expect(piecesByWeight(850, 95)).toEqual({count: 8, gramsEach: 95, leftGrams: 90})
  })
})

describe('water temperature', () => {
  test('the worked example of bakery-school notes: 225 − 138 = 87 °F (common practice)', () => {
    // Desired 75 °F, room 65, flour 65, friction 8.
    expect(waterTemperature({desired: 75, room: 65, flour: 65, friction: 8})).toBe(87)
  })

  test('a preferment is one more temperature', () => {
    expect(waterTemperature({desired: 25, room: 21, flour: 20, preferment: 22, friction: 4})).toBe(
      100 - 63 - 4,
    )
  })

  test('friction is what the dough was warmer than its parts', () => {
    const parts = {room: 21, flour: 20}
    const friction = frictionFactor({...parts, dough: 26, water: 30})
    expect(friction).toBe(78 - 71)
    expect(waterTemperature({...parts, desired: 26, friction})).toBe(30)
  })
})

describe('pan scaling', () => {
  const inch = 25.4
  function round(inches: number, depth?: number): Pan {
    const deep = depth === undefined ? {} : {depthMillimetres: depth * inch}
    return {shape: 'round', acrossMillimetres: inches * inch, text: `${inches} in`, ...deep}
  }
  function rectangle(long: number, short: number): Pan {
    return {
      shape: 'rectangle',
      acrossMillimetres: long * inch,
      secondMillimetres: short * inch,
      text: `${short} x ${long} in`,
    }
  }
  const square8: Pan = {shape: 'square', acrossMillimetres: 8 * inch, text: '8 in'}

  // Worked by hand from the areas: π/4·81 ÷ π/4·64, 64 ÷ π/4·81, 117 ÷ 64.
  test.each([
    ['8 to 9 in round', round(8), round(9), 1.266],
    ['9 in round to 8 in square', round(9), square8, 1.006],
    ['8 in square to 9 × 13 in', square8, rectangle(13, 9), 1.828],
  ] as const)('%s', (_, from, to, expected) => {
    expect(panScale(from, to).byArea).toBeCloseTo(expected, 3)
    expect(panScale(to, from).byArea).toBeCloseTo(1 / expected, 2)
  })

  test('a ring is a disc without its tube, and depth makes volumes', () => {
    const ring: Pan = {...round(10, 3), shape: 'ring', secondMillimetres: 4 * inch}
    expect(panScale(round(10, 3), ring).byArea).toBeCloseTo(1 - 16 / 100, 10)
    expect(panScale(round(8, 2), round(8, 3)).byVolume).toBeCloseTo(1.5, 10)
    expect(panScale(round(8), round(9)).byVolume).toBeUndefined()
  })
})
