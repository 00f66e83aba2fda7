import {describe, expect, test} from 'vitest'
import {temperaturesIn} from '../../../src/cookbook/prose/temperatures.ts'

/** Each phrase with its temperatures: words, centigrade to the degree, what is that hot. */
const phrases: readonly (readonly [string, ...(readonly [string, number, string])[]])[] = [
  ['Heat the oven to 180 °C.', ['180 °C', 180, 'oven']],
  ['Heat the oven to 180°C.', ['180°C', 180, 'oven']],
  ['Heat the oven to 180C.', ['180C', 180, 'oven']],
  ['Heat the oven to 180℃.', ['180℃', 180, 'oven']],
  ['Heat the oven to 180 ºc.', ['180 ºc', 180, 'oven']],
  ['Preheat the oven to 350 °F.', ['350 °F', 177, 'oven']],
  ['Preheat to 425 degrees Fahrenheit.', ['425 degrees Fahrenheit', 218, 'oven']],
  ['An oven at 220 degrees C.', ['220 degrees C', 220, 'oven']],
  [
    'Heat oven to 200C/180C fan/gas 6.',
    ['200C', 200, 'oven'],
    ['180C', 180, 'oven'],
    ['gas 6', 200, 'oven'],
  ],
  ['Bake at gas mark 4.', ['gas mark 4', 180, 'oven']],
  ['Bake at Gas Mark ½.', ['Gas Mark ½', 120, 'oven']],
  ['Roast at 200/180 °C.', ['200', 200, 'oven'], ['180 °C', 180, 'oven']],
  ['Turn it down to 160 °C.', ['160 °C', 160, 'oven']],
  ['Roast until the thickest part reaches 74 °C.', ['74 °C', 74, 'inside']],
  ['Roast to an internal temperature of 165F.', ['165F', 74, 'inside']],
  ['Bake at 350F until it reads 165 °F inside.', ['350F', 177, 'oven'], ['165 °F', 74, 'inside']],
  ['Cook until a thermometer in the centre shows 71 °C.', ['71 °C', 71, 'inside']],
  ['The core should be at 63 °C.', ['63 °C', 63, 'inside']],
  ['Fry the patties to 71 °C all the way through.', ['71 °C', 71, 'inside']],
  ['Reheat to 74 °C.', ['74 °C', 74, 'inside']],
  ['Bake the loaf until it is 96 °C inside.', ['96 °C', 96, 'inside']],
  ['Stir over the pan until the custard reaches 82 °C.', ['82 °C', 82, 'inside']],
  ['Heat the oil to 175 °C.', ['175 °C', 175, 'other']],
  ['Warm the milk to 40 °C.', ['40 °C', 40, 'other']],
  ['Use water at 30 °C.', ['30 °C', 30, 'other']],
  ['Boil the syrup to 118 °C.', ['118 °C', 118, 'other']],
  ['The dough should be at 25 °C.', ['25 °C', 25, 'other']],
  ['Freeze at -18 °C.', ['-18 °C', -18, 'other']],
  ['Keep it hot, above 60 °C.', ['60 °C', 60, 'other']],
]

describe('temperatures', () => {
  test.each(phrases.map(([phrase, ...expected]) => ({phrase, expected})))(
    '$phrase',
    ({phrase, expected}) => {
      const found = temperaturesIn(phrase)
      expect(found.map((each) => [each.text, Math.round(each.lowCelsius), each.of])).toEqual(
        expected,
      )
      for (const {from, to, text} of found) expect(phrase.slice(from, to)).toBe(text)
    },
  )

  test.each([
    ['Bake at 160–170 °C.', 160, 170],
    ['Bake at 160-170°C.', 160, 170],
    ['Bake at 160 to 170 °C.', 160, 170],
    ['Bake at 325 to 350 °F.', 163, 177],
  ])('a range: %s', (phrase, low, high) => {
    const [found] = temperaturesIn(phrase)
    expect([found?.lowCelsius, found?.highCelsius].map((each) => Math.round(each ?? 0))).toEqual([
      low,
      high,
    ])
  })

  test.each([
    ['Bake at 200 °C (180 °C fan).', [false, true]],
    ['Bake at 200 °C, fan 180 °C.', [false, true]],
    ['Bake at 160 °C in a fan oven.', [true]],
    ['Set a fan oven to 160 °C.', [true]],
    ['Bake at 325 °F convection.', [true]],
  ])('a fan oven: %s', (phrase, expected) => {
    expect(temperaturesIn(phrase).map(({isFan}) => isFan)).toEqual(expected)
  })

  test.each([
    'Add 250 c of stock.',
    'Vitamin C is lost.',
    'Add 2 cloves.',
    'Cook on gas for 4 minutes.',
    'Grade 3 flour.',
  ])('none in: %s', (phrase) => {
    expect(temperaturesIn(phrase)).toEqual([])
  })

  // 21 CFR-independent arithmetic: NIST SP 811 (2008), B.8: t/°C = (t/°F − 32)/1.8.
  test.each([
    ['145 °F', 62.8],
    ['160 °F', 71.1],
    ['165 °F', 73.9],
  ])('%s is %d °C, as NIST SP 811 converts', (text, celsius) => {
    expect(temperaturesIn(text)[0]?.lowCelsius).toBeCloseTo(celsius, 1)
  })
})
