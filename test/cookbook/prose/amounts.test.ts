import {describe, expect, test} from 'vitest'
import {amountsIn} from '../../../src/cookbook/prose/amounts.ts'
import {pansIn} from '../../../src/cookbook/prose/pans.ts'
import {sentencesOf} from '../../../src/cookbook/prose/sentences.ts'
import type {Kitchen} from '../../../src/units/parse-amount.ts'

const kitchen: Kitchen = {cups: 'us', measures: new Set(['scoop'])}

/** Value in grams, millilitres or pieces. */
function sizes(phrase: string): readonly (readonly [string, number])[] {
  return amountsIn(phrase, kitchen).map(({amount}) => {
    const {value} =
      amount.kind === 'weight'
        ? amount.grams
        : amount.kind === 'volume'
          ? amount.millilitres
          : amount.count
    return [amount.text, Math.round(value * 10) / 10]
  })
}

/** Each phrase with its amounts: words, grams or millilitres or pieces. */
const phrases: readonly (readonly [string, ...(readonly [string, number])[]])[] = [
  ['Add 180 g barley.', ['180 g', 180]],
  ['Add 180g barley.', ['180g', 180]],
  ['Add the 1.5 kg of bones.', ['1.5 kg', 1500]],
  ['Add 1 1/2 lb beef.', ['1 1/2 lb', 680.4]],
  ['Add ½ cup of milk.', ['½ cup', 118.3]],
  ['Add half a cup of milk.', ['half a cup', 118.3]],
  ['Add a teaspoon of salt.', ['a teaspoon', 4.9]],
  ['Add half a teaspoon of salt.', ['half a teaspoon', 2.5]],
  ['Add two tablespoons oil.', ['two tablespoons', 29.6]],
  ['Add 3–4 tbsp water.', ['3–4 tbsp', 51.8]],
  ['Add 3 to 4 tbsp. water.', ['3 to 4 tbsp.', 51.8]],
  ['Pour in 250 ml stock.', ['250 ml', 250]],
  ['Pour in a litre of stock.', ['a litre', 1000]],
  ['Pour in 2 fl oz cream.', ['2 fl oz', 59.1]],
  ['Crush two cloves of garlic.', ['two cloves', 2]],
  ['Crush 3 garlic cloves.', ['3', 3]],
  ['Crack in 2 eggs and a third.', ['2', 2]],
  ['Chop three onions.', ['three', 3]],
  ['Add a pinch of salt.', ['a pinch', 1]],
  ['Add one scoop of powder.', ['one scoop', 1]],
  [
    'Mix 200 g flour, 1 tsp salt and 120 ml water.',
    ['200 g', 200],
    ['1 tsp', 4.9],
    ['120 ml', 120],
  ],
  ['Add 10-12 g of yeast.', ['10-12 g', 11]],
  ['Add between 10 and 12 g of yeast.', ['10 and 12 g', 11]],
]

describe('amounts', () => {
  test.each(phrases.map(([phrase, ...expected]) => ({phrase, expected})))(
    '$phrase',
    ({phrase, expected}) => {
      expect(sizes(phrase)).toEqual(expected)
    },
  )

  test.each([
    'Grease a 900 g loaf tin.',
    'Grease a 2 lb loaf tin.',
    'Fill a 500 ml jar.',
    'Shape 50 g balls.',
    'Fry for 10 minutes.',
    'Cut 2 cm cubes.',
    'Bake at 180 C.',
    'Add a little water.',
    'Leave 20 % behind.',
    'Divide in two.',
  ])('none in: %s', (phrase) => {
    expect(sizes(phrase)).toEqual([])
  })
})

describe('pans', () => {
  test.each([
    ['Line a 24 cm round tin.', 'round', 240, undefined],
    ['Line a 24-cm round tin.', 'round', 240, undefined],
    ['Line a round tin, 24 cm across.', 'round', 240, undefined],
    ['Line a 9-inch springform pan.', 'round', 228.6, undefined],
    ['Line a 9in springform tin.', 'round', 228.6, undefined],
    ['Line a 20cm/8in square cake tin.', 'square', 200, undefined],
    ['Line a 20 cm (8 inch) square cake tin.', 'square', 200, undefined],
    ['Grease a 23 x 33 cm baking dish.', 'rectangle', 230, 330],
    ['Grease a 23 cm x 33 cm baking dish.', 'rectangle', 230, 330],
    ['Grease a 33 by 23 cm dish.', 'rectangle', 230, 330],
    ['Grease a 9 × 13 in pan.', 'rectangle', 228.6, 330.2],
    ['Use a tin of 23 x 33 cm.', 'rectangle', 230, 330],
    ['Use a deep 28cm frying pan.', 'round', 280, undefined],
    ['Use a 10 x 20 cm loaf tin.', 'rectangle', 100, 200],
    ['Use a 26 cm ring mould.', 'ring', 260, undefined],
    ['Use a 24 cm pot.', undefined, 240, undefined],
  ])('%s', (phrase, shape, across, second) => {
    const found = pansIn(phrase)
    expect(found).toHaveLength(1)
    expect(found[0]?.shape).toBe(shape)
    expect(found[0]?.acrossMillimetres).toBeCloseTo(across)
    if (second === undefined) expect(found[0]?.secondMillimetres).toBeUndefined()
    else expect(found[0]?.secondMillimetres).toBeCloseTo(second)
  })

  test.each([
    'Cut into 2 cm cubes in a pan.',
    'Roll to a 30 cm circle.',
    'Pour 2 cm of water into the tin.',
    'Put the tin in the oven.',
    'Cut 3 cm pieces. Put the tin in.',
  ])('none in: %s', (phrase) => {
    expect(pansIn(phrase)).toEqual([])
  })
})

describe('sentences', () => {
  test.each([
    ['Fry 10 min. more. Serve.', ['Fry 10 min. more.', 'Serve.']],
    ['Cut 1.5 cm dice. Fry!', ['Cut 1.5 cm dice.', 'Fry!']],
    ['One line\nanother', ['One line\n', 'another']],
    ['No stop', ['No stop']],
    ['', []],
  ])('%j', (text, expected) => {
    expect(sentencesOf(text).map(({from, to}) => text.slice(from, to))).toEqual(expected)
  })
})
