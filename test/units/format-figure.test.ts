import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {
  figureText,
  formatFigure,
  formatUncertain,
  roundedText,
  usualDecimals,
} from '../../src/units/format-figure.ts'
import {exact, rectangular, type Uncertain} from '../../src/units/uncertain.ts'

/** A value whose expanded uncertainty is `plusMinus`. */
function within(value: number, plusMinus: number): Uncertain {
  const width = (plusMinus / 2) * Math.sqrt(12)
  return rectangular(value, width, {kind: 'stated', subject: 'a test'})
}

describe('a number', () => {
  test.each([
    [1.005, 2, '1.01'],
    [2.5, 0, '3'],
    [-2.5, 0, '-3'],
    [-0.04, 1, '0.0'],
    [1813, -1, '1810'],
    [0.1 + 0.2 + 0.05, 1, '0.4'],
    [1e-7, 2, '0.00'],
    [123456.789, 2, '123456.79'],
    [0, 1, '0.0'],
  ])('%d to %d decimals is %s', (value, decimals, text) => {
    expect(roundedText(value, decimals)).toBe(text)
  })

  test('is never further from its text than half the last digit', () => {
    fc.assert(
      fc.property(
        fc.double({min: -1e6, max: 1e6, noNaN: true}),
        fc.integer({min: 0, max: 3}),
        (value, decimals) => {
          const text = roundedText(value, decimals)
          const half = 0.5 * 10 ** -decimals
          return Math.abs(Number(text) - value) <= half + 1e-5 && !text.startsWith('-0.0 ')
        },
      ),
    )
  })

  test('rounded to nothing has no sign', () => {
    fc.assert(
      fc.property(fc.double({min: -0.049, max: 0, noNaN: true}), (value) => {
        return roundedText(value, 1) === '0.0'
      }),
    )
  })
})

describe('a figure without its ±', () => {
  test.each([
    [452.6, 'kcal', '453 kcal'],
    [9.25, 'kcal', '9 kcal'],
    [9.34, 'g', '9.3 g'],
    [9.96, 'g', '10 g'],
    [38.4, 'g', '38 g'],
    [0, 'g', '0.0 g'],
    [2.31, 'mg', '2.3 mg'],
    [1376.7, 'mg', '1377 mg'],
  ] as const)('%d %s reads %s', (value, unit, text) => {
    expect(formatFigure(value, unit)).toBe(text)
  })

  test('keeps the decimals it is given', () => {
    expect(formatFigure(600, 'g', 2)).toBe('600.00 g')
  })

  test('shows kilojoules whole', () => {
    expect(usualDecimals(3.6, 'kJ')).toBe(0)
  })
})

describe('a figure with its ±', () => {
  // JCGM 100:2008 (GUM) 7.2.6: 10.47 mΩ may be rounded up to 11 mΩ, 28.05 kHz down to 28 kHz, and
  // 10.057 62 Ω with u = 27 mΩ is given as 10.058 Ω.
  test.each([
    [100, 10.47, '11'],
    [100, 28.05, '28'],
  ])('%d ± %d shows ± %s, as the GUM rounds', (value, plusMinus, text) => {
    expect(figureText(within(value, plusMinus), 'kcal').plusMinus).toBe(text)
  })

  test('ends at the digit of the ±, as in the example of the GUM', () => {
    expect(figureText(within(10.05762, 0.027), 'g', 3)).toEqual({
      value: '10.058',
      plusMinus: '0.027',
      unit: 'g',
    })
  })

  test.each([
    [453.2, 9.1, 'kcal', '453 ± 9 kcal'],
    [1813, 123, 'kcal', '1810 ± 120 kcal'],
    [38.22, 0.63, 'g', '38.2 ± 0.7 g'],
    [42.13, 2.4, 'g', '42.1 ± 2.4 g'],
    [420, 37, 'g', '420 ± 37 g'],
    [0.3, 0.001, 'g', '0.3 ± 0.1 g'],
    [1376.7, 9.3, 'mg', '1377 ± 9 mg'],
  ] as const)('%d ± %d %s reads %s', (value, plusMinus, unit, text) => {
    expect(formatUncertain(within(value, plusMinus), unit)).toBe(text)
  })

  test('without uncertainty has no ±', () => {
    expect(formatUncertain(exact(12), 'g')).toBe('12 g')
  })

  test('never understates its ± by more than a twenty-fifth, and never shows ± 0', () => {
    fc.assert(
      fc.property(fc.double({min: 1e-4, max: 1e4, noNaN: true}), (plusMinus) => {
        const shown = Number(figureText(within(500, plusMinus), 'g').plusMinus)
        return shown > 0 && shown >= plusMinus * 0.96 - 1e-9
      }),
    )
  })
})
