import {describe, expect, test} from 'vitest'
import {type FoodIndex, foodIndex, type OwnFoods} from '../../src/food/food-index.ts'
import {importTable} from '../../src/food/import-table.ts'
import {nameKey} from '../../src/food/name-key.ts'
import {publishedFoods} from '../../src/food/published-foods.ts'
import {food} from '../kitchen.ts'

const {table: lab} = importTable('id\tname\tfat_g\nA7\tLard of the house\t99\n', 'Lab')
const noOwn: OwnFoods = {foods: [], refused: []}

function index(own: OwnFoods = noOwn): FoodIndex {
  return foodIndex(own, publishedFoods([lab], 'us'))
}

describe('A name means', () => {
  const own = food('Plain  flour', {}, {id: 'own/plain flour', also: ['house flour']})
  const foods = index({foods: [own], refused: ['strong flour']})

  test('the writer’s own food before a food of the table', () => {
    expect(foods.lookUp('plain flour')).toBe(own)
    expect(foods.lookUp('house flour')).toBe(own)
    expect(index().lookUp('plain flour')?.id).toBe('usda/20081')
  })

  test('a food of the table by its name or another name', () => {
    expect(foods.lookUp('all-purpose flour')?.id).toBe('usda/20081')
    expect(foods.lookUp('zucchini')).toBe(foods.lookUp('courgette'))
  })

  test('a row of a table by its qualified id', () => {
    expect(foods.lookUp('usda/20081')?.name).toBe('plain flour')
    expect(foods.lookUp('core/erythritol')?.name).toBe('erythritol')
    expect(foods.lookUp('lab/a7')?.name).toBe('Lard of the house')
  })

  test('the same with other capitals, blanks, accents and apostrophes', () => {
    expect(foods.lookUp('  PLAIN FLOUR ')).toBe(own)
    expect(foods.lookUp('Courgette')?.name).toBe('courgette')
    expect(nameKey('cre\u0300me frai\u0302che')).toBe(nameKey('crème fraîche'))
    expect(nameKey('baker’s  Yeast')).toBe("baker's yeast")
  })

  test('nothing when it is not exactly a name: no guess, no part of a name, no bare id', () => {
    for (const name of [
      'plain flor',
      'flour of the mill',
      '20081',
      'usda/',
      'lab/',
      '/',
      '',
      'A7',
    ]) {
      expect(index().lookUp(name)).toBeUndefined()
    }
    expect(foods.lookUp('Lard of the house')).toBeUndefined()
  })

  test('nothing while the writer’s own food of that name cannot be understood', () => {
    expect(foods.lookUp('Strong flour')).toBeUndefined()
    expect(foods.isRefused('Strong flour')).toBe(true)
    expect(foods.isRefused('plain flour')).toBe(false)
    expect(index().lookUp('strong flour')).toBeDefined()
  })
})

test('A brought table goes before a built-in one of the same name, row by row', () => {
  const {table} = importTable('id\tname\n20081\tFlour of the mill\n', 'usda')
  const published = publishedFoods([table], 'us')
  expect(published.lookUp('usda/20081')?.name).toBe('Flour of the mill')
  expect(published.lookUp('usda/20080')?.id).toBe('usda/20080')
  expect(published.lookUp('plain flour')?.provenance).toMatchObject({table: 'USDA SR28'})
})

describe('The nearest names', () => {
  test.each([
    ['flour, plain', 'plain flour'],
    ['zuchini', 'zucchini'],
    ['brocoli', 'broccoli'],
    ['tumeric', 'turmeric'],
    ['skimed milk powder', 'skimmed milk powder'],
  ])('%s: %s', (written, meant) => {
    expect(index().nearest(written, 3)[0]).toBe(meant)
  })

  test('are names of different foods, and each can be looked up', () => {
    const foods = index()
    const near = foods.nearest('tomatos', 5)
    expect(near.length).toBeGreaterThan(1)
    const found = near.map((name) => foods.lookUp(name)?.id)
    expect(new Set(found).size).toBe(near.length)
    expect(found).not.toContain(undefined)
  })

  test('have the writer’s own names among them, but not those that cannot be understood', () => {
    const foods = index({foods: [food('quark of the house', {})], refused: ['quark of the hause']})
    expect(foods.nearest('quark of the hous', 3)[0]).toBe('quark of the house')
    expect(foods.nearest('quark of the hous', 3)).not.toContain('quark of the hause')
  })
})

test('Own foods are listed in name order', () => {
  const own = ['skyr', 'Apple butter', 'oat crackers'].map((name) => food(name, {}))
  expect(index({foods: own, refused: []}).own.map(({name}) => name)).toEqual([
    'Apple butter',
    'oat crackers',
    'skyr',
  ])
})
