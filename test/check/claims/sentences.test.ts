/**
 * Sentences that a law wants beside a claim. 21 CFR 101.13(h): disclosure levels of a food 13 g fat,
 * 4 g saturated, 60 mg cholesterol, 480 mg sodium, of a main dish half as much again, of a meal
 * twice as much; seen in a secondary summary or from memory, as in the source.
 */

import {describe, expect, test} from 'vitest'
import {claimSentences} from '../../../src/check/claims/sentences.ts'
import {at} from '../../kitchen.ts'
import {dishWith, type MadeDish, type Per100g} from './kitchen-dish.ts'

const lean: Per100g = {
  energy: 200,
  fat: 1,
  saturated: 0.4,
  trans: 0,
  cholesterol: 10,
  sodium: 100,
  sugars: 4,
  addedSugars: 0,
  fibre: 8,
  protein: 20,
  carbohydrate: 20,
}

function told(claim: string, figures: Per100g, made: Partial<MadeDish> = {}): readonly string[] {
  const recipe = {claims: [at(claim)], ...made.recipe}
  const dish = dishWith({...lean, ...figures}, {rules: 'us', ...made, recipe})
  return claimSentences(dish).map(({text}) => text)
}

describe('US', () => {
  test('past a disclosure level readers are sent to the figures', () => {
    for (const [nutrient, level, name] of [
      ['fat', 13, 'fat'],
      ['saturated', 4, 'saturated fat'],
      ['cholesterol', 60, 'cholesterol'],
      ['sodium', 480, 'sodium'],
    ] as const) {
      expect(told('high protein', {[nutrient]: level - 1e-6})).toEqual([])
      expect(told('high protein', {[nutrient]: level + 0.1})).toEqual([
        `See nutrition information for ${name} content.`,
      ])
    }
    expect(told('high protein', {fat: 20, saturated: 6, sodium: 600})).toEqual([
      'See nutrition information for fat, saturated fat and sodium content.',
    ])
    expect(told('high protein', {fat: 20, sodium: 600})).toEqual([
      'See nutrition information for fat and sodium content.',
    ])
  })

  test('the upper end of the uncertainty counts', () => {
    // A step of 1 g is an expanded uncertainty of 2/√12 = 0.58 g.
    expect(told('high protein', {fat: 12.3}, {step: 1})).toEqual([])
    expect(told('high protein', {fat: 12.6}, {step: 1})).toEqual([
      'See nutrition information for fat content.',
    ])
  })

  test('a small serving is held to 50 g too', () => {
    // 20 g of it: 6 g of fat a serving, and 15 g in 50 g.
    expect(told('high protein', {fat: 30}, {portionGrams: 20})).toEqual([
      'See nutrition information for fat content.',
    ])
    expect(told('high protein', {fat: 30}, {portionGrams: 40})).toEqual([])
  })

  test('beside a claim about fibre stands the fat, unless it is low', () => {
    expect(told('high fiber', {fat: 5})).toEqual(['Contains 5.0 g of total fat per serving.'])
    expect(told('high fiber', {fat: 1})).toEqual([])
    expect(told('high protein', {fat: 5})).toEqual([])
  })

  test('beside no added salt stands that it is not free of sodium, unless it is', () => {
    expect(told('no added salt', {sodium: 100})).toEqual(['Not a sodium-free food.'])
    expect(told('no added salt', {sodium: 4})).toEqual([])
    expect(told('high protein', {sodium: 100})).toEqual([])
  })

  test('beside no sugar stands that it is not low in energy, unless it is', () => {
    const text =
      'Not a reduced calorie or low calorie food: see nutrition information for calorie and sugar content.'
    const small = {portionGrams: 100}
    expect(told('sugar-free', {sugars: 0, energy: 200}, small)).toEqual([text])
    expect(told('sugar-free', {sugars: 0, energy: 30}, small)).toEqual([])
    expect(told('high protein', {sugars: 0, energy: 200}, small)).toEqual([])
  })

  test('without a claim that the law has nothing is said', () => {
    expect(told('grandmother’s best', {fat: 40})).toEqual([])
  })
})

describe('EU', () => {
  const eu = {rules: 'eu'} as const

  test('no added sugars brings the sugars that are there by nature, unless there are none', () => {
    const dish = (sugars: number) =>
      claimSentences(
        dishWith({...lean, sugars}, {...eu, recipe: {claims: [at('no added sugars')]}}),
      )
    expect(dish(4)).toEqual([
      {
        text: 'Contains naturally occurring sugars.',
        source: 'Regulation (EC) 1924/2006, Annex, "with no added sugars"',
      },
    ])
    expect(dish(0.4)).toEqual([])
  })

  test('other claims bring nothing', () => {
    expect(told('high protein', {fat: 40}, eu)).toEqual([])
  })
})
