import {describe, expect, test} from 'vitest'
import {
  type Dish,
  isAlike,
  isFound,
  meantBy,
  type Query,
} from '../../../templates/browser/finding/find.ts'
import {plainWords} from '../../../templates/parts/plain-words.ts'

const vocabulary = ['scones', ...plainWords('Crème brûlée, low-fat skyr')]

const dish: Dish = {
  words: [1, 2, 3, 4, 5],
  figures: {
    energy: {value: 400, isComplete: true},
    fibre: {value: 4, isComplete: false},
  },
  tags: ['pudding'],
  diets: ['vegetarian'],
  allergens: ['milk', 'egg'],
  isOpen: false,
}

function found(query: Partial<Query>, more: Partial<Dish> = {}): boolean {
  return isFound({...dish, ...more}, {words: [], most: {}, least: {}, without: [], ...query})
}

describe('a dish is found', () => {
  test('by nothing at all', () => expect(found({})).toBe(true))

  test.each([['creme'], ['BRULEE'], ['low fat'], ['sky'], ['skyr'], ['cremé brule'], ['burlee']])(
    'by %s',
    (typed) => expect(found({words: meantBy(typed, vocabulary)})).toBe(true),
  )

  test.each([['egg'], ['scone'], ['creme caramel'], ['sxyz']])('not by %s', (typed) =>
    expect(found({words: meantBy(typed, vocabulary)})).toBe(false),
  )

  test('up to its very figure, and not below', () => {
    expect(found({most: {energy: 400}})).toBe(true)
    expect(found({most: {energy: 399}})).toBe(false)
    expect(found({least: {energy: 400}})).toBe(true)
    expect(found({least: {energy: 401}})).toBe(false)
  })

  test('by a lower bound that is enough, but never as "at most" by one', () => {
    expect(found({least: {fibre: 4}})).toBe(true)
    expect(found({most: {fibre: 10}})).toBe(false)
  })

  test('not by a figure that nobody knows', () => {
    expect(found({most: {cost: 100}})).toBe(false)
    expect(found({least: {cost: 1}})).toBe(false)
  })

  test('by tag and diet', () => {
    expect(found({tag: 'pudding', diet: 'vegetarian'})).toBe(true)
    expect(found({tag: 'soup'})).toBe(false)
    expect(found({diet: 'vegan'})).toBe(false)
  })

  test('without an allergen only where it is known to hold none of the group', () => {
    expect(found({without: ['peanut']})).toBe(true)
    expect(found({without: ['peanut', 'egg']})).toBe(false)
    expect(found({without: ['peanut']}, {isOpen: true})).toBe(false)
  })
})

// Damerau (1964): one wrong, missing, added letter or two swapped are most slips of the pen.
test.each([
  ['lentel', 'lentil', true],
  ['letnil', 'lentil', true],
  ['lenil', 'lentil', true],
  ['lenntil', 'lentil', true],
  ['lemon', 'melon', false],
  ['chikpaes', 'chickpeas', true],
  ['oat', 'oil', false],
])('%s may mean %s: %s', (typed, word, expected) => expect(isAlike(typed, word)).toBe(expected))
