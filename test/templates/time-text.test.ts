import {expect, test} from 'vitest'
import {daysText, isoDuration, minutesText} from '../../templates/parts/time-text.ts'
import {en} from '../../templates/words/en.ts'

test.each([
  [20, '20 min'],
  [60, '1 h'],
  [65, '1 h 5 min'],
  [1500, '25 h'],
])('%d minutes read %s', (minutes, text) => {
  expect(minutesText(minutes, en)).toBe(text)
})

test.each([
  [1, '1 day'],
  [3, '3 days'],
  [7, '7 days'],
  [14, '2 weeks'],
  [30, '1 month'],
  [90, '3 months'],
  [45, '45 days'],
])('%d days read %s', (days, text) => {
  expect(daysText(days, en)).toBe(text)
})

// ISO 8601:2004, 4.4.3.2 (from memory); the examples PT20M and PT1H30M stand in schema.org's Recipe.
test.each([
  [20, 'PT20M'],
  [90, 'PT1H30M'],
  [120, 'PT2H'],
  [0, 'PT0M'],
])('%d minutes are %s', (minutes, text) => {
  expect(isoDuration(minutes)).toBe(text)
})
