import {expect, test} from 'vitest'
import {isComplete} from '../../src/food/figures.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {netCarbohydrate} from '../../src/nutrition/net-carbohydrate.ts'
import {cookbook, food, line, recipe} from '../kitchen.ts'

const bar = food('bar', {carbohydrate: 60, availableCarbohydrate: 50, polyols: 20})
const oats = food('oats', {carbohydrate: 68, availableCarbohydrate: 58})
const sauce = food('sauce', {carbohydrate: 10})

function netOf(...names: readonly string[]) {
  const dish = recipe(
    'dish',
    names.map((name) => line(name, 100)),
  )
  const {computed} = computeCookbook(cookbook([bar, oats, sauce], [dish]))
  const found = computed.get('dish')
  if (found === undefined) throw new Error('the dish was not computed')
  return netCarbohydrate(found.batch)
}

test('Fibre and polyols come off, polyols of a food that has no figure for them counting as none', () => {
  // 50 − 20 of the bar and 58 of the oats.
  expect(netOf('bar', 'oats').value).toBeCloseTo(88, 10)
  expect(isComplete(netOf('bar', 'oats'))).toBe(true)
})

test('A food whose fibre nobody knows leaves it unknown', () => {
  expect([...netOf('oats', 'sauce').missing]).toEqual(['sauce'])
})
