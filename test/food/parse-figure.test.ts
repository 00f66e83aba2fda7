import {expect, test} from 'vitest'
import {parseFigure} from '../../src/food/parse-figure.ts'
import type {FigureUnit} from '../../src/units/format-figure.ts'

test.each<[FigureUnit, string, number, number]>([
  ['kcal', '455 kcal', 455, 1],
  ['kcal', '1900 kJ', 1900 / 4.184, 1 / 4.184],
  ['kcal', '1900kj', 1900 / 4.184, 1 / 4.184],
  ['g', '38 g', 38, 1],
  ['g', '0.5 g', 0.5, 0.1],
  ['g', '0 g', 0, 1],
  ['g', '7.50 g', 7.5, 0.01],
  ['mg', '120 mg', 120, 1],
  ['mg', '0.12 g', 120, 10],
  ['g', '650 mg', 0.65, 0.001],
  ['µg', '2 µg', 2, 1],
  ['µg', '2 μg', 2, 1],
  ['µg', '2 mcg', 2, 1],
  ['mg', '1.4 mg', 1.4, 0.1],
  ['kJ', '100 kcal', 418.4, 4.184],
])('In %s, %s', (unit, text, value, increment) => {
  const figure = parseFigure(text, unit)
  expect(figure.ok && figure.value.value).toBeCloseTo(value, 9)
  expect(figure.ok && figure.value.increment).toBeCloseTo(increment, 9)
})

test.each<[FigureUnit, string, string]>([
  ['g', '38', 'a unit: `38 g`'],
  ['kcal', '455', 'a unit: `455 kcal`'],
  ['kcal', '455 cal', 'kilocalories: `455 kcal`'],
  ['kcal', '455 g', '`kcal` or `kJ`'],
  ['g', '38 kcal', '`g`, `mg` or `µg`'],
  ['g', '38,5 g', 'a decimal point: `38.5 g`'],
  ['g', '-1 g', 'a number without a sign'],
  ['g', '10-12 g', 'one figure, not a range'],
  ['g', 'trace', 'a number first, in digits'],
  ['g', '.nan', 'a number first, in digits'],
])('In %s, %s is refused', (unit, text, expected) => {
  expect(parseFigure(text, unit)).toMatchObject({ok: false, expected})
})

test.each(['<0.5 g', '< 0.5 g', 'less than 0.5 g'])('%s is a limit', (text) => {
  expect(parseFigure(text, 'g')).toEqual({
    ok: true,
    value: {value: 0.5, increment: 0.1, isLessThan: true},
  })
})
