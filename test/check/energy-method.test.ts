import {describe, expect, test} from 'vitest'
import {judge} from '../../src/check/verdict.ts'
import type {Settings} from '../../src/cookbook/cookbook.ts'
import type {Stated} from '../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, line, nowhere, recipe} from '../kitchen.ts'

// A vegetable whose own energy is a sixth below what 4-4-9 gives (as broccoli, SR28 11090).
const greens = food('greens', {energy: 34, energyGeneral: 41, energyEu: 36, energyDigestible: 36})

function verdictOf(kcal: number, more: Partial<Settings> = {}, method?: 'foods' | 'general') {
  const stated: Stated = {
    basis: 'serving',
    place: nowhere,
    figures: [
      {nutrient: 'energy', value: kcal, increment: 1, text: `${kcal} kcal`, place: nowhere},
    ],
  }
  const dish = recipe('dish', [line('greens', 1000)], {
    serves: at(1),
    stated,
    ...(method && {energyMethod: at(method)}),
  })
  const book = cookbook([greens], [dish], more)
  const computed = computeCookbook(book).computed.get('dish')
  if (!computed) throw new Error('not computed')
  const [judged] = judge(stated, computed, book.settings)
  return [judged?.verdict, judged?.against]
}

describe('stated energy', () => {
  test('may follow any recognised method where nobody says which', () => {
    expect(verdictOf(340)).toEqual(['agrees', 'energy'])
    expect(verdictOf(410)).toEqual(['agrees', 'energyGeneral'])
    expect(verdictOf(360)).toEqual(['agrees', 'energyDigestible'])
    expect(verdictOf(385)).toEqual(['drift', 'energy'])
  })

  test('is held to the one the cookbook names, or the recipe before it', () => {
    expect(verdictOf(410, {energyMethod: 'foods'})).toEqual(['drift', 'energy'])
    expect(verdictOf(340, {energyMethod: 'general'})).toEqual(['drift', 'energyGeneral'])
    expect(verdictOf(340, {energyMethod: 'general'}, 'foods')).toEqual(['agrees', 'energy'])
  })
})
