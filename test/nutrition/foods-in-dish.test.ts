import {expect, test} from 'vitest'
import type {IngredientLine} from '../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {foodsInDish, listedFoods} from '../../src/nutrition/foods-in-dish.ts'
import {at, cookbook, food, grams, line, recipe} from '../kitchen.ts'

const foods = ['flour', 'butter', 'oil', 'nuts', 'milk'].map((name) => food(name, {energy: 100}))

const dough = recipe(
  'dough',
  [
    line('flour', 100),
    line('butter', 50, {instead: [{name: at('oil'), amount: at(grams(40))}]}),
    line('nuts', 10, {isOptional: true}),
  ],
  {batch: at(grams(150))},
)

function dishOf(...lines: readonly IngredientLine[]) {
  const dish = recipe('dish', lines, {serves: at(1)})
  const computed = computeCookbook(cookbook(foods, [dough, dish])).computed.get('dish')
  if (computed === undefined) throw new Error('not computed')
  return computed
}

const base = line('base', 50, {recipe: at('dough')})
const lid = line('lid', 50, {recipe: at('dough')})

test('a component that two lines use is in both', () => {
  const found = foodsInDish(dishOf(base, line('milk', 10), lid))
  const byLine = (name: string) =>
    found.filter(({line}) => line.line.name.value === name).map(({food}) => food.name)
  expect(byLine('base')).toEqual(['flour', 'butter', 'oil', 'nuts'])
  expect(byLine('lid')).toEqual(['flour', 'butter', 'oil', 'nuts'])
  expect(byLine('milk')).toEqual(['milk'])
})

test('what is optional and what may stand instead are told apart, in a component too', () => {
  const found = foodsInDish(dishOf(base))
  const manner = found.map(({food, isByChoice, isAlternative}) => [
    food.name,
    isByChoice,
    isAlternative,
  ])
  expect(manner).toEqual([
    ['flour', false, false],
    ['butter', false, false],
    ['oil', true, true],
    ['nuts', true, false],
  ])
})

test('listed are the foods of every line, not those that only may stand instead', () => {
  const names = (...lines: readonly IngredientLine[]) =>
    [...listedFoods(dishOf(...lines))].map(({name}) => name)
  expect(names(base, lid)).toEqual(['flour', 'butter', 'nuts'])
  expect(names(line('milk', 10, {isOptional: true}))).toEqual(['milk'])
  const instead = [{name: at('lid'), recipe: at('dough'), amount: at(grams(50))}]
  expect(names(line('milk', 10, {instead}))).toEqual(['milk'])
  // The same component for sure, after it stood as an alternative.
  expect(names(line('milk', 10, {instead}), base)).toEqual(['milk', 'flour', 'butter', 'nuts'])
})
