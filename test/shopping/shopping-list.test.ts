import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {batchCost} from '../../src/shopping/cost.ts'
import {shoppingData} from '../../src/shopping/shopping-data.ts'
import {listCost, type ShoppingList, shoppingList} from '../../src/shopping/shopping-list.ts'
import {cookbook} from '../templates/sample.ts'

const {computed} = computeCookbook(cookbook)
const data = shoppingData(computed)

function grams(list: ShoppingList): Record<string, number> {
  return Object.fromEntries(
    list.aisles.flatMap(({lines}) => lines).map(({name, grams}) => [name, Math.round(grams)]),
  )
}

function line(list: ShoppingList, name: string) {
  return list.aisles.flatMap(({lines}) => lines).find((one) => one.name === name)
}

describe('a shopping list', () => {
  // By hand, for 8 servings of the barley pot (serves 4), so two batches: 2 × 600 g chicken,
  // 2 × 180 g barley; 2 × 900 g stock of a batch of 1000 g that takes 500 g carrots, prepared:
  // 900 g prepared, which at 11 % refuse are 900 ÷ 0.89 = 1011 g as bought.
  test('sums through components', () => {
    const list = shoppingList(data, [{slug: 'barley-pot', servings: 8}])
    expect(grams(list)).toMatchObject({
      'chicken thigh, skinless': 1200,
      'pearl barley': 360,
      carrot: 1011,
      'pepper paste': 60,
    })
  })

  // 4 of barley pot need 180 g barley, 4 of the classic 200 g.
  test('sums across recipes', () => {
    const list = shoppingList(data, [
      {slug: 'barley-pot', servings: 4},
      {slug: 'classic-pot', servings: 4},
    ])
    expect(line(list, 'pearl barley')?.grams).toBeCloseTo(380, 6)
  })

  test('says how much of a component to make', () => {
    const {make} = shoppingList(data, [{slug: 'barley-pot', servings: 2}])
    expect(make).toEqual([{slug: 'brown-stock', title: 'Brown stock', grams: 450, batches: 0.45}])
  })

  test('takes a component by the batch', () => {
    const list = shoppingList(data, [{slug: 'brown-stock', servings: 2}])
    expect(grams(list)).toEqual({carrot: 1124})
  })

  test('leaves tap water at home', () => {
    const list = shoppingList(data, [{slug: 'brown-stock', servings: 1}])
    expect(line(list, 'water')).toBeUndefined()
  })

  test('keeps what is optional apart, and buys what is not counted', () => {
    const list = shoppingList(data, [{slug: 'barley-pot', servings: 4}])
    expect(line(list, 'parsley')).toMatchObject({grams: 0, optionalGrams: 10})
    expect(line(list, 'wheat flour')).toMatchObject({grams: 3, optionalGrams: 0})
  })

  test('counts packs and what is left of them', () => {
    const list = shoppingList(data, [{slug: 'classic-pot', servings: 12}])
    expect(line(list, 'pearl barley')?.packs).toEqual({
      count: 2,
      packGrams: 500,
      leftGrams: 400,
      price: 2.4,
    })
  })

  test('does not buy another pack for a full one', () => {
    const list = shoppingList(data, [{slug: 'classic-pot', servings: 10}])
    expect(line(list, 'pearl barley')?.packs).toEqual({
      count: 1,
      packGrams: 500,
      leftGrams: 0,
      price: 1.2,
    })
  })

  test('stands in the order of the shop', () => {
    const list = shoppingList(data, [{slug: 'barley-pot', servings: 4}])
    expect(list.aisles.map(({aisle}) => aisle)).toEqual([
      'vegetables',
      'fruit',
      'herbs and spices',
      'poultry',
      'grains',
      'baking',
      'condiments',
    ])
  })

  test('of nothing is empty', () => {
    expect(shoppingList(data, [{slug: 'barley-pot', servings: 0}])).toEqual({aisles: [], make: []})
    expect(shoppingList(data, [{slug: 'no such recipe', servings: 4}])).toEqual({
      aisles: [],
      make: [],
    })
    expect(shoppingList(data, [{slug: 'barley-pot', servings: Number.NaN}]).aisles).toEqual([])
  })

  test('for two orders is the sum of their lists', () => {
    const servings = fc.integer({min: 0, max: 40})
    fc.assert(
      fc.property(servings, servings, (pot, classic) => {
        const both = shoppingList(data, [
          {slug: 'barley-pot', servings: pot},
          {slug: 'classic-pot', servings: classic},
        ])
        const one = shoppingList(data, [{slug: 'barley-pot', servings: pot}])
        const other = shoppingList(data, [{slug: 'classic-pot', servings: classic}])
        for (const {name, grams} of both.aisles.flatMap(({lines}) => lines)) {
          const sum = (line(one, name)?.grams ?? 0) + (line(other, name)?.grams ?? 0)
          expect(grams).toBeCloseTo(sum, 6)
        }
      }),
    )
  })
})

describe('what is bought costs', () => {
  const none: ReadonlySet<string> = new Set()

  test('its whole packs, and at least that while a price is missing', () => {
    // Three batches of 200 g: 600 g barley, two packs at 1.20; chicken and butter have no price.
    const list = shoppingList(data, [{slug: 'classic-pot', servings: 12}])
    expect(listCost(list, none)).toEqual({amount: 2.4, isComplete: false})
    const unpriced = new Set(['chicken thigh, skinless', 'butter'])
    expect(listCost(list, unpriced)).toEqual({amount: 2.4, isComplete: true})
    expect(listCost(list, new Set(['pearl barley']))).toBeUndefined()
  })

  test('of a recipe its share of the pack', () => {
    const [stock, pot] = ['brown-stock', 'classic-pot'].map((slug) =>
      data.recipes.find((recipe) => recipe.slug === slug),
    )
    if (!stock || !pot) throw new Error('the sample lacks its recipes')
    // 200 of 500 g at 1.20.
    expect(batchCost(pot, data)?.amount).toBeCloseTo(0.48, 10)
    expect(batchCost(pot, data)?.isComplete).toBe(false)
    expect(batchCost(stock, data)).toBeUndefined()
  })
})
