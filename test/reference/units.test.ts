import {createRequire} from 'node:module'
import {describe, expect, test} from 'vitest'
import {gramsPerUnit, millilitresPerUnit, millimetresPerUnit} from '../../src/units/units.ts'

// js-quantities 1.8 is a general unit library, written without this project; it has no types.
const quantity: (text: string) => {to(unit: string): {readonly scalar: number}} = createRequire(
  import.meta.url,
)('js-quantities')

const inUnit = (text: string, unit: string) => quantity(text).to(unit).scalar

describe('Units agree with a general unit library', () => {
  test.each(Object.entries(gramsPerUnit))('1 %s is %d g', (unit, grams) => {
    // The library carries the ounce to nine digits.
    expect(grams / inUnit(`1 ${unit}`, 'g')).toBeCloseTo(1, 8)
  })

  test.each([
    ['tsp', 'tsp'],
    ['tbsp', 'tbsp'],
    ['cup', 'cup'],
    ['fl oz', 'floz'],
    ['pint', 'pint'],
    ['quart', 'quart'],
    ['ml', 'ml'],
    ['dl', 'dl'],
    ['l', 'l'],
  ] as const)('1 US %s', (unit, theirs) => {
    // The library's US measures are built on a gallon of 0.0037854118 m3, rounded to eight digits.
    expect(millilitresPerUnit.us[unit] / inUnit(`1 ${theirs}`, 'ml')).toBeCloseTo(1, 6)
  })

  test.each(Object.entries(millimetresPerUnit))('1 %s is %d mm', (unit, millimetres) => {
    expect(millimetres / inUnit(`1 ${unit}`, 'mm')).toBeCloseTo(1, 9)
  })
})

describe('Units are those of the published definitions', () => {
  // NIST Handbook 44 (2023), Appendix C, section 4, tables of equivalents; exact values in its
  // bold type. Seen in a secondary copy of the tables; the gallon in inches below ties them together.
  test.each([
    ['avoirdupois pound', gramsPerUnit.lb, 453.59237],
    ['avoirdupois ounce', gramsPerUnit.oz, 28.349523125],
    ['liquid pint', millilitresPerUnit.us.pint, 473.176473],
    ['liquid quart', millilitresPerUnit.us.quart, 946.352946],
    ['fluid ounce', millilitresPerUnit.us['fl oz'], 29.5735295625],
    ['cup, 8 fluid ounces', millilitresPerUnit.us.cup, 236.5882365],
    ['tablespoon, half a fluid ounce', millilitresPerUnit.us.tbsp, 14.78676478125],
    ['teaspoon, a third of a tablespoon', millilitresPerUnit.us.tsp, 4.92892159375],
  ])('%s', (_, ours, published) => {
    expect(ours).toBeCloseTo(published, 10)
  })

  // UK Weights and Measures Act 1985, Schedule 1, Part IV: gallon 4.546 09 dm3; quart, pint and
  // fluid ounce are 1/4, 1/8 and 1/160 of it.
  test.each([
    ['quart', millilitresPerUnit.imperial.quart, 1136.5225],
    ['pint', millilitresPerUnit.imperial.pint, 568.26125],
    ['fluid ounce', millilitresPerUnit.imperial['fl oz'], 28.4130625],
  ])('imperial %s', (_, ours, published) => {
    expect(ours).toBeCloseTo(published, 10)
  })

  // The US gallon is 231 cubic inches, the inch 25.4 mm (NIST Handbook 44, Appendix C).
  test('the US gallon is 231 cubic inches', () => {
    const cubicInchMillilitres = (millimetresPerUnit.in / 10) ** 3
    expect(millilitresPerUnit.us.quart * 4).toBeCloseTo(231 * cubicInchMillilitres, 9)
  })

  test('the three cups stand apart by as much as is said', () => {
    const {us, metric, imperial} = millilitresPerUnit
    expect(metric.cup / us.cup).toBeCloseTo(1.0567, 4)
    expect(imperial.cup / us.cup).toBeCloseTo(1.2009, 4)
  })
})
