import {expect, test} from 'vitest'
import {parsePan} from '../../../src/nutrition/baking/parse-pan.ts'

test.each([
  ['24 cm round', {shape: 'round', acrossMillimetres: 240}],
  ['round 9 in, 2 in deep', {shape: 'round', acrossMillimetres: 228.6, depthMillimetres: 50.8}],
  ['20 cm square', {shape: 'square', acrossMillimetres: 200}],
  ['23 x 33 cm', {shape: 'rectangle', acrossMillimetres: 330, secondMillimetres: 230}],
  [
    '26 cm ring, tube 8 cm, 7 cm deep',
    {shape: 'ring', secondMillimetres: 80, depthMillimetres: 70},
  ],
])('%s', (text, pan) => {
  expect(parsePan(text)).toMatchObject({ok: true, value: pan})
})

test.each([
  '24 cm',
  'round',
  '',
  'round 0 cm',
  '20 cm square, tube 5 cm',
  '24 cm round, 7 cm',
  '10 cm ring, tube 10 cm',
])('"%s" is refused', (text) => {
  expect(parsePan(text).ok).toBe(false)
})
