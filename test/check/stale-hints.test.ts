/** The one slip that would explain every stated figure at once. */

import {expect, test} from 'vitest'
import {staleHints} from '../../src/check/stale-hints.ts'
import {judge} from '../../src/check/verdict.ts'
import type {Settings} from '../../src/cookbook/cookbook.ts'
import type {Stated} from '../../src/cookbook/recipe.ts'
import type {PublishedNutrient} from '../../src/food/nutrients.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, grams, line, nowhere, recipe, settings} from '../kitchen.ts'

/** A batch of 1,200 kcal, 60 g protein, 120 g carbohydrate of which 20 g are fibre. */
const meal = food('meal', {
  energy: 120,
  protein: 6,
  carbohydrate: 12,
  availableCarbohydrate: 10,
  fibre: 2,
})

function hints(
  figures: Partial<Record<PublishedNutrient, number>>,
  {
    serves = 4,
    basis = 'serving',
    carbohydrate = 'total',
  }: {
    readonly serves?: number | undefined
    readonly basis?: Stated['basis']
    readonly carbohydrate?: Settings['carbohydrate']
  } = {},
): readonly string[] {
  const one = recipe('dish', [line('meal', 1000)], {
    batch: at(grams(1000)),
    ...(serves > 0 && {serves: at(serves)}),
  })
  const own: Settings = {...settings, tolerance: 'strict', carbohydrate}
  const computed = computeCookbook(cookbook([meal], [one], own)).computed.get('dish')
  if (!computed) throw new Error('not computed')
  const stated: Stated = {
    basis,
    place: nowhere,
    figures: (['energy', 'protein', 'carbohydrate'] as const).flatMap((nutrient) => {
      const value = figures[nutrient]
      return value === undefined
        ? []
        : [{nutrient, value, increment: 1, text: String(value), place: nowhere}]
    }),
  }
  return staleHints(judge(stated, computed, own), stated, computed, own)
}

test('figures that hold need no hint', () => {
  expect(hints({energy: 300, protein: 15})).toEqual([])
})

test('figures of another number of servings say of which, from 1 to 24', () => {
  expect(hints({energy: 200, protein: 10})).toEqual(['All of them would follow from `serves: 6`.'])
  expect(hints({energy: 1200, protein: 60})).toEqual(['All of them would follow from `serves: 1`.'])
  expect(hints({energy: 50, protein: 2.5})).toEqual(['All of them would follow from `serves: 24`.'])
  expect(hints({energy: 12, protein: 0.6}, {serves: 4})).toEqual([])
})

test('one figure alone, or figures that fit no number together, get no hint', () => {
  expect(hints({energy: 200})).toEqual([])
  expect(hints({energy: 200, protein: 20})).toEqual([])
})

test('figures of 100 g, and of a dish that serves nobody, have no servings to mistake', () => {
  expect(hints({energy: 60, protein: 3}, {basis: '100 g'})).toEqual([])
  expect(hints({energy: 60, protein: 3}, {basis: '100 g', serves: 0})).toEqual([])
})

test('carbohydrate of the other convention is named', () => {
  expect(hints({energy: 300, carbohydrate: 25})).toEqual([
    'It agrees with the carbohydrate without fibre: `carbohydrate: available` in cookbook.yaml publishes that one.',
  ])
  expect(hints({energy: 300, carbohydrate: 30}, {carbohydrate: 'available'})).toEqual([
    'It agrees with the carbohydrate with fibre: `carbohydrate: total` in cookbook.yaml publishes that one.',
  ])
  expect(hints({energy: 300, carbohydrate: 40})).toEqual([])
  // The energy drifts, the carbohydrate does not.
  expect(hints({energy: 400, carbohydrate: 30})).toEqual([])
})
