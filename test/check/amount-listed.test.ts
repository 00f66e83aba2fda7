import {expect, test} from 'vitest'
import {amountListed} from '../../src/check/rules/amount-listed.ts'
import type {Passage} from '../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, line, nowhere, recipe} from '../kitchen.ts'

const foods = [
  food('carrot', {energy: 41}),
  food('rapeseed oil', {energy: 884}, {measures: new Map([['tbsp', 14]])}),
  food('butter', {energy: 717}),
  food('salt', {energy: 0}),
]

function reasons(step: string, ...names: readonly string[]): readonly string[] {
  const passages: readonly Passage[] = [
    {kind: 'step', text: step, place: nowhere, stretches: [], lineStarts: [0]},
  ]
  const lines = names.map((name) => line(name, 100))
  const dish = recipe('dish', lines, {serves: at(1)})
  const book = cookbook(foods, [{...dish, method: {...dish.method, passages}}])
  const {computed: all} = computeCookbook(book)
  const computed = all.get('dish')
  if (!computed) throw new Error('not computed')
  return Array.from(
    amountListed.check({recipe: computed.recipe, computed, cookbook: book, all}),
    ({reason}) => reason,
  )
}

test('oil that only the method names is told, with what it adds', () => {
  // 2 × 14 g at 884 kcal per 100 g.
  expect(reasons('Fry the carrot in 2 tbsp oil.', 'carrot')).toEqual([
    'Amount `2 tbsp` of `rapeseed oil` in the method, expected it on the list: it adds about `248 kcal`',
  ])
})

test.each([
  ['a listed food, whatever the method says of it', 'Melt 100 g of the butter.', 'butter'],
  ['a food that gives no energy', 'Add 10 g salt to the carrot.', 'carrot'],
  ['a trace', 'Brush the carrot with 2 g butter.', 'carrot'],
  ['words that are no food', 'Roll the carrot in 100 g rounds.', 'carrot'],
  ['an amount of nothing', 'Cut the carrot; it will lose 30 g.', 'carrot'],
])('%s is not told', (_, step, name) => {
  expect(reasons(step, name)).toEqual([])
})
