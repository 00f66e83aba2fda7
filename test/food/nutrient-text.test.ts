import {expect, test} from 'vitest'
import {
  nutrientFigure,
  nutrientText,
  nutrientWithUncertainty,
} from '../../src/food/nutrient-text.ts'
import {rectangular} from '../../src/units/uncertain.ts'

test.each([
  ['energy', 455.4, '455 kcal'],
  ['protein', 38.2, '38 g'],
  ['fat', 0.26, '0.3 g'],
  ['salt', 0.132, '0.13 g'],
  ['salt', 1.24, '1.2 g'],
  ['sodium', 344.2, '344 mg'],
  ['vitaminD', 1.25, '1.3 µg'],
] as const)('%s %d reads %s', (nutrient, value, text) => {
  expect(nutrientText(nutrient, value)).toBe(text)
})

test('salt and iron show a digit more than their unit does', () => {
  const spread = rectangular(0.1318, 0.01, {kind: 'label', subject: 'salt'})
  expect(nutrientWithUncertainty('salt', spread)).toBe('0.13 ± 0.01 g')
  expect(nutrientFigure('iron', spread)).toEqual({value: '0.1', plusMinus: '0.1', unit: 'mg'})
})
