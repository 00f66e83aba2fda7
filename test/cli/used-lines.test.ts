import {describe, expect, test} from 'vitest'
import {usedLines} from '../../src/cli/used-lines.ts'
import type {IngredientLine} from '../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, line, recipe} from '../kitchen.ts'

const foods = ['oil', 'nut oil', 'oats', 'curd'].map((name) => food(name, {energy: 100}))
const dip = recipe('curd-dip', [line('curd', 80), line('oil', 20)], {title: at('Curd dip')})

/** The lines that a name means in a bowl, by their anchors. */
function used(name: string, lines: readonly IngredientLine[]) {
  const book = cookbook(foods, [dip, recipe('bowl', [line('oats', 50), ...lines])])
  const bowl = computeCookbook(book).computed.get('bowl')
  if (!bowl) throw new Error('The bowl was not computed')
  const use = usedLines(name, bowl, book.foods)
  return {
    lines: use.lines.map((each) => each.line.anchor),
    aside: use.aside.map((each) => each.line.anchor),
  }
}

const half = {value: 0.5, halfRange: 0, increment: 0.1}

describe('a name means', () => {
  const fried = line('frying oil', 10, {food: at('test/oil')})

  test('the food, whatever its lines call it', () => {
    expect(used('oil', [line('oil', 5), fried]).lines).toEqual(['oil', 'frying-oil'])
    expect(used('test/oil', [fried]).lines).toEqual(['frying-oil'])
  })

  test('a line as the recipe calls it, or its anchor', () => {
    expect(used('Frying oil', [fried]).lines).toEqual(['frying-oil'])
    expect(used('frying-oil', [fried]).lines).toEqual(['frying-oil'])
  })

  test('a component by line, slug or title', () => {
    const spoon = line(
      'a spoon of dip',
      {kind: 'batch', text: '½ batch', batches: half},
      {
        recipe: at('curd-dip'),
      },
    )
    for (const name of ['a spoon of dip', 'curd-dip', 'Curd dip']) {
      expect(used(name, [spoon]).lines).toEqual(['a-spoon-of-dip'])
    }
  })

  test('of lines that count and lines that do not, those that count', () => {
    const optional = line('more oil', 10, {food: at('test/oil'), isOptional: true})
    const uncounted = line('oil for the tin', 3, {
      food: at('test/oil'),
      uncounted: {because: at('stays in the tin')},
    })
    expect(used('oil', [optional, line('oil', 5), uncounted])).toEqual({
      lines: ['oil'],
      aside: ['more-oil', 'oil-for-the-tin'],
    })
    expect(used('oil', [optional, uncounted])).toEqual({
      lines: ['more-oil'],
      aside: ['oil-for-the-tin'],
    })
    expect(() => used('oil', [uncounted])).toThrow('left uncounted')
  })
})

test('one name for two foods has to be told apart', () => {
  const [one, other] = ['test/oil', 'test/nut oil'].map((id) => line('dressing', 5, {food: at(id)}))
  if (!one || !other) throw new Error('Two lines')
  expect(() => used('dressing', [one, other])).toThrow('dressing is two things in bowl')
  expect(used('test/nut oil', [one, other]).lines).toEqual(['dressing'])
})
