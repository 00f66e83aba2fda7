import {describe, expect, test} from 'vitest'
import type {Stated} from '../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {explain} from '../../src/report/explain.ts'
import type {Explanation} from '../../src/report/explanation.ts'
import {filePathBelow} from '../../src/report/file-path.ts'
import {plainPaint} from '../../src/report/paint.ts'
import {textExplanation} from '../../src/report/text-explanation.ts'
import {at, cookbook, food, grams, line, nowhere, recipe, settings} from '../kitchen.ts'

const oats = food('oats', {energy: 379, protein: 13.15, fat: 6.52, carbohydrate: 67.7})
const milk = food('milk', {energy: 61, protein: 3.15, fat: 3.27, carbohydrate: 4.78})
const nuts = food('nuts', {energy: 600, fat: 50, carbohydrate: 20})

function stated(energy: number, basis: Stated['basis'] = 'serving'): Stated {
  const text = `${energy} kcal`
  return {
    basis,
    place: nowhere,
    figures: [{nutrient: 'energy', value: energy, increment: 1, text, place: nowhere}],
  }
}

function explained(more: Parameters<typeof recipe>[2], extra = nuts.name): Explanation {
  const lines = [line('oats', 100), line('milk', 400), line(extra, 30, {isOptional: true})]
  const bowl = recipe('bowl', lines, more)
  const book = cookbook([oats, milk, nuts], [bowl])
  const {computed} = computeCookbook(book)
  const [one] = [...computed.values()]
  if (one === undefined) throw new Error('the bowl cannot be computed')
  return explain(
    one,
    {cookbook: book, computed},
    {filePath: filePathBelow('content'), messages: []},
  )
}

describe('what a line adds', () => {
  test('is told on the basis the page states, and its share of the whole', () => {
    const {per, lines} = explained({serves: at(2), stated: stated(312)})
    expect(per).toBe('serving')
    // By hand, for one of two: oats 189.5 kcal, milk 122 kcal of 311.5.
    expect(lines[0]).toMatchObject({
      name: 'oats',
      amount: '100 g',
      role: 'counted',
      food: 'test/oats',
      grams: 100,
      adds: {energy: {value: 189.5, unit: 'kcal'}, protein: {value: 6.575}},
    })
    expect(lines[0]?.shares.energy).toBeCloseTo(189.5 / 311.5, 9)
    expect(lines[1]?.shares.energy).toBeCloseTo(122 / 311.5, 9)
    expect(lines[2]).toMatchObject({name: 'nuts', role: 'optional', adds: {}, shares: {}})
  })

  test('adds up to the figures, on every basis', () => {
    for (const basis of ['serving', '100 g', 'batch'] as const) {
      const {per, lines, figures} = explained({
        serves: at(3),
        batch: at(grams(450)),
        stated: stated(300, basis),
      })
      expect(per).toBe(basis)
      for (const nutrient of ['energy', 'protein', 'carbohydrate', 'fat'] as const) {
        const sum = lines.reduce((total, one) => total + (one.adds[nutrient]?.value ?? 0), 0)
        expect(sum).toBeCloseTo(figures[nutrient]?.value ?? Number.NaN, 8)
      }
    }
  })

  test('adds up to the figures where some of the dish stays in the pot', () => {
    const {lines, figures} = explained({
      serves: at(2),
      batch: at(grams(400)),
      leftBehind: at(grams(100)),
    })
    // 4 of 5 parts are eaten: 0.8 × (379 + 244) kcal for two.
    expect(figures.energy?.value).toBeCloseTo(249.2, 8)
    expect(lines[0]?.adds.energy?.value).toBeCloseTo(151.6, 8)
    const shares = lines.reduce((total, one) => total + (one.shares.energy ?? 0), 0)
    expect(shares).toBeCloseTo(1, 8)
  })

  test('is told per batch where nobody says how many it serves', () => {
    expect(explained({}).per).toBe('batch')
  })
})

describe('the budget', () => {
  const {budget, figures} = explained({serves: at(2), batch: at(grams(450)), stated: stated(312)})

  test('shares add up to 1, most first, and give the expanded uncertainty back', () => {
    const sources = budget.energy ?? []
    expect(sources.reduce((sum, {share}) => sum + share, 0)).toBeCloseTo(1, 9)
    expect(sources.map(({share}) => share)).toEqual(
      sources.map(({share}) => share).toSorted((left, right) => right - left),
    )
    const rootSumOfSquares = Math.hypot(...sources.map(({uncertainty}) => uncertainty))
    expect(rootSumOfSquares).toBeCloseTo(figures.energy?.uncertainty ?? Number.NaN, 9)
  })

  test('names the weighing that costs most', () => {
    // Both are weighed to the gram, and a gram of oats has six times the energy of a gram of milk.
    expect(budget.energy?.[0]).toMatchObject({kind: 'weighing', source: 'weighing of oats'})
  })
})

describe('why a verdict is what it is', () => {
  // Computed 311.5 ± 1.1 kcal; household tolerates 2 % = 6.2 kcal.
  test.each([
    [312, 'agrees', '0.5 kcal above; agrees within 1.2 kcal'],
    [316, 'tolerated', '4.5 kcal above; agrees within 1.2 kcal, household tolerance 6.2 kcal'],
    [300, 'drift', '12 kcal below; agrees within 1.2 kcal, household tolerance 6.2 kcal'],
  ])('%d kcal stated %s', (energy, verdict, why) => {
    const [one] = explained({serves: at(2), stated: stated(energy)}).comparison
    expect(one).toMatchObject({verdict, nutrient: 'energy', stated: energy})
    expect(one?.difference).toBeCloseTo(energy - 311.5, 9)
    expect(one?.why).toBe(why)
  })

  test('an unknown figure names the foods that lack it', () => {
    const withFibre: Stated = {
      ...stated(300),
      figures: [{nutrient: 'fibre', value: 3, increment: 1, text: '3 g', place: nowhere}],
    }
    const [one] = explained({serves: at(2), stated: withFibre}).comparison
    expect(one?.why).toBe('no figure for oats, milk: the dish holds the computed amount or more')
    expect(one?.computed.atLeast).toBe(true)
  })

  test('a one-sided tolerance has no bound on the other side', () => {
    const bowl = recipe('bowl', [line('oats', 100)], {serves: at(1), stated: stated(500)})
    const book = {...cookbook([oats], [bowl]), settings: {...settings, tolerance: 'us' as const}}
    const {computed} = computeCookbook(book)
    const [one] = [...computed.values()]
    if (one === undefined) throw new Error('the bowl cannot be computed')
    const {comparison} = explain(
      one,
      {cookbook: book, computed},
      {filePath: (file) => file, messages: []},
    )
    expect(comparison[0]).not.toHaveProperty('allowed')
    expect(comparison[0]?.why).toContain('us tolerance no bound above')
  })
})

describe('the text', () => {
  const text = [
    ...textExplanation(
      explained({serves: at(2), batch: at(grams(450)), stated: stated(316)}),
      plainPaint,
    ),
  ].join('')

  test('shows lines, what is left out, verdicts and the budget', () => {
    expect(text).toBe(`bowl  content/recipes/bowl.md
batch 450 g, serves 2 of 225 g

What each line adds to the figures per serving
       grams    energy  share  protein  carbohydrate    fat
oats     100  190 kcal   61 %    6.6 g          34 g  3.3 g
milk     400  122 kcal   39 %    6.3 g         9.6 g  6.5 g
total    500  312 kcal            13 g          43 g  9.8 g

Not counted
nuts, 30 g: optional

Stated and computed, per serving
          stated      computed    verdict
energy  316 kcal  312 ± 2 kcal  tolerated  4.5 kcal above; agrees within 1.2 kcal, household tolerance 6.2 kcal; sum of the foods’ own energies

Claims by 21 CFR 101.54–.62, a serving standing in for the reference amount
could be made: good source of protein

How well the figures are known: each source’s share of the variance
energy 312 ± 2 kcal
     97 %  weighing of oats
      3 %  weighing of milk
      0 %  2 smaller sources
protein 12.9 ± 0.1 g
     87 %  weighing of oats
      8 %  protein of milk
      5 %  weighing of milk
      0 %  1 smaller source
fat 9.8 ± 0.1 g
     61 %  weighing of oats
     23 %  fat of milk
     15 %  weighing of milk
      1 %  fat of oats
carbohydrate 43.4 ± 0.2 g
     99 %  weighing of oats
      1 %  3 smaller sources
`)
  })

  test('percentages of a budget add up to 100', () => {
    const [, budgets = ''] = text.split('How well the figures are known')
    for (const block of budgets.split(/\n(?=\S)/u).slice(1)) {
      const percents = [...block.matchAll(/^ +(\d+) %/gmu)].map((match) => Number(match[1]))
      expect(percents.reduce((sum, percent) => sum + percent, 0)).toBe(100)
    }
  })
})

describe('claims', () => {
  // 25 g of protein, 10 g of fat and 300 kcal: a third of the energy from protein.
  const curd = food('curd', {energy: 300, protein: 25, fat: 10, energyEu: 300, saturated: 5})

  function claims(words: readonly string[], rules: 'us' | 'eu') {
    const one = recipe('curd', [line('curd', 100)], {
      serves: at(1),
      batch: at(grams(100)),
      claims: words.map(at),
    })
    const book = cookbook([curd], [one], {rules})
    const {computed} = computeCookbook(book)
    const [dish] = [...computed.values()]
    if (dish === undefined) throw new Error('the curd cannot be computed')
    const examined = {cookbook: book, computed}
    return explain(dish, examined, {filePath: (file) => file, messages: []})
  }

  test('that are made have their outcome, those that could be their source', () => {
    expect(claims(['source of protein', 'low fat', 'healthy'], 'eu').claims).toEqual({
      rules: 'eu',
      made: [
        {claim: 'source of protein', outcome: 'holds'},
        {claim: 'low fat', outcome: 'fails'},
        {claim: 'healthy', outcome: 'no such claim'},
      ],
      possible: [{claim: 'high protein', source: 'Regulation (EC) 1924/2006, Annex'}],
      sentences: [],
    })
  })

  test('are printed with what has to stand beside them', () => {
    const text = [...textExplanation(claims(['high protein'], 'us'), plainPaint)].join('')
    expect(text).toContain('Claims by 21 CFR 101.54–.62')
    // Plant protein counts at 0.4: 10 g of 25, exactly a fifth of 50 g, less its uncertainty.
    expect(text).toContain('made: high protein, fails')
    expect(text).toContain('could be made: good source of protein')
    expect(text).toContain('beside it: See nutrition information for saturated fat content.')
  })
})
