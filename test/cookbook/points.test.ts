import {expect, test} from 'vitest'
import {lineStartsOf, placeBetween, placeWithin, pointsOf} from '../../src/cookbook/points.ts'

const text = 'oats\r\nmilk\rrye\n\nsalt'

test.each([
  ['oats', 1, 1],
  ['milk', 2, 1],
  ['ilk', 2, 2],
  ['rye', 3, 1],
  ['salt', 5, 1],
])('%s stands on its line, whichever way lines end', (word, line, column) => {
  expect(pointsOf(text)(text.indexOf(word))).toEqual({line, column, offset: text.indexOf(word)})
})

test('a range inside a place is the range in the file', () => {
  const pointAt = pointsOf(text)
  const place = placeBetween(pointAt, 2, 13)
  expect(lineStartsOf(text, place)).toEqual([0, 6, 11])
  for (let offset = 2; offset <= 13; offset++) {
    expect(placeWithin(text, place, offset, offset).start).toEqual(pointAt(offset))
  }
})
