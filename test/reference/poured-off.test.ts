import {describe, expect, test} from 'vitest'
import {armedForcesMeatOff} from './worked/armed-forces-meat-off.ts'
import {computeWorked, pairsOf, type WorkedRecipe} from './worked/worked-recipe.ts'

function ratios(recipe: WorkedRecipe): Readonly<Record<string, number>> {
  const computed = computeWorked([recipe]).get(recipe.row)
  if (computed === undefined) throw new Error(`not computed: ${recipe.row}`)
  return Object.fromEntries(
    pairsOf(recipe, computed).map(({nutrient, stated, computed: value}) => [
      nutrient,
      value / stated,
    ]),
  )
}

/** The card with its meat weighed otherwise, or with conditions on that line. */
function withMeat(
  row: string,
  food: string,
  change: {readonly amount?: string; readonly conditions?: string},
): WorkedRecipe {
  const card = armedForcesMeatOff.find((each) => each.row === row)
  if (card === undefined) throw new Error(`no card ${row}`)
  return {
    ...card,
    ingredients: card.ingredients.map((line) => {
      if (line[1] !== food) return line
      const {amount = line[0], conditions} = change
      return conditions === undefined
        ? [amount, food, line[2]]
        : [amount, food, line[2], conditions]
    }),
  }
}

// Armed Forces Recipe Service (2003): three sandwiches of raw, fatty meat that is cooked before it
// goes in. A plain sum has 30-40 % too much fat.
describe('Fat that runs out of raw meat', () => {
  /**
   * USDA SR28 has no cooked row of these steaks (13342). Ground beef of 80 % lean turns from 17.17 g
   * of protein and 20 g of fat (23572) into 25.75 g and 17.78 g (23573, patty, broiled): protein
   * stays, so 17.17 / 25.75 × 17.78 / 20 = 59.3 % of the fat does. Of 25 lb with 27 % fat, 40.7 % are
   * 2.75 lb.
   */
  const steaks = {conditions: 'poured off: 2.75 lb'}

  test.each(['N 003 00', 'N 003 01'])('%s: fat within a tenth with the rendered fat off', (row) => {
    const before = ratios(withMeat(row, 'sr28/13342', {}))
    const after = ratios(withMeat(row, 'sr28/13342', steaks))
    expect(before.fat).toBeGreaterThan(1.3)
    expect(Math.abs((after.fat ?? NaN) - 1)).toBeLessThan(0.1)
    expect(Math.abs((after.energy ?? NaN) - 1)).toBeLessThan(0.1)
    // The steaks of the card had more protein than the release's; pouring off does not touch it.
    expect(after.protein).toBe(before.protein)
  })

  test('N 003 00: weighing the fat as drained liquid mends nothing', () => {
    const liquid = ratios(
      withMeat('N 003 00', 'sr28/13342', {
        conditions: 'poured off: { amount: 2.75 lb, what: liquid }',
      }),
    )
    expect(liquid.fat).toBeGreaterThan(1.3)
  })

  // The card lists 18 3/4 lb for 100 patties of two ounces, which are 12 1/2 lb.
  test('N 007 03: within 10 % with the patties weighed and their fat off like the fried sausage', () => {
    const like = 'poured off: { like: usda/07064 }'
    const listed = ratios(withMeat('N 007 03', 'usda/07063', {}))
    const poured = ratios(withMeat('N 007 03', 'usda/07063', {conditions: like}))
    const mended = ratios(
      withMeat('N 007 03', 'usda/07063', {amount: '12 1/2 lb', conditions: like}),
    )
    expect(listed.fat).toBeGreaterThan(1.3)
    // Pouring off alone does not make up for meat that was never there.
    expect(poured.fat).toBeGreaterThan(1.2)
    expect(poured.fat).toBeLessThan(listed.fat ?? NaN)
    for (const ratio of Object.values(mended)) expect(Math.abs(ratio - 1)).toBeLessThan(0.1)
  })
})

// USDA SR28: a raw food whose fat is poured off like the cooked one, at the yield of the cooked one,
// must come to the cooked food's own row. Protein and fat do by construction; energy is the check, to
// 1.5 kcal: the release prints whole kcal of raw and cooked beef, and one kcal of 100 g raw is one and
// a half of 100 g cooked.
describe('Raw ground beef, browned and drained, comes to the release’s row of the cooked one', () => {
  test.each([
    ['23572', '23575', 'crumbles of 80 % lean', 272],
    ['23572', '23573', 'patty of 80 % lean', 270],
    ['23562', '23565', 'crumbles of 90 % lean', 230],
    ['23562', '23563', 'patty of 90 % lean', 217],
  ])('%s to %s, %s', (raw, cooked, title, energy) => {
    const dish: WorkedRecipe = {
      row: cooked,
      title,
      finished: {yieldLike: `usda/${cooked}`},
      stated: {energy},
      ingredients: [['450 g', `usda/${raw}`, 'beef', `poured off: { like: usda/${cooked} }`]],
    }
    expect(Math.abs((ratios(dish).energy ?? NaN) - 1) * energy).toBeLessThan(1.5)
  })
})
