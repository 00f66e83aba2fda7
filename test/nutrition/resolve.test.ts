/** What is said of a name that is no food, and of one that is a recipe's. */

import {expect, test} from 'vitest'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, line, recipe} from '../kitchen.ts'

const oats = food('oats', {energy: 400})
const stock = recipe('brown-stock', [line('oats', 1)], {title: at('Brown Stock')})

function problemsOf(name: string) {
  return computeCookbook(cookbook([oats], [stock, recipe('dish', [line(name, 10)])])).problems
}

test.each(['brown stock', 'BROWN STOCK', 'brown-stock'])(
  '%s is no food, but the title or the slug of a recipe',
  (name) => {
    expect(problemsOf(name)).toMatchObject([
      {
        ruleId: 'unknown-food',
        severity: 'error',
        file: 'recipes/dish.md',
        reason: `Food \`${name}\` is unknown, expected a name from foods.yaml or the food table`,
        note: 'There is a recipe of that name: write `{ amount: …, recipe: brown-stock }`.',
      },
    ])
  },
)

test('another name gets the ways to mend it', () => {
  expect(problemsOf('gravel')).toMatchObject([
    {note: expect.stringContaining('add `food:` with a qualified id')},
  ])
})

test('a component that is no recipe is told with the slugs nearest to it', () => {
  const dish = recipe('dish', [line('stock', 10, {recipe: at('brown-stok')})])
  expect(computeCookbook(cookbook([oats], [stock, dish])).problems).toMatchObject([
    {
      ruleId: 'unknown-component',
      severity: 'error',
      actual: 'brown-stok',
      expected: ['brown-stock'],
      reason: 'Component `brown-stok` is no recipe of this cookbook, expected `brown-stock`',
      note: 'A component is named by its file name without `.md`.',
    },
  ])
})
