/** The block that a recipe without figures is given to paste, and how long a dish may keep. */

import {describe, expect, test} from 'vitest'
import {statedBlock} from '../../src/check/rules/missing-stated.ts'
import type {Recipe} from '../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, grams, line, recipe, settings} from '../kitchen.ts'
import {findingsIn} from './check-text.ts'

const oats = food('oats', {energy: 400, protein: 13, fat: 7, carbohydrate: 60})
const grit = food('grit', {})

function block(of: string, more: Partial<Recipe>): string | undefined {
  const one = recipe('dish', [line(of, 200)], more)
  const computed = computeCookbook(cookbook([oats, grit], [one])).computed.get('dish')
  if (!computed) throw new Error('not computed')
  return statedBlock(computed, settings)
}

describe('the block to paste', () => {
  test('is per serving where the dish serves somebody, else per 100 g and says so', () => {
    expect(block('oats', {serves: at(2), batch: at(grams(400))})).toBe(
      'stated: { energy: 400 kcal, protein: 13 g, carbohydrate: 60 g, fat: 7.0 g }',
    )
    expect(block('oats', {batch: at(grams(400))})).toBe(
      'stated: { per: 100 g, energy: 200 kcal, protein: 6.5 g, carbohydrate: 30 g, fat: 3.5 g }',
    )
  })

  test('is none where nothing can be told', () => {
    expect(block('oats', {})).toBeUndefined()
    expect(block('grit', {serves: at(1)})).toBeUndefined()
  })
})

// Guidance: USDA; a cooked dish with meat 3 to 4 days in the fridge, two hours at room temperature.
describe('how long a dish keeps', () => {
  const said = (keeps: string) =>
    findingsIn({
      ingredients: ['chicken breast, skinless: 400 g', 'water: 400 g'],
      front: [`keeps: ${keeps}`],
      method: 'Simmer the chicken in the water until 74 °C inside. Cool within 2 hours.',
    })
      .filter(({ruleId}) => ruleId === 'keeps-guidance')
      .map(({reason}) => reason)

  test('is two hours at room temperature', () => {
    expect(said('{ room: 2 hours }')).toEqual([])
    expect(said('{ room: 3 hours }')).toEqual([
      expect.stringMatching(/^Keeps `3 hours` at room temperature, expected `2 h` or less for /u),
    ])
  })

  test('is days in the fridge', () => {
    expect(said('{ fridge: 3 days }')).toEqual([])
    expect(said('{ fridge: 9 days }')).toEqual([
      expect.stringMatching(/^Keeps `9 days` in the fridge, expected `\d days` or less for /u),
    ])
    expect(said('{ room: 3 hours, fridge: 9 days }')).toHaveLength(2)
  })
})
