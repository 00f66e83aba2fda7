import {expect, test} from 'vitest'
import {coreTable} from '../../src/food/core-table.ts'
import type {Food} from '../../src/food/food.ts'
import {macroDistanceKcal, NearestFoods} from '../../src/food/nearest-foods.ts'
import {food} from '../kitchen.ts'

const core = coreTable('us')

function per100g(name: string) {
  const found = core.lookUp(name)
  if (!found) throw new Error(`${name} is not in the table`)
  return found.per100g
}

test('the distance is in kcal of macros', () => {
  // USDA SR28 (2015): 01001 butter 0.85 g protein, 81.11 g fat, 0.06 g carbohydrate, fibre 0;
  // 04053 olive oil 0, 100 and 0 g. √((0.85 × 4)² + (18.89 × 9)² + (0.06 × 4)²) = 170.0 kcal.
  expect(macroDistanceKcal(per100g('usda/01001'), per100g('usda/04053'))).toBeCloseTo(170, 0)
})

test('carbohydrate is compared without fibre where both have it so, else with', () => {
  const eu = food('eu', {protein: 1, fat: 1, availableCarbohydrate: 10}).per100g
  const both = food('both', {protein: 1, fat: 1, availableCarbohydrate: 12, carbohydrate: 20})
  const us = food('us', {protein: 1, fat: 1, carbohydrate: 21}).per100g
  expect(macroDistanceKcal(eu, both.per100g)).toBeCloseTo(8)
  expect(macroDistanceKcal(us, both.per100g)).toBeCloseTo(4)
  expect(macroDistanceKcal(us, eu)).toBeUndefined()
})

test('an unknown macro is not 0: its food is left out', () => {
  const wanted = food('wanted', {protein: 0, fat: 5, carbohydrate: 5}).per100g
  const unknownProtein = food('blank', {fat: 5, carbohydrate: 5})
  const far = food('far', {protein: 40, fat: 5, carbohydrate: 5})
  const near = food('near', {protein: 1, fat: 5, carbohydrate: 5})
  expect(nearest(wanted, [unknownProtein, far, near], 5)).toEqual([
    {food: near, distanceKcal: 4},
    {food: far, distanceKcal: 160},
  ])
  expect(nearest(wanted, [far, near], 1)).toHaveLength(1)
})

test('of a thousand foods, in any order, the nearest are kept', () => {
  const wanted = food('wanted', {protein: 0, fat: 0, carbohydrate: 0}).per100g
  const foods = Array.from({length: 1_000}, (_, index) =>
    // 617 has no factor in common with 1,000: every whole number from 0 to 999 comes once.
    food(`food ${index}`, {protein: ((index * 617) % 1_000) / 100, fat: 0, carbohydrate: 0}),
  )
  const distances = nearest(wanted, foods, 3).map(({distanceKcal}) => distanceKcal)
  expect(distances).toEqual([0, 0.04, 0.08])
})

function nearest(...[figures, foods, most]: [Food['per100g'], readonly Food[], number]) {
  const near = new NearestFoods(figures, most)
  for (const each of foods) near.add(each)
  return near.nearest
}
