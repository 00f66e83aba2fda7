/** What single rules say, and where they stop saying it. */

import {describe, expect, test} from 'vitest'
import {checkCookbook} from '../../src/check/check-cookbook.ts'
import {idleSeverities} from '../../src/check/severities.ts'
import type {Recipe, Stated} from '../../src/cookbook/recipe.ts'
import type {PublishedNutrient} from '../../src/food/nutrients.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, grams, line, nowhere, recipe} from '../kitchen.ts'
import {findingsIn} from './check-text.ts'

/** 400 kcal by the general factors: 20 × 4 + 20 × 9 + 35 × 4. */
const meal = food(
  'meal',
  {energy: 400, protein: 20, fat: 20, carbohydrate: 35, fibre: 0, sodium: 0},
  {increment: 0},
)
const bran = food('bran', {energy: 200, protein: 20, fat: 20, carbohydrate: 35, fibre: 30})

function found(ruleId: string, one: Recipe, ...others: readonly Recipe[]) {
  const book = cookbook([meal, bran], [one, ...others])
  const {computed, problems} = computeCookbook(book)
  expect(problems).toEqual([])
  return checkCookbook(book, computed).filter(
    (problem) => problem.ruleId === ruleId && problem.file === one.path,
  )
}

function stated(figures: Partial<Record<PublishedNutrient, number>>): Stated {
  const all = (['energy', 'protein', 'fat', 'carbohydrate', 'fibre'] as const).flatMap(
    (nutrient) => {
      const value = figures[nutrient]
      const text = `${value} ${nutrient === 'energy' ? 'kcal' : 'g'}`
      return value === undefined ? [] : [{nutrient, value, increment: 1, text, place: nowhere}]
    },
  )
  return {basis: 'serving', place: nowhere, figures: all}
}

const plate = (figures: Parameters<typeof stated>[0], of = 'meal') =>
  recipe('plate', [line(of, 100)], {serves: at(1), batch: at(grams(100)), stated: stated(figures)})

describe('stated-energy', () => {
  const macros = {protein: 20, fat: 20, carbohydrate: 35}

  test('is content with the energy of the macros, and silent without one of them', () => {
    expect(found('stated-energy', plate({...macros, energy: 400}))).toEqual([])
    for (const gap of ['protein', 'fat', 'carbohydrate'] as const) {
      const {[gap]: _, ...others} = macros
      expect(found('stated-energy', plate({...others, energy: 600})), gap).toEqual([])
    }
    expect(found('stated-energy', plate(macros))).toEqual([])
  })

  test('says what the macros give, by every method, and what would explain the gap', () => {
    const [problem, ...more] = found('stated-energy', plate({...macros, energy: 435}))
    expect(more).toEqual([])
    expect(problem).toMatchObject({
      severity: 'warning',
      actual: '435 kcal',
      expected: ['400 kcal'],
      reason:
        'Stated energy `435 kcal`, expected `400 kcal` from the stated macros by general factors 4-4-9, 21 CFR 101.9(c)(1)(i)(B), 8.0 % apart',
    })
    expect(problem?.note).toContain(': 400 kcal.\n')
    expect(problem?.note).toContain('5.0 g of alcohol (7 kcal/g) would explain it.')
  })

  test('takes the fibre of the ingredients where none is stated', () => {
    // 30 of 35 g are fibre: at 2 kcal/g (Regulation (EU) 1169/2011 Annex XIV) 60 kcal less.
    expect(found('stated-energy', plate({...macros, energy: 340}, 'bran'))).toEqual([])
    expect(found('stated-energy', plate({...macros, energy: 340}))).toHaveLength(1)
  })

  test('says nothing of energy that follows from the ingredients', () => {
    // What bran has is 200 kcal, whatever its macros would give.
    expect(found('stated-energy', plate({...macros, energy: 200}, 'bran'))).toEqual([])
  })
})

describe('batch-weight', () => {
  const pot = (more: Partial<Recipe>) =>
    recipe('pot', [line('meal', 1000)], {serves: at(1), ...more})

  test('lets a batch weigh what went in, and no more', () => {
    expect(found('batch-weight', pot({batch: at(grams(1000))}))).toEqual([])
    expect(found('batch-weight', pot({batch: at(grams(1003))}))).toMatchObject([
      {
        severity: 'error',
        reason: 'Yield `1003 g`, expected `1000 g` or less: the counted ingredients weigh no more',
        expected: ['1000 g'],
      },
    ])
  })

  test('counts what is left behind', () => {
    const left = {leftBehind: at(grams(100))}
    expect(found('batch-weight', pot({batch: at(grams(900)), ...left}))).toEqual([])
    const [problem] = found('batch-weight', pot({batch: at(grams(950)), ...left}))
    expect(problem?.reason).toBe(
      'Yield `950 g` with `100 g` left behind, expected `1000 g` or less together: the counted ingredients weigh no more',
    )
    expect(problem?.expected).toBeUndefined()
  })

  test('leaves something to serve', () => {
    expect(found('batch-weight', pot({leftBehind: at(grams(900))}))).toEqual([])
    expect(found('batch-weight', pot({leftBehind: at(grams(1000))}))).toMatchObject([
      {
        reason: 'Left behind `1000 g`, expected less than `1000 g`: no more was in the pot',
        note: 'List the water or stock that was added, or weigh again what is left.',
      },
    ])
  })
})

describe('component-made', () => {
  const base = recipe('base', [line('meal', 500)], {serves: at(1), batch: at(grams(500))})
  const uses = (weights: readonly number[], more = {}) =>
    recipe(
      'dish',
      weights.map((weight, index) => line(`part ${index}`, weight, {recipe: at('base'), ...more})),
      {serves: at(1)},
    )

  test('one batch is enough for what all lines take together', () => {
    expect(found('component-made', uses([500]), base)).toEqual([])
    expect(found('component-made', uses([250, 250]), base)).toEqual([])
    expect(found('component-made', uses([300, 300, 300]), base)).toMatchObject([
      {
        severity: 'warning',
        reason:
          'Amount `300 g` of `base`, expected `500 g` or less in all: one batch makes no more',
        note: expect.stringContaining('Say in the method that 2 batches are made'),
      },
    ])
  })

  test('lines that do not count take nothing', () => {
    expect(found('component-made', uses([300, 300], {isOptional: true}), base)).toEqual([])
  })
})

describe('what is accepted', () => {
  const dish = (accepted: string) =>
    findingsIn({
      ingredients: ['carrot: 200 g', 'pearl barley: 100 g'],
      front: [`accepted: { ${accepted} }`],
      method: 'Boil it.',
    }).map(({ruleId, severity, accepted: because}) => [ruleId, severity, because])

  test('stays as a note with its reason', () => {
    expect(dish('ingredient-used: obvious')).toEqual([
      ['ingredient-used', 'note', 'obvious'],
      ['ingredient-used', 'note', 'obvious'],
    ])
  })

  test('of one ingredient alone leaves the others', () => {
    expect(dish('ingredient-used: { carrot: obvious }')).toEqual([
      ['ingredient-used', 'note', 'obvious'],
      ['ingredient-used', 'warning', undefined],
    ])
  })

  test('and does not occur is told', () => {
    expect(dish('ingredient-used: obvious, raw-egg: pasteurised')).toEqual([
      ['ingredient-used', 'note', 'obvious'],
      ['ingredient-used', 'note', 'obvious'],
      ['unused-acceptance', 'warning', undefined],
    ])
    expect(dish('ingredient-used: { leek: obvious }')).toEqual([
      ['ingredient-used', 'warning', undefined],
      ['ingredient-used', 'warning', undefined],
      ['unused-acceptance', 'warning', undefined],
    ])
  })
})

test('a rule of cookbook.yaml that is none is told with the nearest, where one is near', () => {
  const said = (name: string) => {
    const {settings} = cookbook([], [])
    return idleSeverities({settings: {...settings, checks: [at(name)]}}).map(
      ({reason, expected}) => [reason, expected],
    )
  }
  expect(said('raw-egg')).toEqual([])
  expect(said('raw-eg')).toEqual([
    ['Rule `raw-eg` does not exist, expected `raw-egg`', ['raw-egg']],
  ])
  expect(said('zzzzzzzz')).toEqual([
    ['Rule `zzzzzzzz` does not exist, expected the id of a rule', undefined],
  ])
  expect(said('yaml-readable')).toEqual([
    [
      'Rule `yaml-readable` cannot be changed, expected one that checks what was understood',
      undefined,
    ],
  ])
})
