/**
 * Which temperature belongs to which raw food. Minimums: USDA FSIS and foodsafety.gov, Safe Minimum
 * Internal Temperature Chart (2019). Local rules and licensed practice come first.
 */

import {describe, expect, test} from 'vitest'
import {
  hazardOf,
  hazards,
  minimumCelsius,
  temperatureText,
} from '../../../src/check/safety/hazard.ts'
import {
  reaches,
  simmersLong,
  temperaturesOf,
} from '../../../src/check/safety/inside-temperatures.ts'
import {food} from '../../kitchen.ts'
import {computedIn} from '../check-text.ts'

function dish(method: string, ...ingredients: readonly string[]) {
  const {computed} = computedIn({ingredients, method})
  const one = computed.get('dish')
  if (!one) throw new Error('not computed')
  return one
}

const chicken = 'chicken breast, skinless: 400 g'
const salmon = 'salmon: 400 g'

describe('a raw food', () => {
  test.each([
    [{from: ['poultry'], state: 'raw'}, 'poultry'],
    [{from: ['beef'], state: 'raw'}, 'wholeMeat'],
    [{from: ['lamb'], state: 'raw', traits: new Set(['ground'] as const)}, 'groundMeat'],
    [{from: ['pork'], state: 'raw', traits: new Set(['offal'] as const)}, 'groundMeat'],
    [{from: ['fish'], state: 'raw'}, 'fish'],
    [{from: ['crustacean'], state: 'raw'}, 'shellfish'],
    [{from: ['mollusc'], state: 'raw'}, 'shellfish'],
    [{from: ['egg'], state: 'raw'}, 'egg'],
    [{from: ['poultry'], aisle: 'poultry'}, 'poultry'],
    [{from: ['egg'], aisle: 'eggs'}, 'egg'],
    [{from: ['poultry'], aisle: 'prepared'}, undefined],
    [{from: ['poultry'], state: 'cooked', aisle: 'poultry'}, undefined],
    [{from: ['plant'], state: 'raw'}, undefined],
    [{from: ['pork'], state: 'raw', traits: new Set(['cured'] as const)}, undefined],
    [{from: ['fish'], state: 'raw', traits: new Set(['smoked'] as const)}, undefined],
    [{from: ['poultry'], state: 'raw', traits: new Set(['stock'] as const)}, undefined],
    [{from: ['pork'], state: 'raw', traits: new Set(['fat'] as const)}, undefined],
  ] as const)('%j is %s', (more, hazard) => {
    expect(hazardOf(food('xx', {}, more))).toBe(hazard)
  })

  test('has the minimum of the chart, in the scale in which it is lower', () => {
    expect(temperatureText('poultry')).toBe('74 °C (165 °F)')
    expect(temperatureText('groundMeat')).toBe('71 °C (160 °F)')
    expect(temperatureText('fish')).toBe('63 °C (145 °F)')
    // 165 °F are 73.9 °C, 145 °F 62.8 °C.
    expect(minimumCelsius('poultry')).toBeCloseTo(73.89, 2)
    expect(minimumCelsius('wholeMeat')).toBeCloseTo(62.78, 2)
    for (const {fahrenheit, celsius} of Object.values(hazards)) {
      expect(Math.abs(((fahrenheit - 32) * 5) / 9 - celsius)).toBeLessThan(0.5)
    }
  })
})

describe('a temperature in the method', () => {
  test('is that of the only raw food, named or not', () => {
    const [one] = temperaturesOf(dish('Cook until 74 °C inside.', chicken), 'poultry')
    expect(one && reaches(one, 'poultry')).toBe(true)
    const [less] = temperaturesOf(dish('Cook until 73 °C inside.', chicken), 'poultry')
    expect(less && reaches(less, 'poultry')).toBe(false)
    expect(less && reaches(less, 'fish')).toBe(true)
  })

  test('is that of the food its sentence names, where there are two', () => {
    const two = dish(
      'Fry the chicken until 74 °C inside. Fry the salmon until 63 °C inside.',
      chicken,
      salmon,
    )
    const celsius = (hazard: 'poultry' | 'fish') =>
      temperaturesOf(two, hazard).map(({temperature}) => temperature.lowCelsius)
    expect(celsius('poultry')).toEqual([74])
    expect(celsius('fish')).toEqual([63])
  })

  test('is that of the food its step names, where its sentence names none', () => {
    const two = dish(
      '1. Fry the chicken. It is done at 74 °C inside.\n2. Fry the salmon. It is done at 63 °C inside.',
      chicken,
      salmon,
    )
    expect(temperaturesOf(two, 'poultry').map((one) => one.temperature.lowCelsius)).toEqual([74])
    expect(temperaturesOf(two, 'fish').map((one) => one.temperature.lowCelsius)).toEqual([63])
  })

  test('belongs to no food where neither is named', () => {
    const two = dish('Cook until 74 °C inside.', chicken, salmon)
    expect(temperaturesOf(two, 'poultry')).toEqual([])
    expect(temperaturesOf(two, 'fish')).toEqual([])
  })
})

describe('a simmer of an hour', () => {
  test.each([
    ['Simmer for 1 hour.', true],
    ['Simmer for 60 min.', true],
    ['Simmer for 59 min.', false],
    ['Simmer for 2 hours. Serve.', true],
    ['Marinate for 2 hours.', false],
    ['Bake in the oven for 2 hours.', false],
    ['Simmer for 10 min. Leave to stand for 2 hours.', false],
    ['Chill overnight, then simmer for 10 min.', false],
  ])('%s %j', (method, isLong) => {
    expect(simmersLong(dish(method, 'beef chuck, lean: 500 g').recipe)).toBe(isLong)
  })
})
