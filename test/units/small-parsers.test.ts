import {expect, test} from 'vitest'
import {parseDays, parseMinutes} from '../../src/units/parse-duration.ts'
import {parseMillimetres, parseSides} from '../../src/units/parse-length.ts'
import {parsePercent} from '../../src/units/parse-percent.ts'

test.each([
  ['20 min', 20],
  ['1 h 30 min', 90],
  ['1h30min', 90],
  ['1½ h', 90],
  ['90 minutes', 90],
  ['2 days', 2880],
])('%s is %d minutes', (text, minutes) => {
  expect(parseMinutes(text)).toEqual({ok: true, value: minutes})
})

test.each([
  ['3 days', 3],
  ['3 months', 90],
  ['1 year', 365],
  ['2 years', 730],
  ['1 month', 30],
  ['1 week', 7],
  ['1 day', 1],
  ['2 weeks', 14],
  ['12 h', 0.5],
])('%s is %d days', (text, days) => {
  expect(parseDays(text)).toEqual({ok: true, value: days})
})

test.each([
  ['20', 'a time such as `20 min`, `1 h 30 min` or `3 days`'],
  ['overnight', 'a time such as `20 min`, `1 h 30 min` or `3 days`'],
  ['20-25 min', 'one time, not a range'],
  ['0 min', 'a time above `0`'],
  ['1,5 h', 'a decimal point: `1.5 h`'],
  ['20 minuts', 'a time such as `20 min`, `1 h 30 min` or `3 days`'],
  ['', 'a time such as `20 min`, `1 h 30 min` or `3 days`'],
  ['1 h 30', 'a time such as `20 min`, `1 h 30 min` or `3 days`'],
])('The time %j is refused', (text, expected) => {
  expect(parseMinutes(text)).toMatchObject({ok: false, expected})
})

test.each([
  ['24 cm', 240],
  ['9 in', 228.6],
  ['9"', 228.6],
  ['70 mm', 70],
  ['9.5 inches', 241.3],
])('%s is %d mm', (text, millimetres) => {
  const result = parseMillimetres(text)
  expect(result.ok && result.value).toBeCloseTo(millimetres, 9)
})

test.each([
  ['23 x 33 cm', [230, 330]],
  ['33 × 23 cm', [230, 330]],
  ['9 in x 13 in', [228.6, 330.2]],
  ['9x13"', [228.6, 330.2]],
])('%s are two sides', (text, sides) => {
  const result = parseSides(text)
  const value: readonly number[] = result.ok ? result.value : []
  expect(value.map((side) => Number(side.toFixed(6)))).toEqual(sides)
})

test.each(['24', '24 ml', '0 cm', '20-24 cm', '-2 cm', 'large'])(
  'The length %s is refused',
  (text) => {
    expect(parseMillimetres(text).ok).toBe(false)
  },
)

test.each(['23 cm', '23 x 33', '23 x 33 x 5 cm', '23 x', 'x', '0 x 33 cm'])(
  'The sides %s are refused',
  (text) => {
    expect(parseSides(text).ok).toBe(false)
  },
)

test('Percentages are ratios inside', () => {
  expect(parsePercent('20 %')).toEqual({ok: true, value: 0.2})
  expect(parsePercent('7.5%')).toEqual({ok: true, value: 0.075})
  expect(parsePercent('20').ok).toBe(false)
  expect(parsePercent('7,5 %')).toMatchObject({instead: ['7.5 %']})
})
