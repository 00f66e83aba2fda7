/** Lines whose weight or loss nobody can tell, and what is said of them. */

import {describe, expect, test} from 'vitest'
import type {IngredientLine, Recipe} from '../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, grams, line, recipe} from '../kitchen.ts'

const mince = food('mince', {energy: 250, fat: 20, water: 60}, {increment: 0})
const egg = food(
  'egg',
  {energy: 140},
  {
    measures: new Map([
      ['medium', 44],
      ['large', 50],
    ]),
  },
)
const tinned = food('tinned beans', {energy: 90, iron: 2}, {state: 'canned'})
const weighed: Partial<Recipe> = {serves: at(1), batch: at(grams(100))}

function said(of: IngredientLine, ...others: readonly Recipe[]) {
  const book = cookbook([mince, egg, tinned], [...others, recipe('dish', [of], weighed)])
  const {problems, computed} = computeCookbook(book)
  // Half a sum would only mislead; without one of its alternatives a dish is whole.
  expect(computed.has('dish')).toBe(problems.length === 0 || of.instead.length > 0)
  return problems.map(({ruleId, severity, file, reason}) => ({ruleId, severity, file, reason}))
}

const inDish = {severity: 'error', file: 'recipes/dish.md'} as const
const batches = {
  kind: 'batch',
  text: '½ batch',
  batches: {value: 0.5, halfRange: 0, increment: 0.5},
} as const
const slices = {
  kind: 'count',
  text: '2 slices',
  measure: 'slice',
  count: {value: 2, halfRange: 0, increment: 1},
} as const

describe('an amount', () => {
  test('in batches is none of a food', () => {
    expect(said(line('mince', batches))).toEqual([
      {
        ...inDish,
        ruleId: 'unknown-measure',
        reason: 'Amount `½ batch` of a food, expected a weight such as `150 g`',
      },
    ])
  })

  test('in a measure the food has no weight for names those it has', () => {
    expect(said(line('mince', slices))).toEqual([
      {
        ...inDish,
        ruleId: 'unknown-measure',
        reason: 'Amount `2 slices` of `mince` has no known weight, expected grams',
      },
    ])
    expect(said(line('egg', slices))).toEqual([
      {
        ...inDish,
        ruleId: 'unknown-measure',
        reason:
          'Amount `2 slices` of `egg` has no known weight, expected grams or `1 medium`, `1 large`',
      },
    ])
  })

  const base = recipe('base', [line('mince', 200)], {serves: at(2)})

  test('of a component is a weight or a share', () => {
    expect(said(line('base', slices, {recipe: at('base')}), base)).toEqual([
      {
        ...inDish,
        ruleId: 'unknown-measure',
        reason: 'Amount `2 slices` of a component, expected a weight or a share such as `½ batch`',
      },
    ])
    expect(said(line('base', batches, {recipe: at('base')}), base)).toEqual([])
  })

  test('of a component by weight wants its batch weighed', () => {
    expect(said(line('base', 100, {recipe: at('base')}), base)).toEqual([
      {
        ...inDish,
        ruleId: 'component-weight',
        reason: '`100 g` of `base`, expected the finished weight of that batch to be stated',
      },
    ])
  })

  test('of an alternative is refused like that of the line', () => {
    const choice = {name: at('egg'), amount: at(slices)}
    expect(said(line('mince', 100, {instead: [choice]}))).toMatchObject([
      {...inDish, ruleId: 'unknown-measure'},
    ])
  })
})

describe('what is poured off', () => {
  const poured = (weight: number, what: 'fat' | 'liquid') =>
    line('mince', 100, {pouredOff: {kind: 'weighed', what, amount: at(grams(weight, 0))}})

  test('is no more than the fat there is', () => {
    expect(said(poured(20, 'fat'))).toEqual([])
    expect(said(poured(22, 'fat'))).toEqual([
      {
        ...inDish,
        ruleId: 'poured-off-held',
        reason:
          'Poured off `22 g` of fat from `mince`, expected `20 g` or less: it holds no more fat',
      },
    ])
  })

  test('is no more than the water there is', () => {
    expect(said(poured(60, 'liquid'))).toEqual([])
    expect(said(poured(63, 'liquid'))).toEqual([
      {
        ...inDish,
        ruleId: 'poured-off-held',
        reason:
          'Poured off `63 g` of liquid from `mince`, expected `60 g` or less: it holds no more water',
      },
    ])
  })

  test('like a cooked food wants that food, and a raw one to compare with', () => {
    const like = (name: string, recipe?: string) =>
      line('mince', 100, {
        pouredOff: {kind: 'like', cooked: at(name)},
        ...(recipe !== undefined && {recipe: at(recipe)}),
      })
    expect(said(like('nothing'))).toMatchObject([{...inDish, ruleId: 'unknown-food'}])
    const base = recipe('base', [line('mince', 100)], weighed)
    expect(said(like('egg', 'base'), base)).toEqual([
      {
        ...inDish,
        ruleId: 'retention-once',
        reason:
          'Poured off like `egg`, expected a weight: a component has no raw food to compare with',
      },
    ])
  })
})

test('what is cooked already loses nothing more', () => {
  expect(said(line('tinned beans', 100, {cooked: at('flamed')}))).toEqual([
    {
      ...inDish,
      ruleId: 'retention-once',
      reason:
        'Cooked `flamed` of `tinned beans`, expected a raw or dry food: its figures are those of the cooked food already',
    },
  ])
})
