import {describe, expect, test} from 'vitest'
import type {Pan, Recipe} from '../../../src/cookbook/recipe.ts'
import {bakersPercentages} from '../../../src/nutrition/baking/bakers-percentages.ts'
import {
  doughPieces,
  piecesByCount,
  piecesByWeight,
} from '../../../src/nutrition/baking/dough-pieces.ts'
import {panScale} from '../../../src/nutrition/baking/pan-size.ts'
import {otherTins} from '../../../src/nutrition/baking/usual-tins.ts'
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
    expect(found?.effectiveHydration.value).toBeCloseTo((350 * 0.88) / 5, 10)
  })

  test('a food whose water nobody gives leaves effective hydration a lower bound', () => {
    const egg = food('egg', {energy: 143})
    const batter = recipe('batter', [line('flour', 100), line('water', 50), line('egg', 50)])
    const {computed} = computeCookbook(cookbook([flour, water, egg], [batter]))
    const found = computed.get('batter')
    const formula = found && bakersPercentages(found)
    expect([...(formula?.effectiveHydration.missing ?? [])]).toEqual(['egg'])
    expect(formula?.effectiveHydration.value).toBeCloseTo(49.95, 10)
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

describe('the pieces a recipe divides its dough into', () => {
  const divided = (more: Partial<Recipe>) => {
    const dough = recipe('dough', [line('flour', 500), line('water', 260.1)], more)
    const {computed} = computeCookbook(cookbook([flour, water], [dough]))
    const found = computed.get('dough')
    return found && doughPieces(found)
  }
  const eight = at({kind: 'count', count: 8} as const)
  const of95 = at({kind: 'weight', gramsEach: 95} as const)

  test('come of the mix where somebody is served, for the batch is baked', () => {
    const pieces = divided({serves: at(8), batch: at(grams(672)), pieces: eight})
    expect(pieces).toMatchObject({count: 8, gramsEach: 95})
    expect(pieces?.leftGrams).toBeCloseTo(0.1, 9)
  })

  test('come of the batch of a component, which is dough as weighed', () => {
    expect(divided({batch: at(grams(750)), pieces: eight})).toEqual({
      count: 8,
      gramsEach: 93,
      leftGrams: 6,
    })
    expect(divided({batch: at(grams(760)), pieces: of95})).toEqual({
      count: 8,
      gramsEach: 95,
      leftGrams: 0,
    })
  })

  test('are none where the recipe says nothing, or a piece outweighs the dough', () => {
    expect(divided({serves: at(8)})).toBeUndefined()
    const huge = at({kind: 'weight', gramsEach: 900} as const)
    expect(divided({serves: at(8), pieces: huge})).toBeUndefined()
  })

  // 0.1 + 0.2 g is a hair above 0.3 g, and three times 0.1 as a sum of doubles is no whole 0.3.
  test('are not one fewer for the noise of adding doubles', () => {
    expect(piecesByWeight(100.1 + 100.2 + 79.69999999999999, 35).count).toBe(8)
    expect(piecesByWeight(279.9, 35).count).toBe(7)
  })
})

describe('other tins', () => {
  const loaf: Pan = {
    shape: 'rectangle',
    acrossMillimetres: 230,
    secondMillimetres: 130,
    depthMillimetres: 70,
    text: '13 x 23 cm, 7 cm deep',
  }

  const inches: Pan = {
    shape: 'rectangle',
    acrossMillimetres: 228.6,
    secondMillimetres: 127,
    depthMillimetres: 76.2,
    text: '5 x 9 in, 3 in deep',
  }

  // 23 × 13 cm are 299 cm², 20 cm round 314.16 cm², both 7 cm deep; 5 × 9 in are 45 in², 3 in deep
  // 135 in³; 9 × 13 in are 117 in², 2 in deep 234 in³.
  test.each([
    ['20 cm round, 7 cm deep', loaf, 314.159 / 299, 314.159 / 299],
    ['9 x 13 in, 2 in deep', inches, 117 / 45, 234 / 135],
  ])('%s', (text, own, byArea, byVolume) => {
    const tin = otherTins(own).find(({pan}) => pan.text === text)
    expect(tin?.byArea).toBeCloseTo(byArea, 4)
    expect(tin?.byVolume).toBeCloseTo(byVolume, 4)
  })

  test('leave out the recipe’s own size, and are told by area alone for a tin of unknown depth', () => {
    const round: Pan = {shape: 'round', acrossMillimetres: 230, text: '23 cm'}
    const tins = otherTins(round)
    expect(tins.length).toBeGreaterThan(5)
    expect(tins.every(({pan}) => !pan.text.includes(' in'))).toBe(true)
    expect(tins.map(({pan}) => pan.text)).not.toContain('23 cm round, 7 cm deep')
    expect(tins.every(({byVolume}) => byVolume === undefined)).toBe(true)
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
