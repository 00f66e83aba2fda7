/** Words of comparison against two figures with their uncertainty, at the edge of each. */

import {describe, expect, test} from 'vitest'
import {changeText, holdingWords} from '../../../src/check/comparison/judge-comparison.ts'
import {leastReduction} from '../../../src/check/comparison/minimum.ts'
import {type Figure, known} from '../../../src/food/figures.ts'
import {rectangular} from '../../../src/units/uncertain.ts'

/** Expanded uncertainty of `plusMinus`: twice the width ÷ √12. */
function ratio(value: number, plusMinus = 0): Figure {
  const width = (plusMinus * Math.sqrt(12)) / 2
  return known(rectangular(value, width, {kind: 'label', subject: 'a label'}))
}

const less = {bound: 'most', ratio: 0.6} as const
const more = {bound: 'least', ratio: 1.2} as const

describe('how far two dishes are apart', () => {
  test('is told in percent with its uncertainty, and which way', () => {
    expect(changeText(ratio(0.539, 0.004))).toBe('46.1 ± 0.4 % less')
    expect(changeText(ratio(1.2, 0.02))).toBe('20.0 ± 2.0 % more')
    expect(changeText(ratio(1))).toBe('0.0 ± 0.0 % less')
  })

  test('the boldest words that hold do so at the unfavourable end', () => {
    expect(holdingWords(ratio(0.8, 0.025), less)).toBe('17 % less')
    expect(holdingWords(ratio(0.8, 0.02), less)).toBe('18 % less')
    expect(holdingWords(ratio(1.25, 0.05), more)).toBe('20 % more')
    expect(holdingWords(ratio(1.25, 0.06), more)).toBe('19 % more')
  })

  test('no words hold where not one percent does', () => {
    expect(holdingWords(ratio(0.99), less)).toBe('1 % less')
    expect(holdingWords(ratio(0.991), less)).toBeUndefined()
    expect(holdingWords(ratio(1.2), less)).toBeUndefined()
    expect(holdingWords(ratio(1.01), more)).toBe('1 % more')
    expect(holdingWords(ratio(1.009), more)).toBeUndefined()
    expect(holdingWords(ratio(0.5), more)).toBeUndefined()
  })
})

// 21 CFR 101.60–.62; Regulation (EC) 1924/2006 Annex. Seen in secondary summaries.
test('the least reduction is 25 %, and 30 % in the EU but for sodium and salt', () => {
  for (const nutrient of ['energy', 'fat', 'sodium', 'salt'] as const) {
    expect(leastReduction(nutrient, 'us')).toBe(0.25)
  }
  expect(leastReduction('energy', 'eu')).toBe(0.3)
  expect(leastReduction('fat', 'eu')).toBe(0.3)
  expect(leastReduction('sodium', 'eu')).toBe(0.25)
  expect(leastReduction('salt', 'eu')).toBe(0.25)
})
