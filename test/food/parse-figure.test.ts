import {expect, test} from 'vitest'
import type {Nutrient} from '../../src/food/nutrients.ts'
import {parseFigure} from '../../src/food/parse-figure.ts'

test.each<[Nutrient, string, number, number]>([
  ['energy', '455 kcal', 455, 1],
  ['energy', '1900 kJ', 1900 / 4.184, 1 / 4.184],
  ['energy', '1900kj', 1900 / 4.184, 1 / 4.184],
  ['protein', '38 g', 38, 1],
  ['protein', '0.5 g', 0.5, 0.1],
  ['protein', '0 g', 0, 1],
  ['protein', '7.50 g', 7.5, 0.01],
  ['sodium', '120 mg', 120, 1],
  ['sodium', '0.12 g', 120, 10],
  ['protein', '650 mg', 0.65, 0.001],
  ['vitaminD', '2 µg', 2, 1],
  ['vitaminD', '2 μg', 2, 1],
  ['vitaminD', '2 mcg', 2, 1],
  ['sodium', '1.4 mg', 1.4, 0.1],
])('%s %s', (nutrient, text, value, increment) => {
  const figure = parseFigure(nutrient, text)
  expect(figure.ok && figure.value.value).toBeCloseTo(value, 9)
  expect(figure.ok && figure.value.increment).toBeCloseTo(increment, 9)
})

test.each<[Nutrient, string, string]>([
  ['protein', '38', 'a unit: `38 g`'],
  ['energy', '455', 'a unit: `455 kcal`'],
  ['energy', '455 cal', 'kilocalories: `455 kcal`'],
  ['energy', '455 g', '`kcal` or `kJ`'],
  ['protein', '38 kcal', '`g`, `mg` or `µg`'],
  ['protein', '38,5 g', 'a decimal point: `38.5 g`'],
  ['protein', '-1 g', 'a number without a sign'],
  ['protein', '10-12 g', 'one figure, not a range'],
  ['protein', 'trace', 'a number first, in digits'],
  ['protein', '.nan', 'a number first, in digits'],
])('%s %s is refused', (nutrient, text, expected) => {
  expect(parseFigure(nutrient, text)).toMatchObject({ok: false, expected})
})

test.each(['<0.5 g', '< 0.5 g', 'less than 0.5 g'])('%s is a limit', (text) => {
  expect(parseFigure('fat', text)).toEqual({
    ok: true,
    value: {value: 0.5, increment: 0.1, isLessThan: true},
  })
})
