import {describe, expect, test} from 'vitest'
import type {ShoppingData} from '../../src/shopping/shopping-data.ts'
import {shoppingList} from '../../src/shopping/shopping-list.ts'
import {
  fnv1a,
  joinedParts,
  partCount,
  partOfSlug,
  shoppingParts,
} from '../../src/shopping/shopping-parts.ts'

/** Recipes that each need a food of their own, flour, and a component of the same name. */
function data(count: number): ShoppingData {
  return {
    foods: [
      {name: 'flour', aisle: 'baking', packGrams: 1000, price: 1},
      ...Array.from({length: count}, (_, index) => ({
        name: `food ${index}`,
        aisle: 'other' as const,
      })),
    ],
    recipes: Array.from({length: count}, (_, index) => ({
      slug: `recipe-${index}`,
      title: `Recipe ${index}`,
      serves: 4,
      needs: [
        {food: index + 1, grams: 100 + index},
        {food: 0, grams: 50},
      ],
      makes: [],
    })),
  }
}

const whole = data(700)
const parts = shoppingParts(whole)

// Test vectors of the FNV-1a 32-bit hash, as its authors publish them (RFC 9923, from memory).
test.each([
  ['', 0x811c9dc5],
  ['a', 0xe40c292c],
  ['foobar', 0xbf9cf968],
])('the hash of %j is the published one', (text, hash) => expect(fnv1a(text)).toBe(hash))

describe('shopping data in parts', () => {
  test('are as many as leave a few dozen recipes to each', () => {
    expect([1, 32, 33, 700, 10_000].map(partCount)).toEqual([1, 1, 2, 32, 512])
    const sizes = parts.map(({recipes}) => recipes.length)
    expect(Math.min(...sizes)).toBeGreaterThan(5)
    expect(Math.max(...sizes)).toBeLessThan(50)
  })

  test('hold each recipe where its slug says', () => {
    for (const {slug} of whole.recipes) {
      const part = parts[partOfSlug(slug, parts.length)]
      expect(part?.recipes.map((recipe) => recipe.slug)).toContain(slug)
    }
    expect(parts.flatMap(({recipes}) => recipes)).toHaveLength(700)
  })

  test('give the list that the whole gives, from the parts of what is wanted alone', () => {
    const wanted = [
      {slug: 'recipe-3', servings: 4},
      {slug: 'recipe-500', servings: 2},
      {slug: 'recipe-77', servings: 9},
    ]
    const needed = new Set(wanted.map(({slug}) => partOfSlug(slug, parts.length)))
    const some = joinedParts(parts.filter((_, number) => needed.has(number)))
    expect(some.recipes.length).toBeLessThan(150)
    expect(shoppingList(some, wanted)).toEqual(shoppingList(whole, wanted))
  })

  test('stay as they are when another recipe comes', () => {
    const after = shoppingParts(data(701))
    expect(parts.filter((part, number) => !same(part, after[number]))).toHaveLength(1)
  })

  test('of two builds never share a food that has become another', () => {
    const dearer: ShoppingData = {
      ...whole,
      foods: whole.foods.map((food) => (food.name === 'flour' ? {...food, price: 2} : food)),
    }
    const [first, second] = [parts[0], shoppingParts(dearer)[1]]
    const joined = joinedParts([first, second].flatMap((part) => part ?? []))
    expect(joined.foods.filter(({name}) => name === 'flour').map(({price}) => price)).toEqual([
      1, 2,
    ])
  })
})

function same(left: unknown, right: unknown): boolean {
  return JSON.stringify(left) === JSON.stringify(right)
}
