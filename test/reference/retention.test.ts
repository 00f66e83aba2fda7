import {describe, expect, test} from 'vitest'
import type {CookingMethod} from '../../src/food/cooking-methods.ts'
import type {Nutrient} from '../../src/food/nutrients.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {retainedAfter, retainedAfterSimmering} from '../../src/nutrition/retention.ts'
import {at, cookbook, line, recipe} from '../kitchen.ts'
import {coreFood} from './core-foods.ts'

// USDA Table of Nutrient Retention Factors, Release 6 (December 2007), rows seen in reproductions;
// the code of 2.5 h is inferred from its neighbours.
describe('USDA retention factors, Release 6, alcohol (nutrient 221)', () => {
  test.each([
    ['5004', 15, 40],
    ['5005', 30, 35],
    ['5006', 60, 25],
    ['5007', 90, 20],
    ['5008', 120, 10],
    ['5009', 150, 5],
  ])('code %s, stirred in and cooked %d min, leaves %d percent', (_code, minutes, percent) => {
    expect(retainedAfterSimmering(minutes).get('alcohol')?.value).toBeCloseTo(percent / 100, 12)
    // Between two rows the shorter time counts.
    expect(retainedAfterSimmering(minutes + 14).get('alcohol')?.value).toBeCloseTo(
      percent / 100,
      12,
    )
  })

  test.each<[string, CookingMethod, number]>([
    ['5001', 'kept overnight', 70],
    ['5002', 'stirred in off the heat', 85],
    ['5003', 'flamed', 75],
    ['5010', 'baked on top', 45],
  ])('code %s, %s, leaves %d percent', (_code, method, percent) => {
    expect(retainedAfter(method).get('alcohol')?.value).toBeCloseTo(percent / 100, 12)
  })
})

describe('USDA retention factors, Release 6, minerals: calcium, iron, potassium, sodium', () => {
  const minerals = ['calcium', 'iron', 'potassium', 'sodium'] as const

  // 100: the table prints it, or has no figure for the mineral.
  test.each<[string, CookingMethod, readonly number[]]>([
    ['0501', 'pulses boiled briefly, drained', [85, 85, 75, 90]],
    ['0521', 'pulses boiled long, drained', [85, 80, 70, 90]],
    ['3307', 'potatoes boiled in their skins', [95, 95, 90, 95]],
    ['3004', 'greens in little water, drained', [95, 95, 100, 95]],
    ['3005', 'greens boiled, drained', [95, 95, 100, 95]],
    ['0154', 'fruit preserved in jars', [95, 100, 90, 100]],
  ])('code %s, %s', (_code, method, percent) => {
    const retained = retainedAfter(method)
    const left = minerals.map((mineral) => 100 * (retained.get(mineral)?.value ?? 1))
    for (const [index, each] of percent.entries()) expect(left[index]).toBeCloseTo(each, 10)
  })

  test('the table covers no protein, fat, carbohydrate, fibre or energy', () => {
    const macros: readonly Nutrient[] = ['protein', 'fat', 'carbohydrate', 'fibre', 'energy']
    const retained = retainedAfter('pulses boiled long, drained')
    expect(macros.filter((nutrient) => retained.has(nutrient))).toEqual([])
  })
})

// Worked by hand from USDA SR28 14096, red wine: 10.6 g alcohol, 2.61 g carbohydrate and 85 kcal in
// 100 g; 6.93 kcal a gram of alcohol as the release has it.
test('240 g of red wine simmered for an hour keep 6.36 g of alcohol and its 44 kcal', () => {
  const wine = coreFood('14096')
  const sauce = recipe('sauce', [line(wine.name, 240, {simmeredMinutes: at(60)})], {serves: at(1)})
  const batch = computeCookbook(cookbook([wine], [sauce])).computed.get('sauce')?.batch
  expect(batch?.alcohol.value).toBeCloseTo(6.36, 10)
  expect((batch?.alcohol.value ?? NaN) * 6.93).toBeCloseTo(44.07, 2)
  // 204 kcal less three quarters of 176.3.
  expect(batch?.energy.value).toBeCloseTo(204 - 0.75 * 25.44 * 6.93, 8)
  expect(batch?.carbohydrate.value).toBeCloseTo(6.264, 10)
})
