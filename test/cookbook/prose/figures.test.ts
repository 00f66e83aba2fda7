import {describe, expect, test} from 'vitest'
import {figuresIn} from '../../../src/cookbook/prose/figures.ts'

/** Nutrient, value and what else is told, in one line. */
function told(text: string): readonly string[] {
  return figuresIn(text).map(({nutrient, value, bound, basis}) =>
    [
      nutrient,
      value,
      ...(bound === 'none' ? [] : [bound]),
      ...(basis ? [`per ${basis}`] : []),
    ].join(' '),
  )
}

describe('figures of a dish in a sentence', () => {
  test.each([
    ['Only 480 kcal!', ['energy 480']],
    ['Only 480 calories a bowl.', ['energy 480 per serving']],
    ['480 kilocalories, and it fills.', ['energy 480']],
    ['480 kcal and 38 g of protein.', ['energy 480', 'protein 38']],
    ['A pudding with 20 g of protein, made while the kettle boils.', ['protein 20']],
    ['38g protein per serving', ['protein 38 per serving']],
    ['Forty grams of protein in every bowl', ['protein 40 per serving']],
    ['12 grams of fibre', ['fibre 12']],
    ['12 g fiber and 30 g carbs', ['fibre 12', 'carbohydrate 30']],
    ['9 g of fat, 3 g of it saturated fat', ['fat 9']],
    ['9 g fat and 3 g saturates', ['fat 9', 'saturated 3']],
    ['120 kcal per 100 g', ['energy 120 per 100 g']],
    ['1900 kcal for the whole pot', ['energy 1900 per batch']],
    ['Under 500 kcal', ['energy 500 at most']],
    ['less than 500 kcal', ['energy 500 at most']],
    ['at least 30 g of protein', ['protein 30 at least']],
    ['more than 30 g of protein', ['protein 30 at least']],
    ['600 mg sodium', ['sodium 600']],
  ])('%s', (text, expected) => {
    expect(told(text)).toEqual(expected)
  })

  test('kilojoules are energy, in kcal', () => {
    const [energy] = figuresIn('2000 kJ a portion')
    expect(energy).toMatchObject({nutrient: 'energy', basis: 'serving'})
    // Thermochemical calorie: 4.184 kJ.
    expect(energy?.value).toBeCloseTo(2000 / 4.184, 9)
  })

  test.each([
    ['480 kcal', 1],
    ['about 480 kcal', 10],
    ['roughly 500 kcal', 100],
    ['around 12.5 g of protein', 1],
  ])('%s is known to %s', (text, increment) => {
    expect(figuresIn(text)[0]?.increment).toBe(increment)
  })

  test('has its exact place', () => {
    const text = 'One pot, only 480 kcal, four bowls.'
    expect(figuresIn(text).map(({from, to}) => text.slice(from, to))).toEqual(['480 kcal'])
  })
})

describe('what is no figure of the dish', () => {
  test.each([
    'Add 20 g of sugar.',
    'Stir in 30 g of protein powder.',
    '200 g fat-free yoghurt',
    '100 g of fat cubes',
    '90 kcal less than before',
    'The butter adds 90 kcal.',
    'Leaving the cream out saves 120 kcal.',
    'The classic version has 800 kcal.',
    'Each spoonful of oil is 120 kcal.',
    'Eat 2000 kcal a day.',
    '400 to 500 kcal',
    'Simmer for 20 min.',
    '38 g of proteinaceous matter',
    'calories',
    '',
  ])('%s', (text) => {
    expect(told(text)).toEqual([])
  })
})
