/** Which foods each diet leaves out: common practice, as src/check/absences/diet.ts says. */

import {describe, expect, test} from 'vitest'
import {dietOf} from '../../../src/check/absences/diet.ts'
import type {Allergen, Food, Origin} from '../../../src/food/food.ts'
import type {Nutrient} from '../../../src/food/nutrients.ts'
import {food} from '../../kitchen.ts'

function objection(
  diet: string,
  more: Partial<Food>,
  figures: Partial<Record<Nutrient, number>> = {},
) {
  const meant = dietOf(diet)
  if (!meant) throw new Error(`no diet ${diet}`)
  return meant.against(food('xx', figures, more))
}

const leftOut: Readonly<Record<string, readonly Origin[]>> = {
  vegetarian: [
    'beef',
    'veal',
    'pork',
    'lamb',
    'game',
    'poultry',
    'fish',
    'crustacean',
    'mollusc',
    'gelatine',
  ],
  vegan: [
    'beef',
    'pork',
    'poultry',
    'fish',
    'crustacean',
    'mollusc',
    'gelatine',
    'egg',
    'dairy',
    'honey',
  ],
  pescatarian: ['beef', 'veal', 'pork', 'lamb', 'game', 'poultry', 'gelatine'],
  'pork-free': ['pork', 'gelatine'],
  'beef-free': ['beef', 'veal', 'gelatine'],
}

const kept: Readonly<Record<string, readonly Origin[]>> = {
  vegetarian: ['plant', 'egg', 'dairy', 'honey'],
  vegan: ['plant'],
  pescatarian: ['plant', 'fish', 'crustacean', 'mollusc', 'egg', 'dairy'],
  'pork-free': ['beef', 'lamb', 'poultry', 'fish'],
  'beef-free': ['pork', 'lamb', 'poultry', 'fish'],
}

describe.each(Object.keys(leftOut))('%s', (diet) => {
  test('leaves out what it is made without, and says what of it', () => {
    for (const origin of leftOut[diet] ?? []) {
      expect(objection(diet, {from: ['plant', origin]}), origin).toEqual({
        kind: 'no',
        why: `is made from ${origin}`,
      })
    }
  })

  test('keeps the rest', () => {
    for (const origin of kept[diet] ?? []) {
      expect(objection(diet, {from: [origin]}), origin).toBeUndefined()
    }
  })

  test('cannot tell of a food that nobody said the origin of', () => {
    expect(objection(diet, {from: []})).toEqual({
      kind: 'unknown',
      key: 'made from',
      why: 'does not say what it is made from',
    })
  })
})

test.each([
  ['vegetarian', ['fish', 'crustacean', 'mollusc'], ['egg', 'milk', 'wheat']],
  ['vegan', ['fish', 'crustacean', 'mollusc', 'egg', 'milk'], ['wheat', 'soy']],
  ['pescatarian', [], ['fish', 'crustacean', 'egg', 'milk']],
] as const)('%s goes by allergens too', (diet, no, yes) => {
  const holding = (allergen: Allergen) =>
    objection(diet, {from: ['plant'], contains: new Set([allergen])})
  for (const allergen of no) {
    expect(holding(allergen), allergen).toEqual({kind: 'no', why: `contains ${allergen}`})
  }
  for (const allergen of yes) expect(holding(allergen), allergen).toBeUndefined()
})

test('alcohol-free goes by the figure and by what a food is, and knows that packets are silent', () => {
  const no = {kind: 'no', why: 'holds alcohol'}
  expect(objection('alcohol-free', {from: ['plant']}, {alcohol: 0.1})).toEqual(no)
  expect(objection('alcohol-free', {traits: new Set(['alcohol'])}, {alcohol: 0})).toEqual(no)
  expect(objection('alcohol-free', {from: ['plant']}, {alcohol: 0})).toBeUndefined()
  expect(objection('alcohol-free', {from: ['plant']})).toBeUndefined()
  expect(objection('alcohol-free', {from: []}, {alcohol: 0})).toBeUndefined()
  expect(objection('alcohol-free', {from: []})).toMatchObject({kind: 'unknown'})
})

test('every word of a diet means it', () => {
  for (const [word, diet] of [
    ['Vegetarians', 'vegetarian'],
    ['lacto-ovo vegetarian', 'vegetarian'],
    ['plant-based', 'vegan'],
    ['pescetarian', 'pescatarian'],
    ['no pork', 'pork-free'],
    ['without beef', 'beef-free'],
    ['no alcohol', 'alcohol-free'],
  ] as const) {
    expect(dietOf(word)?.name, word).toBe(diet)
  }
  expect(dietOf('gluten-free')).toBeUndefined()
})
