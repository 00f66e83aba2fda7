import {expect, test} from 'vitest'
import {coreTable} from '../../src/food/core-table.ts'
import {findFoods} from '../../src/food/find-foods.ts'
import {food} from '../kitchen.ts'

const core = coreTable('us').foods()

function found(written: string, foods = core): readonly string[] {
  return findFoods(written, foods, 5).map(({name}) => name)
}

test.each([
  ['zuchini', 'courgette'],
  ['pearl barly', 'pearl barley'],
  ['leg, chicken skinless', 'chicken leg, skinless'],
])('%s finds %s first, whichever name it has', (written, name) => {
  expect(found(written)[0]).toBe(name)
})

test('a long name is found by any of its words, begun or whole', () => {
  const long = food('fowl, domestic, thigh and drumstick without skin, braised in stock', {})
  expect(found('drumst thigh', [food('thyme', {}), long])).toEqual([long.name])
  expect(found('drumst thyme', [long])).toEqual([])
})

test('each food stands once, whatever it is called beside', () => {
  const oats = food('rolled oats', {}, {also: ['oat flakes', 'oats, rolled']})
  expect(found('rolled oats', [oats])).toEqual(['rolled oats'])
})

test('foods of two tables that share a name are both found', () => {
  const [one, other] = [food('millet', {}, {id: 'a/1'}), food('millet', {}, {id: 'b/1'})]
  expect(findFoods('millet', [one, other], 5)).toEqual([one, other])
})

test('nothing is like what no food is called, and the answer is no longer than asked', () => {
  expect(found('xylophone')).toEqual([])
  expect(found('  ')).toEqual([])
  expect(findFoods('cheese', core, 3)).toHaveLength(3)
})
