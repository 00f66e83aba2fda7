import {expect, test} from 'vitest'
import {nameWords} from '../../../src/check/method/ingredient-words.ts'
import {stemOf, wordsOf} from '../../../src/check/method/words.ts'

test.each([
  ['tomato', 'tomatoes'],
  ['leaf', 'leaves'],
  ['olive', 'olives'],
  ['berry', 'berries'],
  ['radish', 'radishes'],
  ['egg', 'Eggs'],
  ['purée', 'puree'],
  ['slice', 'slices'],
])('%s and %s are one word', (left, right) => {
  expect(stemOf(left)).toBe(stemOf(right))
})

test.each([
  ['rice', 'rise'],
  ['bean', 'beer'],
  ['oat', 'goat'],
  ['pea', 'pear'],
])('%s and %s are two', (left, right) => {
  expect(stemOf(left)).not.toBe(stemOf(right))
})

test('words know where they stand', () => {
  const text = 'Add half-fat crème fraîche.'
  expect(wordsOf(text).map(({from, to}) => text.slice(from, to))).toEqual([
    'Add',
    'half',
    'fat',
    'crème',
    'fraîche',
  ])
})

test.each([
  ['pearl barley', ['pearl', 'barley']],
  ['chicken thigh, skinless', ['chicken', 'thigh']],
  ['flour for the sauce', ['flour']],
  ['black pepper', ['pepper']],
  ['egg white', ['egg', 'white']],
])('%s is named by %j', (name, nouns) => {
  expect([...nameWords(name).nouns]).toEqual(nouns.map(stemOf))
})
