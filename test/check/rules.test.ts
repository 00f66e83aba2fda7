import {readdirSync} from 'node:fs'
import {describe, expect, test} from 'vitest'
import {checkCookbook} from '../../src/check/check-cookbook.ts'
import {cookbookRules, recipeRules} from '../../src/check/rules.ts'
import type {Problem} from '../../src/cookbook/problem.ts'
import type {Recipe, Stated, StatedFigure} from '../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, grams, line, nowhere, recipe} from '../kitchen.ts'

const rules = [...recipeRules, ...cookbookRules]

describe('the list of rules', () => {
  test('has every file of the folder, under its own name', () => {
    const files = readdirSync(new URL('../../src/check/rules', import.meta.url))
    expect(rules.map(({id}) => `${id}.ts`).sort()).toEqual(files.sort())
  })

  test.each(rules)('$id says what must hold and why', ({summary, why}) => {
    expect(summary).toMatch(/^[A-Z].*\.$/)
    expect(why).toMatch(/^[A-Z].*\.$/)
  })
})

const oats = food('oats', {energy: 379, protein: 13.15, fat: 6.52, carbohydrate: 67.7, fibre: 10.1})
const milk = food('milk', {energy: 61, protein: 3.15, fat: 3.27, carbohydrate: 4.78, fibre: 0})
const honey = food('honey', {energy: 304, protein: 0.3, fat: 0, carbohydrate: 82.4})

function stated(
  figures: Readonly<Record<string, number>>,
  basis: Stated['basis'] = 'serving',
): Stated {
  return {
    basis,
    place: nowhere,
    figures: Object.entries(figures).map(([nutrient, value]) => ({
      nutrient: nutrient as StatedFigure['nutrient'],
      value,
      increment: 1,
      text: `${value} ${nutrient === 'energy' ? 'kcal' : 'g'}`,
      place: nowhere,
    })),
  }
}

// 50 g oats and 200 g milk for one: 311.5 kcal, 12.9 g protein, 9.8 g fat, 43.4 g carbohydrate.
const right = {energy: 312, protein: 13, fat: 10, carbohydrate: 43}
const bowlLines = [line('oats', 50), line('milk', 200)]

function bowl(more: Partial<Recipe>): Recipe {
  return recipe('bowl', bowlLines, {serves: at(1), stated: stated(right), ...more})
}

function check(...recipes: readonly Recipe[]): readonly Problem[] {
  const book = cookbook([oats, milk, honey], recipes)
  const {computed, problems} = computeCookbook(book)
  expect(problems).toEqual([])
  return checkCookbook(book, computed)
}

describe('stated-macros', () => {
  test('says nothing of figures that follow', () => {
    expect(check(bowl({}))).toEqual([])
  })

  test('says what is stated, what the ingredients give, and which of them matter', () => {
    const [problem, ...rest] = check(bowl({stated: stated({...right, protein: 20})}))
    expect(rest).toEqual([])
    expect(problem).toMatchObject({
      ruleId: 'stated-macros',
      severity: 'error',
      file: 'recipes/bowl.md',
      reason: 'Stated protein `20 g` per serving, expected `12.9 ± 0.1 g` from the ingredients',
      actual: '20 g',
      expected: ['13 g'],
    })
    expect(problem?.note).toBe(
      'Write `protein: 13 g`, or mend the ingredient that is wrong.\nMost of it: oats 7 g, milk 6 g.',
    )
  })

  test('names the number of servings that would explain every figure at once', () => {
    const [problem] = check(
      bowl({serves: at(2), stated: stated({energy: 104, protein: 4, fat: 3, carbohydrate: 14})}),
    )
    expect(problem?.note).toContain('All of them would follow from `serves: 3`.')
  })

  test('names the other carbohydrate when the stated one follows it', () => {
    // Per serving 43.4 g with fibre, 38.4 g without.
    const both = [
      food('oats', {carbohydrate: 67.7, availableCarbohydrate: 57.6}),
      food('milk', {carbohydrate: 4.78, availableCarbohydrate: 4.78}),
    ]
    const book = cookbook(both, [bowl({stated: stated({carbohydrate: 38})})])
    const [problem] = checkCookbook(book, computeCookbook(book).computed)
    expect(problem?.note).toContain('`carbohydrate: available`')
  })
})

describe('stated-energy', () => {
  test('accepts what some recognised method gives', () => {
    // General factors: 4×13 + 9×10 + 4×43 = 314.
    expect(check(bowl({stated: stated({...right, energy: 314})}))).toEqual([])
  })

  test('says how far apart they are and what would explain it', () => {
    const problems = check(bowl({stated: stated({...right, energy: 250})}))
    expect(problems.map(({ruleId}) => ruleId)).toEqual(['stated-macros', 'stated-energy'])
    expect(problems[1]?.reason).toContain('expected `314 kcal` from the stated macros')
    expect(problems[1]?.reason).toContain('25.6 % apart')
    expect(problems[1]?.note).toContain('16.0 g of insoluble fibre')
  })
})

describe('unknown-figure', () => {
  test('names the food that lacks the figure', () => {
    const sweet = recipe('sweet', [...bowlLines, line('honey', 10)], {
      serves: at(1),
      stated: stated({fibre: 6}),
    })
    expect(check(sweet)).toMatchObject([
      {
        ruleId: 'unknown-figure',
        severity: 'warning',
        reason: 'Stated fibre `6 g` cannot be checked, expected a fibre figure for `honey`',
      },
    ])
  })
})

describe('missing-stated', () => {
  test('offers the block to paste', () => {
    const {stated: _, ...bare} = bowl({})
    expect(check(bare)).toMatchObject([
      {
        ruleId: 'missing-stated',
        severity: 'note',
        expected: ['stated: { energy: 312 kcal, protein: 13 g, carbohydrate: 43 g, fat: 9.8 g }'],
      },
    ])
  })
})

describe('weights', () => {
  test('a portion is its share of the yield', () => {
    const batch = at(grams(240))
    expect(check(bowl({batch, portion: at(grams(240))}))).toEqual([])
    expect(check(bowl({batch, portion: at(grams(250))}))).toMatchObject([
      {ruleId: 'portion-weight', actual: '250 g', expected: ['240 g']},
    ])
  })

  test('a batch weighs no more than what went in', () => {
    expect(check(bowl({batch: at(grams(250))}))).toEqual([])
    expect(check(bowl({batch: at(grams(300))}))).toMatchObject([
      {ruleId: 'batch-weight', actual: '300 g', expected: ['250 g']},
    ])
  })

  test('no more of a component than one batch makes', () => {
    const base = recipe('base', [line('milk', 300)], {
      batch: at(grams(250)),
      stated: stated({energy: 73}, '100 g'),
    })
    const use = (weight: number) =>
      recipe('soup', [line('base', weight, {recipe: at('base')})], {
        serves: at(1),
        stated: stated({energy: Math.round(weight * 0.732)}),
      })
    expect(check(base, use(250))).toEqual([])
    expect(check(base, use(400))).toMatchObject([{ruleId: 'component-made', actual: '400 g'}])
    const twice = recipe(
      'soup',
      [line('base', 150, {recipe: at('base')}), line('base', 150, {recipe: at('base')})],
      {serves: at(1), stated: stated({energy: 220})},
    )
    expect(check(base, twice)).toMatchObject([{ruleId: 'component-made', actual: '150 g'}])
  })
})

describe('accepting a finding', () => {
  const accepted = [{ruleId: at('portion-weight'), because: at('ladled, not weighed')}]

  test('turns it into a note that carries the reason', () => {
    const heavy = bowl({batch: at(grams(240)), portion: at(grams(250)), accepted})
    expect(check(heavy)).toMatchObject([
      {ruleId: 'portion-weight', severity: 'note', note: 'Accepted: ladled, not weighed'},
    ])
  })

  test('is told when there is nothing left to accept', () => {
    expect(check(bowl({accepted}))).toMatchObject([
      {ruleId: 'unused-acceptance', severity: 'warning', actual: 'portion-weight'},
    ])
  })
})
