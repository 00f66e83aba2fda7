import {describe, expect, test} from 'vitest'
import type {Settings} from '../../src/cookbook/cookbook.ts'
import {recipePage} from '../../templates/recipe.tsx'
import {at, computedOf, food, line, recipe, sampleSite, weight} from './sample.ts'
import {byClass, byId, byTag, elements, rowsOf, textOf} from './tree.ts'

function page(slug: string, settings: Partial<Settings>) {
  const site = sampleSite(settings)
  return recipePage(site, computedOf(site, slug)).tree
}

describe('the panel of 21 CFR 101.9(d)', () => {
  const [panel] = byClass(page('classic-pot', {declare: 'us', rules: 'us'}), 'us-panel')
  const rows = panel === undefined ? [] : rowsOf(panel)

  test('has the heading, servings, calories and footnote of the regulation', () => {
    const texts = panel === undefined ? [] : byTag(panel, 'p').map(textOf)
    expect(panel && byTag(panel, 'h3').map(textOf)).toEqual(['Nutrition Facts'])
    // By hand: 600 g chicken, 200 g barley, 60 g butter are 726 + 704 + 430.2 kcal, a quarter 465,
    // and exact halves go up.
    expect(texts).toEqual([
      '4 servings per container',
      'Serving size 1/4 recipe',
      'Amount per serving',
      'Calories 470',
      '* The % Daily Value (DV) tells you how much a nutrient in a serving of food contributes to a daily diet. 2,000 calories a day is used for general nutrition advice.',
    ])
  })

  test('has the lines of the regulation in its order, vitamins below the second bar', () => {
    // By hand: fat (24.6 + 2.4 + 48.66) ÷ 4 = 18.9 g, 19 of 78 are 24 %; saturated (6.6 + 0.4 +
    // 30.84) ÷ 4 = 9.46 g; sodium (570 + 18 + 385.8) ÷ 4 = 243 mg; carbohydrate 155.4 ÷ 4 = 38.9 g;
    // sugars 1.6 ÷ 4 = 0.4 g; protein (118.2 + 19.8 + 0.54) ÷ 4 = 34.6 g.
    expect(rows.slice(0, 7)).toEqual([
      ['% Daily Value*'],
      ['Total Fat 19g', '24%'],
      ['Saturated Fat 9g', '45%'],
      ['Trans Fat not known', ''],
      ['Cholesterol not known', ''],
      ['Sodium 240mg', '10%'],
      ['Total Carbohydrate 39g', '14%'],
    ])
    expect(rows.slice(7).map(([name]) => name)).toEqual([
      'Dietary Fiber 8g',
      'Total Sugars 0g',
      'Added Sugars not known',
      'Protein 35g',
      'Vitamin D not known',
      'Calcium not known',
      'Iron not known',
      'Potassium not known',
    ])
    expect(panel && byTag(panel, 'tbody').map((body) => byTag(body, 'tr').length)).toEqual([10, 4])
  })

  test('is not drawn for a component, which serves nobody; its figures for 100 g are', () => {
    const stock = page('brown-stock', {declare: 'us', rules: 'us'})
    expect(byClass(stock, 'us-panel')).toEqual([])
    const [table] = byClass(stock, 'declared')
    expect(table && rowsOf(table)[0]).toEqual(['Nutrient', '100 g', '% DV, 100 g'])
  })

  test('says what keeps it from being whole', () => {
    const text = textOf(page('classic-pot', {declare: 'us', rules: 'us'}))
    expect(text).toContain('Not a whole declaration: no figure for trans fat, cholesterol, added')
  })
})

describe('the EU table', () => {
  const tree = page('brown-stock', {declare: 'eu'})
  const [table] = byClass(tree, 'declared')

  test('has the lines of Annex XV for 100 g, with the share of the reference intakes', () => {
    // Of the carrots of the stock, half of whose weight is in 100 g of it: the sample gives no energy
    // by EU factors, so it is not known.
    expect(table && rowsOf(table)).toEqual([
      ['Nutrient', '100 g', '% RI, 100 g'],
      ['Energy', 'not known', ''],
      ['Energy', 'not known', ''],
      ['Fat', '0 g', '0 %'],
      ['of which saturates', '0 g', '0 %'],
      ['Carbohydrate', '3.4 g', '1 %'],
      ['of which sugars', '2.4 g', '3 %'],
      ['Fibre', '1.4 g', ''],
      ['Protein', '0 g', '0 %'],
      ['Salt', '0.09 g', '2 %'],
    ])
  })

  test('says what its percentages and its energy are', () => {
    const text = textOf(byId(tree, 'part-declared')) + textOf(tree)
    expect(text).toContain('RI: reference intake of an average adult (8400 kJ/2000 kcal).')
    expect(text).toContain('Energy is by the EU factors.')
    const other = textOf(page('brown-stock', {declare: 'eu', energyMethod: 'foods'}))
    expect(other).toContain('EU law asks for the factors of Regulation (EU) 1169/2011 Annex XIV')
  })
})

test('a cookbook that asks for no declaration has none, and no net carbohydrate', () => {
  const tree = page('classic-pot', {})
  expect(elements(tree, ({properties}) => properties.id === 'part-declared')).toEqual([])
  expect(textOf(tree)).not.toContain('Net carbohydrate')
})

test('net carbohydrate is shown where the cookbook asks, with what is meant by it', () => {
  const text = textOf(page('classic-pot', {netCarbohydrate: true}))
  // 2 × 62.1 g of the barley, a quarter of it.
  expect(text).toMatch(/Net carbohydrate: 31\.\d ± \d\.\d g in one serving\./)
  expect(text).toContain('a convention of readers that no law defines')
})

describe('for the baker', () => {
  test('a recipe with flour shows its formula, its pieces, and other tins', () => {
    const flour = food('flour', {energy: 360, water: 12}, {traits: new Set(['flour'])})
    const milk = food('milk', {energy: 60, water: 88})
    const loaf = recipe('loaf', {
      serves: at(4),
      pan: at({shape: 'square', acrossMillimetres: 200, text: '20 cm'}),
      pieces: at({kind: 'count', count: 4}),
      groups: [{lines: [line('flour', weight(500)), line('milk', weight(353))]}],
    })
    const site = sampleSite(
      {},
      {
        recipes: new Map([['loaf', loaf]]),
        foods: {
          lookUp: (name) => [flour, milk].find((one) => one.name === name),
          nearest: () => [],
          isRefused: () => false,
          all: () => [flour, milk],
          own: [],
        },
      },
    )
    const {tree} = recipePage(site, computedOf(site, 'loaf'))
    const text = textOf(tree)
    expect(rowsOf(tree)).toContainEqual(['flour', '500 g', '100.0 %'])
    expect(rowsOf(tree)).toContainEqual(['milk', '353 g', '70.6 %'])
    // 0.88 × 353 ÷ 500 = 62 %.
    expect(text).toContain(
      'Hydration, plain water by flour: 0 %. With the water of milk, eggs, fruit and the rest: 62 %.',
    )
    expect(text).toContain('Pieces4 of 213 g, 1.0 g of dough left over')
    // π/4 × 20² ÷ 20² = 0.785.
    expect(rowsOf(tree)).toContainEqual(['20 cm round, 7 cm deep', '× 0.79'])
  })

  test('a recipe without flour has none of it', () => {
    const tree = page('classic-pot', {})
    expect(elements(tree, ({properties}) => properties.id === 'part-baking')).toEqual([])
  })
})
