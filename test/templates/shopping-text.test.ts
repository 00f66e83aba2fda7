import {expect, test} from 'vitest'
import type {ShoppingList} from '../../src/shopping/shopping-list.ts'
import {listWords} from '../../templates/parts/shopping-list.tsx'
import {listText} from '../../templates/parts/shopping-text.ts'
import {sampleSite} from './sample.ts'

const words = listWords(sampleSite())

/** An egg of 50 g edible portion with 12 % shell (USDA SR28, 01123), as bought. */
const piece = {size: '', grams: 50 / 0.88}

function listOf(grams: number, optionalGrams: number): ShoppingList {
  return {aisles: [{aisle: 'eggs', lines: [{name: 'egg', grams, optionalGrams, piece}]}], make: []}
}

// By hand: 4 eggs are 4 × 50 ÷ 0.88 = 227.3 g, which a shopper reads as 230 g; 230 g would be 4.05.
test.each([
  ['needed', listOf(4 * piece.grams, 0), ['about 4']],
  ['only if wanted', listOf(0, 4 * piece.grams), ['if wanted', 'about 4']],
  ['a bit more than four', listOf(4.2 * piece.grams, 0), ['about 5']],
])('eggs are counted before their weight is rounded up: %s', (_case, list, notes) => {
  const [row] = listText(list, words).groups.flatMap(({rows}) => rows)
  expect(row?.notes).toEqual(notes)
})

test('the weight is rounded up to what is easy to ask for', () => {
  const [row] = listText(listOf(4 * piece.grams, 0), words).groups.flatMap(({rows}) => rows)
  expect(row?.amount).toBe('230 g')
})
