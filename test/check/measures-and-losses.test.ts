import {describe, expect, test} from 'vitest'
import {checkCookbook} from '../../src/check/check-cookbook.ts'
import type {IngredientLine, Passage} from '../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import type {CountAmount, WeightAmount} from '../../src/units/amount.ts'
import {at, cookbook, food, grams, line, nowhere, recipe} from '../kitchen.ts'

const mince = food('mince', {energy: 254, fat: 20}, {from: ['beef'], state: 'raw'})
const lean = food('lean mince', {energy: 137, fat: 5}, {from: ['beef'], state: 'raw'})
const onion = food('onion', {energy: 40}, {measures: new Map([['medium', 110]])})

function problems(lines: readonly IngredientLine[], ...steps: readonly string[]) {
  const passages = steps.map(
    (text): Passage => ({kind: 'step', text, place: nowhere, stretches: [], lineStarts: [0]}),
  )
  const dish = recipe('dish', lines, {serves: at(1)})
  const book = cookbook([mince, lean, onion], [{...dish, method: {...dish.method, passages}}], {
    severities: new Map([['missing-stated', 'off']]),
  })
  return checkCookbook(book, computeCookbook(book).computed).filter(({ruleId}) =>
    ['fat-poured-off', 'measure-weight'].includes(ruleId),
  )
}

describe('fat-poured-off', () => {
  const browned = 'Brown the mince over high heat.'

  test('says how much it could be when fatty meat is browned and drained', () => {
    expect(problems([line('mince', 500)], browned, 'Spoon off the fat.')).toMatchObject([
      {
        ruleId: 'fat-poured-off',
        severity: 'warning',
        // 45 % of 100 g.
        reason:
          'Fat of `mince` is drained in the method, expected `poured off` on its line: it can be up to `45 g`',
      },
    ])
  })

  test.each([
    'Brown the mince over high heat, then drain.',
    'Brown the mince (10 min); drain well and return to the pan.',
    'Brown and drain the mince.',
  ])('knows draining without the word fat: "%s"', (step) => {
    expect(problems([line('mince', 500)], step)).toMatchObject([{ruleId: 'fat-poured-off'}])
  })

  test('is content with a line that says what left', () => {
    const pouredOff = {kind: 'weighed', amount: at(grams(40)), what: 'fat'} as const
    expect(problems([line('mince', 500, {pouredOff})], browned, 'Spoon off the fat.')).toEqual([])
  })

  test.each([
    [browned, 'Stir in the tomatoes.'],
    ['Drain the beans.', 'Brown the onion.'],
    ['Brown the mince and drain the beans.', 'Stir.'],
    [browned, 'Cook the pasta and drain.'],
    ['Simmer the mince.', 'Pour in the stock.'],
  ])('says nothing of "%s %s"', (...steps) => {
    expect(problems([line('mince', 500)], ...steps)).toEqual([])
  })

  test('says nothing of lean meat', () => {
    expect(problems([line('lean mince', 500)], browned, 'Pour off the fat.')).toEqual([])
  })
})

describe('measure-weight', () => {
  function beside(weight: number, count: number): WeightAmount {
    const measure: CountAmount = {
      kind: 'count',
      text: `${count} medium`,
      count: {value: count, halfRange: 0, increment: 1},
      measure: 'medium',
    }
    return {...grams(weight), text: `${weight} g (${count} medium)`, beside: measure}
  }

  test('two medium onions are about 220 g', () => {
    expect(problems([line('onion', beside(220, 2))])).toEqual([])
    expect(problems([line('onion', beside(170, 2))])).toEqual([])
    expect(problems([line('onion', beside(100, 2))])).toMatchObject([
      {
        ruleId: 'measure-weight',
        reason:
          'Amount `100 g (2 medium)` of `onion`, expected `2 medium` to weigh about as much: it weighs `220 g`',
      },
    ])
  })
})
