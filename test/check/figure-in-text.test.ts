/** Which figures in sentences are held to the dish, and which are no figures of it. */

import {describe, expect, test} from 'vitest'
import {type DishText, findingsIn, pointedAt} from './check-text.ts'

// USDA SR28 20005, barley, pearled, raw: 352 kcal, 9.91 g protein, 15.6 g fibre per 100 g. 200 g for
// four: 176 kcal, 5 g protein and 8 g fibre a serving.
function dish(method: string, front: readonly string[] = []): DishText {
  return {
    ingredients: ['pearl barley: 200 g', 'water: 800 g'],
    front: ['serves: 4', 'yield: 1000 g', ...front],
    method: `1. Simmer the [barley](#pearl-barley) in the [water](#water). ${method}`,
  }
}

function said(text: DishText): readonly string[] {
  return findingsIn(text)
    .filter(({ruleId}) => ruleId === 'figure-in-text')
    .map((finding) => `${pointedAt(text, finding)} → ${finding.expected?.join()}`)
}

describe('a figure in the method', () => {
  test.each([
    ['A bowl has 176 kcal.', []],
    ['A bowl has 300 kcal.', ['300 kcal → 176 kcal']],
    ['A bowl has 20 g protein.', ['20 g protein → 5 g']],
    ['A bowl has 5 g protein.', []],
    ['A bowl has 90 kcal per 100 g.', ['90 kcal → 70 kcal']],
    ['A bowl has at most 200 kcal.', []],
    ['A bowl has at most 100 kcal.', ['100 kcal → 176 kcal']],
    ['A bowl has at least 100 kcal.', []],
    ['A bowl has at least 300 kcal.', ['300 kcal → 176 kcal']],
  ])('%s', (sentence, expected) => {
    expect(said(dish(sentence)).map((one) => one.replace(/^(?:at most|at least) /u, ''))).toEqual(
      expected,
    )
  })

  test('of fat and sugar in a step is what goes into the pot', () => {
    expect(said(dish('Add 20 g fat and 30 g sugars.'))).toEqual([])
  })
})

describe('a figure in front', () => {
  test('stands where it is written, in title, summary and tags', () => {
    expect(said(dish('', ['summary: Only 300 kcal, and 5 g protein']))).toEqual([
      '300 kcal → 176 kcal',
    ])
    expect(said(dish('', ['tags: [one pot, 300 kcal]']))).toEqual(['300 kcal → 176 kcal'])
    expect(said(dish('', ['title: Barley for 300 kcal']))).toEqual(['300 kcal → 176 kcal'])
  })

  test('in quotes or over two lines is told at the whole text', () => {
    expect(said(dish('', ['summary: "Only 300 kcal"']))).toEqual(['"Only 300 kcal" → 176 kcal'])
    const [one = ''] = said(dish('', ['summary: >-', '  Barley, and', '  300 kcal a bowl']))
    expect(one).toMatch(/Barley, and\n {2}300 kcal a bowl\n? → 176 kcal$/u)
  })
})
