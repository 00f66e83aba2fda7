/** Which foods bring sugar or salt that somebody put in. */

import {describe, expect, test} from 'vitest'
import {addedSalt, addedSugar} from '../../../src/check/claims/nothing-added.ts'
import type {Food} from '../../../src/food/food.ts'
import type {Nutrient} from '../../../src/food/nutrients.ts'
import {food} from '../../kitchen.ts'
import {computedIn} from '../check-text.ts'

function of(
  figures: Partial<Record<Nutrient, number>>,
  more: Partial<Food> & {readonly name?: string} = {},
): Food {
  const {name = 'xx', ...rest} = more
  return food(name, figures, rest)
}

/** A food of foods.yaml with the panel given beside its macros. */
function packet(panel: string): Food {
  const {cookbook} = computedIn({
    ingredients: ['water: 1 g'],
    method: '',
    foods: `xx: { label: { per: 100 g, energy: 60 kcal, protein: 5 g, fat: 2 g, carbohydrate: 6 g${panel} } }\n`,
  })
  const found = cookbook.foods.lookUp('xx')
  if (!found) throw new Error('not read')
  return found
}

describe('sugar', () => {
  test('is brought by sugar, juice and honey, whatever their figures', () => {
    for (const trait of ['sugar', 'juice'] as const) {
      expect(addedSugar(of({sugars: 0}, {traits: new Set([trait])}))).toBe('added')
    }
    expect(addedSugar(of({sugars: 0}, {from: ['honey']}))).toBe('added')
  })

  test('is told by the name, "no added sugar" before "sweetened"', () => {
    for (const name of ['milk, sweetened', 'peel, candied', 'oat drink', 'tomato concentrate']) {
      expect(addedSugar(of({}, {name, state: 'raw'})), name).toBe('added')
    }
    for (const name of ['almond drink, unsweetened', 'pears in juice drink, no added sugar']) {
      expect(addedSugar(of({}, {name})), name).toBe('none')
    }
  })

  test('is told by the figure of added sugars where there is one', () => {
    expect(addedSugar(of({addedSugars: 0, sugars: 12}))).toBe('none')
    expect(addedSugar(of({addedSugars: 0.1, sugars: 12}))).toBe('added')
  })

  test('is not there where sugars are at most 0.5 g in 100 g', () => {
    // Regulation (EC) 1924/2006 Annex, "sugars-free".
    expect(addedSugar(of({sugars: 0.5}))).toBe('none')
    expect(addedSugar(of({sugars: 0.6}))).toBe('unknown')
    expect(addedSugar(packet(', sugars: 0.5 g'))).toBe('none')
  })

  test('is not in what is as it grew, cooked or dried; a packet may be anything', () => {
    for (const state of ['raw', 'cooked', 'dry'] as const) {
      expect(addedSugar(of({sugars: 12}, {state})), state).toBe('none')
    }
    expect(addedSugar(of({sugars: 12}, {state: 'canned'}))).toBe('unknown')
    expect(addedSugar(packet(', sugars: 6 g'))).toBe('unknown')
  })

  test('of plain dairy is its lactose, up to 6 g', () => {
    expect(addedSugar(of({sugars: 6}, {aisle: 'dairy'}))).toBe('none')
    expect(addedSugar(of({sugars: 6.1}, {aisle: 'dairy'}))).toBe('unknown')
    expect(addedSugar(of({}, {aisle: 'dairy'}))).toBe('unknown')
    expect(addedSugar(of({sugars: 6}, {aisle: 'drinks'}))).toBe('unknown')
  })
})

describe('salt', () => {
  test('is brought by salt, cured food and stock', () => {
    for (const trait of ['salt', 'cured', 'stock'] as const) {
      expect(addedSalt(of({sodium: 0}, {traits: new Set([trait])})), trait).toBe('added')
    }
  })

  test('is not there where sodium is at most 5 mg in 100 g', () => {
    // Regulation (EC) 1924/2006 Annex, "sodium-free".
    expect(addedSalt(of({sodium: 5}))).toBe('none')
    expect(addedSalt(of({sodium: 6}))).toBe('unknown')
    expect(addedSalt(of({}))).toBe('unknown')
  })

  test('is not in what is as it grew or dried; what was cooked or packed may have it', () => {
    for (const state of ['raw', 'dry'] as const) {
      expect(addedSalt(of({sodium: 90}, {state})), state).toBe('none')
    }
    for (const state of ['cooked', 'canned'] as const) {
      expect(addedSalt(of({sodium: 90}, {state})), state).toBe('unknown')
    }
    expect(addedSalt({...packet(', salt: 0.4 g'), state: 'raw'})).toBe('unknown')
  })
})
