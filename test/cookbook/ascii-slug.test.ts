import {expect, test} from 'vitest'
import {asciiSlug, uniqueAnchor} from '../../src/cookbook/ascii-slug.ts'

test.each([
  ['pearl barley', 'pearl-barley'],
  ['beef mince, 20 % fat', 'beef-mince-20-fat'],
  ['Crème fraîche', 'creme-fraiche'],
  ['baker’s yeast', 'bakers-yeast'],
  ['smørrebrød & Weißbier', 'smorrebrod-weissbier'],
  ['  -- ½ lemon --  ', '1-2-lemon'],
  ['ﬁg', 'fig'],
  ['大麦', ''],
  ['"><script>', 'script'],
])('the anchor of %s is %s', (text, anchor) => {
  expect(asciiSlug(text)).toBe(anchor)
})

test('an anchor that is taken gets the next number that is free', () => {
  const taken = new Set(['sauce', 'sauce-2'])
  expect(uniqueAnchor('sauce', taken)).toBe('sauce-3')
  expect(uniqueAnchor('sauce', taken)).toBe('sauce-4')
  expect(uniqueAnchor('dough', taken)).toBe('dough')
})
