import {expect, test} from 'vitest'
import type {LabelLine} from '../../src/food/label.ts'
import {parsePrinted} from '../../src/food/parse-printed.ts'

test.each<[LabelLine, string, number, number, boolean]>([
  ['energy', '98 kcal', 98, 1, false],
  ['energyKilojoules', '410 kJ', 410, 1, false],
  ['energyKilojoules', '1900kJ', 1900, 1, false],
  ['fibre', 'less than 1 g', 1, 1, true],
  ['fibre', '<0.5 g', 0.5, 0.1, true],
  ['cholesterol', 'Less than 5 mg', 5, 1, true],
  ['salt', '290 mg', 0.29, 0.001, false],
])('%s: %s', (line, text, value, increment, isLessThan) => {
  expect(parsePrinted(line, text)).toEqual({ok: true, value: {value, increment, isLessThan, text}})
})

test.each<[LabelLine, string, string]>([
  ['energy', '410 kJ', '`kcal`, with `energy kJ: 410 kJ` beside it or instead'],
  ['energyKilojoules', '98 kcal', 'kilojoules, such as `410 kJ`'],
  ['fibre', '<0 g', 'a limit above `0`'],
  ['protein', '16', 'a unit: `16 g`'],
])('%s: %s is refused', (line, text, expected) => {
  expect(parsePrinted(line, text)).toMatchObject({ok: false, expected})
})
