/**
 * Limits: Regulation (EC) 1924/2006, Annex, as amended by Regulation (EU) 1047/2012, in secondary
 * summaries; reference values: Regulation (EU) 1169/2011 Annex XIII.
 */
import {describe, expect, test} from 'vitest'
import type {Nutrient} from '../../../src/food/nutrients.ts'
import {at} from '../../kitchen.ts'
import {outcomeOf} from './kitchen-dish.ts'

const eu = {rules: 'eu'} as const
const drink = {...eu, recipe: {tags: [at('drink')]}}

// claim, nutrient, limit per 100 g, limit per 100 ml, side that still passes
const limits: readonly (readonly [string, Nutrient, number, number, 'most' | 'least'])[] = [
  ['low energy', 'energy', 40, 20, 'most'],
  ['low fat', 'fat', 3, 1.5, 'most'],
  ['fat-free', 'fat', 0.5, 0.5, 'most'],
  ['low sugars', 'sugars', 5, 2.5, 'most'],
  ['sugars-free', 'sugars', 0.5, 0.5, 'most'],
  ['low salt', 'sodium', 120, 120, 'most'],
  ['very low salt', 'sodium', 40, 40, 'most'],
  ['salt-free', 'sodium', 5, 5, 'most'],
  // 15 and 30 % of 800 mg, 14 mg, 2000 mg and 5 µg; half of it in drinks.
  ['source of calcium', 'calcium', 120, 60, 'least'],
  ['high calcium', 'calcium', 240, 120, 'least'],
  ['source of iron', 'iron', 2.1, 1.05, 'least'],
  ['high iron', 'iron', 4.2, 2.1, 'least'],
  ['source of potassium', 'potassium', 300, 150, 'least'],
  ['source of vitamin D', 'vitaminD', 0.75, 0.375, 'least'],
]

describe('a limit passes and just past it does not', () => {
  test.each(limits)('%s: %s', (claim, nutrient, solid, liquid, side) => {
    for (const [limit, made] of [
      [solid, eu],
      [liquid, drink],
    ] as const) {
      const past = side === 'most' ? limit * 1.001 : limit * 0.999
      const inside = side === 'most' ? limit * 0.999999 : limit * 1.000001
      expect(outcomeOf(claim, {[nutrient]: inside}, made)).toBe('holds')
      expect(outcomeOf(claim, {[nutrient]: past}, made)).toBe('fails')
    }
  })
})

describe('fibre', () => {
  test('passes by weight or by energy', () => {
    // 3 g in 100 g; 1.5 g in 100 kcal is 6 g in 400 kcal.
    expect(outcomeOf('source of fibre', {fibre: 3.001, energy: 400}, eu)).toBe('holds')
    expect(outcomeOf('source of fibre', {fibre: 2.9, energy: 190}, eu)).toBe('holds')
    expect(outcomeOf('source of fibre', {fibre: 2.9, energy: 200}, eu)).toBe('fails')
    expect(outcomeOf('high fibre', {fibre: 5.9, energy: 190}, eu)).toBe('holds')
    expect(outcomeOf('high fibre', {fibre: 5.9, energy: 200}, eu)).toBe('fails')
  })

  test('unknown in one food, it supports no claim, however much the others have', () => {
    expect(outcomeOf('high fibre', {energy: 200}, eu)).toBe('unknown')
  })
})

describe('share of the energy', () => {
  test('the worked example of the Finnish Food Authority', () => {
    // 3 g protein and 100 kcal in 100 g: 12 % of the energy, on the boundary of "source of protein".
    expect(outcomeOf('source of protein', {protein: 3.00001, energy: 100}, eu)).toBe('holds')
    expect(outcomeOf('source of protein', {protein: 2.99, energy: 100}, eu)).toBe('fails')
  })

  test('the worked example of the University of Reading', () => {
    // 4.7 g protein, 334 kJ and 1.7 g fat in 100 g: 24 %, "high protein"; "low fat".
    const example = {protein: 4.7, energy: 334 / 4.184, fat: 1.7}
    expect(outcomeOf('high protein', example, eu)).toBe('holds')
    expect(outcomeOf('low fat', example, eu)).toBe('holds')
  })

  test('by the EU factors where they can be worked out', () => {
    // 5 g protein, 10 g fat, 10 g available carbohydrate, 10 g fibre: 170 kcal; 20 of them protein.
    const figures = {energy: 90, energyEu: 170, protein: 5}
    expect(outcomeOf('high protein', figures, eu)).toBe('fails')
    expect(outcomeOf('high protein', {energy: 90, protein: 5}, eu)).toBe('holds')
  })
})

describe('saturated fat', () => {
  test('with trans fat, by weight and by energy', () => {
    const figures = {saturated: 1, trans: 0.49, energy: 200}
    expect(outcomeOf('low saturated fat', figures, eu)).toBe('holds')
    expect(outcomeOf('low saturated fat', {...figures, trans: 0.51}, eu)).toBe('fails')
    // 1.49 g × 9 kcal/g is 10 % of 134 kcal.
    expect(outcomeOf('low saturated fat', {...figures, energy: 134}, eu)).toBe('fails')
    const {trans: _, ...withoutTrans} = figures
    expect(outcomeOf('low saturated fat', withoutTrans, eu)).toBe('unknown')
  })
})

test('low energy is by the factors of the law where the foods have another energy', () => {
  // USDA SR28 (2015), NDB 11090 broccoli has 34 kcal by specific factors; Annex XIV gives 36.
  expect(outcomeOf('low energy', {energy: 39, energyEu: 41}, eu)).toBe('fails')
  expect(outcomeOf('low energy', {energy: 41, energyEu: 39}, eu)).toBe('holds')
  expect(outcomeOf('low energy', {energy: 39}, eu)).toBe('holds')
})

test('energy-free is for drinks', () => {
  expect(outcomeOf('energy-free', {energy: 3}, drink)).toBe('holds')
  expect(outcomeOf('energy-free', {energy: 3}, eu)).toBe('fails')
})

describe('the unfavourable end of the uncertainty', () => {
  test('decides on either side', () => {
    // A label rounded to a gram: 2.8 g stands for up to 3.3 g, at ± 2 × 1/√12 g.
    expect(outcomeOf('low fat', {fat: 2.8}, {...eu, step: 1})).toBe('fails')
    expect(outcomeOf('low fat', {fat: 2.8}, {...eu, step: 0.1})).toBe('holds')
    expect(outcomeOf('source of fibre', {fibre: 3.2, energy: 400}, {...eu, step: 1})).toBe('fails')
    expect(outcomeOf('source of fibre', {fibre: 3.2, energy: 400}, {...eu, step: 0.1})).toBe(
      'holds',
    )
  })

  test('without the weight of the batch nothing per 100 g can be told', () => {
    expect(outcomeOf('low fat', {fat: 1}, {...eu, isWeighed: false})).toBe('unknown')
  })
})
