import {expect, test} from 'vitest'
import {dietOf, leavesSomethingOpen} from '../../../src/check/absences/diet.ts'
import {coreTable} from '../../../src/food/core-table.ts'
import {food} from '../../kitchen.ts'

const core = coreTable('eu')

function isOpen(diet: string, ...names: string[]): boolean {
  const meant = dietOf(diet)
  const foods = names.map((name) => core.lookUp(name) ?? food(name, {}, {from: ['dairy']}))
  if (!meant) throw new Error(`No diet ${diet}`)
  return leavesSomethingOpen(meant, foods)
}

// Rennet sets cheese, and nothing else of milk; fining clears wine and vinegar (common practice, no
// source).
test.each([
  ['vegetarian', 'parmesan', true],
  ['vegetarian', 'cottage cheese', true],
  ['vegetarian', 'cream cheese', true],
  ['vegetarian', 'feta', true],
  ['vegetarian', 'a cheese from the market', true],
  ['vegetarian', 'whole milk', false],
  ['vegetarian', 'whole-milk yoghurt, plain', false],
  ['vegetarian', 'butter', false],
  ['vegetarian', 'sour cream', false],
  ['vegetarian', 'white wine', false],
  ['vegetarian', 'lentils', false],
  ['vegan', 'white wine', true],
  ['vegan', 'balsamic vinegar', true],
  ['vegan', 'portobello mushroom', false],
  ['vegan', 'lentils', false],
  ['gluten-free ingredients', 'lentils', true],
  ['pescatarian', 'white wine', false],
] as const)('%s with %s leaves something open: %s', (diet, name, expected) => {
  expect(isOpen(diet, name)).toBe(expected)
  expect(isOpen(diet, 'carrot', name)).toBe(expected)
})

test('of milk’s own shelf, all that rennet may have set, and no more', () => {
  const dairy = core.foods().filter(({aisle}) => aisle === 'dairy')
  const open = dairy.filter(({name}) => isOpen('vegetarian', name)).map(({name}) => name)
  expect(open).toEqual(expect.arrayContaining(['brie', 'gouda', 'ricotta', 'queso fresco']))
  const plain = dairy.map(({name}) => name).filter((name) => !open.includes(name))
  expect(plain.filter((name) => /cheese|cheddar|mozzarella|parmesan/.test(name))).toEqual([])
  expect(open.filter((name) => /\b(?:yoghurt|milk|butter)\b/.test(name))).toEqual([])
})
