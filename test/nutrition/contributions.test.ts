/** Who brings what to a dish, and which dishes hold a food. */

import {expect, test} from 'vitest'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {contributions} from '../../src/nutrition/contributions.ts'
import {usesOfFood} from '../../src/nutrition/uses-of-food.ts'
import {at, cookbook, food, grams, line, recipe} from '../kitchen.ts'

const oats = food('oats', {energy: 400, fat: 5})
const oil = food('oil', {energy: 900, fat: 100})
const water = food('water', {energy: 0, fat: 0})
const cream = food('cream', {energy: 300, fat: 30})

const weighed = {serves: at(2), batch: at(grams(200))}

function computedOf(...recipes: Parameters<typeof cookbook>[1]) {
  const {computed, problems} = computeCookbook(cookbook([oats, oil, water, cream], recipes))
  expect(problems).toEqual([])
  return computed
}

test('counted lines that bring something are named, most first', () => {
  const [dish] = computedOf(
    recipe('dish', [
      line('water', 100),
      line('oil', 10),
      line('oats', 100),
      line('cream', 500, {isOptional: true}),
    ]),
  ).values()
  if (!dish) throw new Error('not computed')
  const brought = (nutrient: 'energy' | 'fat') =>
    contributions(dish, nutrient).map((one) => [one.line.line.name.value, one.value])
  expect(brought('energy')).toEqual([
    ['oats', 400],
    ['oil', 90],
  ])
  expect(brought('fat')).toEqual([
    ['oil', 10],
    ['oats', 5],
  ])
})

test('of what stays in the pot nobody is given a share', () => {
  const [dish] = computedOf(
    recipe('dish', [line('oats', 200)], {...weighed, leftBehind: at(grams(50))}),
  ).values()
  const [first] = dish ? contributions(dish, 'energy') : []
  expect(first?.value).toBeCloseTo(800 * 0.8, 6)
})

test('a food is found in every dish that holds it, by the nearest way', () => {
  const computed = computedOf(
    recipe('base', [line('oats', 100), line('oil', 10)], weighed),
    recipe('through', [line('base', 100, {recipe: at('base')})], weighed),
    recipe('chosen', [line('oil', 10), line('oats', 10, {isOptional: true})]),
    recipe('both', [
      line('the base', 100, {recipe: at('base')}),
      line('oats', 10, {isOptional: true}),
    ]),
    recipe('itself', [line('base', 100, {recipe: at('base')}), line('oats', 10)]),
    recipe('without', [line('oil', 10)]),
  )
  const uses = usesOfFood(oats, computed.values()).map((use) => [
    use.computed.recipe.slug,
    use.through,
    use.isByChoice,
  ])
  expect(uses).toEqual([
    ['base', undefined, false],
    ['through', 'base', false],
    ['chosen', undefined, true],
    ['both', 'base', false],
    ['itself', undefined, false],
  ])
})
