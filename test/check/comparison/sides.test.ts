/** What a dish is set beside, and what is said where it cannot be. */

import {describe, expect, test} from 'vitest'
import {increasedBy, reducedBy} from '../../../src/check/claims/relative.ts'
import {type SidesResult, sidesOf} from '../../../src/check/comparison/sides.ts'
import type {Comparison, Recipe} from '../../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../../src/nutrition/compute-cookbook.ts'
import {at, cookbook, food, grams, line, recipe} from '../../kitchen.ts'
import {dishWith} from '../claims/kitchen-dish.ts'

const oats = food('oats', {energy: 400, fibre: 10})
const cream = food('cream', {energy: 200})

const weighed = {serves: at(2), batch: at(grams(200))}
const usual = recipe('usual-bowl', [line('oats', 200)], {...weighed, title: at('Usual bowl')})

type Against = Partial<Pick<Comparison, 'recipe' | 'food'>>

function beside(
  against: Against,
  basis: Comparison['basis'],
  own: Partial<Recipe> = weighed,
  others: readonly Recipe[] = [usual],
): SidesResult {
  const dish = recipe('bowl', [line('oats', 100)], {title: at('Bowl'), ...own})
  const book = cookbook([oats, cream], [dish, ...others])
  const all = computeCookbook(book).computed
  const computed = all.get('bowl')
  if (!computed) throw new Error('not computed')
  return sidesOf(computed, {basis, statements: [], ...against}, {cookbook: book, all})
}

function energies({sides, problem}: SidesResult) {
  expect(problem).toBeUndefined()
  return [sides?.here.energy.value, sides?.there.energy.value, sides?.name, sides?.basis]
}

describe('a dish beside a recipe', () => {
  const against = {recipe: at('usual-bowl')}

  test('is compared by serving or by 100 g', () => {
    expect(energies(beside(against, 'serving'))).toEqual([200, 400, 'Usual bowl', 'serving'])
    expect(energies(beside(against, '100 g'))).toEqual([200, 400, 'Usual bowl', '100 g'])
  })

  test('wants the basis on both sides, and names the one without', () => {
    const reason = (result: SidesResult) => [
      result.sides,
      result.problem?.reason,
      result.problem?.expected,
    ]
    expect(reason(beside(against, 'serving', {batch: weighed.batch}))).toEqual([
      undefined,
      'Compared by `serving` without `serves` in `Bowl`, expected `serves` there',
      ['serves'],
    ])
    const unweighed = recipe('usual-bowl', [line('oats', 200)], {
      title: at('Usual bowl'),
      serves: at(1),
    })
    expect(reason(beside(against, '100 g', weighed, [unweighed]))).toEqual([
      undefined,
      'Compared by `100 g` without `yield` in `Usual bowl`, expected `yield` there',
      ['yield'],
    ])
  })

  test('is another recipe of the cookbook', () => {
    expect(beside({recipe: at('bowl')}, 'serving').problem?.reason).toBe(
      'Compared with `bowl`, which is this recipe itself, expected another one',
    )
    expect(beside({recipe: at('usual-bowll')}, 'serving').problem).toMatchObject({
      reason:
        'Compared with `usual-bowll`, which is no recipe of this cookbook, expected `usual-bowl`',
      expected: ['usual-bowl'],
    })
    expect(beside({recipe: at('x')}, 'serving', weighed, []).problem?.reason).toBe(
      'Compared with `x`, which is no recipe of this cookbook, expected the slug of a recipe',
    )
  })

  test('that could not be computed has had its message', () => {
    const broken = recipe('broken', [line('gravel', 1)], weighed)
    expect(beside({recipe: at('broken')}, 'serving', weighed, [broken])).toEqual({})
  })
})

describe('a dish beside a food', () => {
  test('is compared by 100 g, or with as much of it as a serving weighs', () => {
    expect(energies(beside({food: at('cream')}, '100 g'))).toEqual([200, 200, 'cream', '100 g'])
    const heavy = {serves: at(2), batch: at(grams(500))}
    expect(energies(beside({food: at('cream')}, 'serving', heavy))).toEqual([
      200,
      500,
      'cream',
      'serving',
    ])
  })

  test('wants the finished batch weighed', () => {
    for (const basis of ['100 g', 'serving'] as const) {
      expect(beside({food: at('cream')}, basis, {serves: at(1)}).problem?.reason).toBe(
        'Compared by `100 g` without `yield` in `Bowl`, expected `yield` there',
      )
    }
  })

  test('that nobody knows is told', () => {
    expect(beside({food: at('gravel')}, '100 g').problem).toMatchObject({
      reason: 'Food `gravel` is unknown, expected a name from foods.yaml or the food table',
      actual: 'gravel',
    })
  })

  test('and nothing beside nothing', () => {
    expect(beside({}, '100 g')).toEqual({})
  })
})

describe('a claim of less or more', () => {
  /** The dish has the share given of what `oats` has, each known to `step`. */
  function dish(fibre: number, step = 1e-9) {
    return dishWith({fibre}, {rules: 'us', step})
  }

  function tried(
    condition: ReturnType<typeof reducedBy>,
    fibre: number,
    there?: number,
    step?: number,
  ) {
    const here = dish(fibre, step)
    const other = there === undefined ? dishWith({}, {rules: 'us'}) : dish(there, step)
    return condition({
      ...here,
      beside: {
        here: here.computed.batch,
        there: other.computed.batch,
        basis: '100 g',
        name: 'oats',
      },
    })
  }

  test('holds from its share on', () => {
    expect(tried(reducedBy('fibre', 0.25), 7.5, 10).outcome).toBe('holds')
    expect(tried(reducedBy('fibre', 0.25), 7.6, 10).outcome).toBe('fails')
    expect(tried(increasedBy('fibre', 0.3), 13, 10).outcome).toBe('holds')
    expect(tried(increasedBy('fibre', 0.3), 12.9, 10).outcome).toBe('fails')
  })

  test('has to hold at the unfavourable end', () => {
    // A step of 0.1 g on 7.5 of 10 g is about 1 % of the ratio.
    expect(tried(reducedBy('fibre', 0.25), 7.5, 10, 0.1).outcome).toBe('fails')
    expect(tried(reducedBy('fibre', 0.25), 7.3, 10, 0.1).outcome).toBe('holds')
    expect(tried(increasedBy('fibre', 0.3), 13, 10, 0.1).outcome).toBe('fails')
    expect(tried(increasedBy('fibre', 0.3), 13.3, 10, 0.1).outcome).toBe('holds')
  })

  test('says how far apart they are', () => {
    expect(tried(reducedBy('fibre', 0.25), 7, 10)).toEqual({
      outcome: 'holds',
      found: 'fibre `30.0 ± 0.0 % less` than `oats` per 100 g',
      expected: '`25 % less` or lower',
    })
    expect(tried(increasedBy('fibre', 0.3), 15, 10)).toMatchObject({
      expected: '`30 % more` or higher',
    })
  })

  test('cannot be told without a figure, or with none of it there', () => {
    expect(tried(reducedBy('fibre', 0.25), 7)).toEqual({
      outcome: 'unknown',
      found: 'unknown fibre',
      expected: 'a figure for `all of it`',
    })
    expect(tried(reducedBy('fibre', 0.25), 7, 0)).toEqual({
      outcome: 'unknown',
      found: 'unknown fibre',
      expected: 'some fibre in `oats`',
    })
    expect(reducedBy('fibre', 0.25)(dish(7))).toMatchObject({
      outcome: 'unknown',
      found: 'nothing to compare it with',
    })
  })
})
