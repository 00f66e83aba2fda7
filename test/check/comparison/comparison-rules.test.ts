import {describe, expect, test} from 'vitest'
import {checkCookbook} from '../../../src/check/check-cookbook.ts'
import type {Cookbook, Settings} from '../../../src/cookbook/cookbook.ts'
import type {Comparison} from '../../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, grams, line, recipe} from '../../kitchen.ts'

// Ten kcal a gram against five: amounts set the ratio.
const rich = food('rich', {energy: 1000, fat: 40, fibre: 2}, {increment: 1e-9})
const plain = food('plain', {energy: 500, fat: 30}, {increment: 1e-9})

const exactly = {scaleGrams: 1e-9}

function comparison(
  words: Readonly<Partial<Record<'energy' | 'fat' | 'fibre', string>>>,
  more = {},
) {
  return {
    recipe: at('classic'),
    basis: 'serving',
    statements: Object.entries(words).map(([nutrient, text]) => ({
      nutrient: nutrient as 'energy',
      text: at(text),
    })),
    ...more,
  } as Comparison
}

function book(
  light: Comparison,
  amount: number,
  more: Partial<Settings> = exactly,
  serving = 100,
  step = 1e-9,
): Cookbook {
  const [half, whole] = [at(grams(serving, 1e-9)), at(grams(100, 1e-9))]
  return cookbook(
    [rich, plain],
    [
      recipe('classic', [line('rich', grams(100, 1e-9))], {serves: at(1), batch: whole}),
      recipe('light', [line('rich', grams(amount, step))], {
        serves: at(1),
        batch: half,
        comparison: light,
      }),
    ],
    more,
  )
}

function found(cookbookOf: Cookbook) {
  const {computed, problems} = computeCookbook(cookbookOf)
  expect(problems).toEqual([])
  return checkCookbook(cookbookOf, computed).filter(({ruleId}) => ruleId.startsWith('comparison'))
}

describe('comparison-holds', () => {
  test('passes on the boundary and not past it', () => {
    expect(found(book(comparison({energy: '40 % less'}), 59.99999))).toEqual([])
    expect(found(book(comparison({energy: '40 % less'}), 60.1))).toMatchObject([
      {
        ruleId: 'comparison-holds',
        severity: 'error',
        file: 'recipes/light.md',
        reason:
          'Compared with `classic`, energy `40 % less` per serving, expected `39 % less` from the ingredients',
      },
    ])
  })

  test('has to hold at the end of the uncertainty that is against it', () => {
    // Read on a scale of 10 g, 59.5 g may well have been 63 g.
    const coarse = book(comparison({energy: '40 % less'}), 59.5, {scaleGrams: 10}, 100, 10)
    expect(found(coarse)).toMatchObject([{ruleId: 'comparison-holds'}])
    const surely = book(comparison({energy: '25 % less'}), 59.5, {scaleGrams: 10}, 100, 10)
    expect(found(surely)).toEqual([])
  })

  test('what both sides share is uncertain in both alike and cancels', () => {
    // The one food is known to ± 115 kcal in 1000, the two amounts exactly: the ratio is exact.
    const vague = food('rich', {energy: 1000}, {increment: 200})
    const {foods: _, ...rest} = book(comparison({energy: '40 % less'}), 59)
    const shared: Cookbook = {...rest, foods: cookbook([vague], []).foods}
    expect(found(shared)).toEqual([])
  })

  test('a figure nobody knows is no comparison', () => {
    const {foods: _, ...rest} = book(comparison({energy: 'half'}), 40)
    const without = food('rich', {fat: 40})
    const unknown: Cookbook = {...rest, foods: cookbook([without], []).foods}
    expect(found(unknown)).toMatchObject([
      {reason: expect.stringContaining('cannot be checked, expected a figure for `rich`')},
    ])
  })

  test('says what words it can read', () => {
    expect(found(book(comparison({energy: 'much lighter'}), 40))).toMatchObject([
      {reason: expect.stringContaining('cannot be read, expected words such as `40 % less`')},
    ])
  })

  test.each([
    ['clasic', 'which is no recipe of this cookbook, expected `classic`'],
    ['ligt', 'which is no recipe of this cookbook, expected the slug of a recipe'],
    ['light', 'which is this recipe itself'],
  ])('compared with %s', (slug, reason) => {
    const light = comparison({energy: 'half'}, {recipe: at(slug)})
    expect(found(book(light, 40))).toMatchObject([{reason: expect.stringContaining(reason)}])
  })

  test('sets a food beside a serving by the weight of the serving', () => {
    const {recipe: _, ...beside} = comparison({energy: 'half'}, {food: at('rich')})
    // 200 g of rich have 2000 kcal; the serving of 200 g holds 100 g of it and water.
    expect(found(book(beside, 99.99999, exactly, 200))).toEqual([])
    expect(found(book(beside, 101, exactly, 200))).toHaveLength(1)
  })

  test('by weight, the serving does not matter', () => {
    const by = comparison({energy: 'half'}, {basis: '100 g'})
    // 60 g of it in 200 g: three tenths of the energy of 100 g.
    expect(found(book(by, 60, exactly, 200))).toEqual([])
    expect(found(book(comparison({energy: 'half'}), 60, exactly, 100))).toHaveLength(1)
  })
})

describe('comparison-portions', () => {
  test('servings of two weights are no comparison', () => {
    expect(found(book(comparison({energy: 'half'}), 40, exactly, 80))).toMatchObject([
      {
        ruleId: 'comparison-portions',
        severity: 'warning',
        reason:
          'Compared by the serving of `80 g` with `classic` of `100 g`, expected servings of one weight',
      },
    ])
  })

  test.each([
    [95, 0],
    [94.9, 1],
    [105.2, 0],
    [105.4, 1],
  ])('a serving of %s g beside one of 100 g: %s finding', (serving, count) => {
    expect(found(book(comparison({energy: 'half'}), 40, exactly, serving))).toHaveLength(count)
  })
})

describe('comparison-minimum', () => {
  // 21 CFR 101.60(b)(4): 25 %; Regulation (EC) 1924/2006 Annex, "reduced": 30 %.
  test.each([
    ['us', '24 % less', 1],
    ['us', '25 % less', 0],
    ['eu', '29 % less', 1],
    ['eu', '30 % less', 0],
    ['eu', '10 % more', 0],
  ] as const)('%s: %s', (rules, words, count) => {
    const amount = words.endsWith('more') ? 120 : 50
    const notes = found(book(comparison({energy: words}), amount, {...exactly, rules}))
    expect(notes.map(({ruleId, severity}) => [ruleId, severity])).toEqual(
      Array.from({length: count}, () => ['comparison-minimum', 'note']),
    )
  })
})
