import {expect, test} from 'vitest'
import {formatDays, formatMinutes} from '../../src/units/format-duration.ts'
import {parseMinutes} from '../../src/units/parse-duration.ts'

test.each([
  [20, '20 min'],
  [60, '1 h'],
  [90, '1 h 30 min'],
  [0.4, '0 min'],
  [1440, '24 h'],
  [2880, '2 days'],
  [3000, '50 h'],
])('%d minutes are %s', (minutes, text) => {
  expect(formatMinutes(minutes)).toBe(text)
})

test.each([1, 45, 60, 61, 480, 1440, 4320])('%d minutes read back the same', (minutes) => {
  expect(parseMinutes(formatMinutes(minutes))).toEqual({ok: true, value: minutes})
})

test.each([
  [2 / 24, '2 h'],
  [1, '1 day'],
  [4, '4 days'],
  [30, '1 month'],
  [90, '3 months'],
  [45, '45 days'],
])('%d days of keeping are %s', (days, text) => {
  expect(formatDays(days)).toBe(text)
})
