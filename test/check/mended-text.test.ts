import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {examine} from '../../src/build.ts'
import {mendedText} from '../../src/check/mended-text.ts'
import type {Fix} from '../../src/cookbook/problem.ts'

const dish = `---
title: Porridge   # a comment
serves: 1
ingredients: {rolled oats:  50 g ,  water: 200 g}
stated:
  energy:   "999 kcal"   # logged by the crew
  protein: 99.0 g
  fat : '90 g'
  carbohydrate: 2000 mg # in mg
  saturated: 0.6 g
---

Simmer the [oats](#rolled-oats) in the [water](#water).
`

function fixes(text: string): readonly Fix[] {
  const {problems} = examine({
    sources: {texts: [{path: 'recipes/porridge.md', text}], images: []},
    problems: [],
  })
  return problems.flatMap(({fix}) => (fix ? [fix] : []))
}

describe('mending', () => {
  // USDA SR28 08120, oats, dry: 379 kcal, 13.15 g protein, 6.52 g fat, 67.70 g carbohydrate with
  // 10.1 g of fibre, per 100 g; the page publishes carbohydrate without fibre.
  const mended = dish
    .replace('999', '190')
    .replace('99.0 g', '6.6 g')
    .replace("'90 g'", "'3 g'")
    .replace('2000 mg', '28800 mg')

  test('writes computed figures with the writer’s quotes, blanks, units and decimals', () => {
    expect(mendedText(dish, fixes(dish))).toBe(mended)
  })

  test('leaves nothing to mend', () => {
    expect(fixes(mended)).toEqual([])
  })

  test.each([
    ['carriage returns', dish.replaceAll('\n', '\r\n'), mended.replaceAll('\n', '\r\n')],
    [
      'other letters before',
      dish.replace('Porridge', '粥 😀'),
      mended.replace('Porridge', '粥 😀'),
    ],
  ])('is the same with %s', (_, before, after) => {
    expect(mendedText(before, fixes(before))).toBe(after)
  })

  test.each(['\n', '\r\n'])('adds stated figures that are not there, with %j', (ending) => {
    const bare = dish.replace(/stated:.*?(?=---)/su, '').replaceAll('\n', ending)
    const after = mendedText(bare, fixes(bare))
    expect(after.split(ending)).toContain(
      'stated: { energy: 190 kcal, protein: 6.6 g, carbohydrate: 29 g, fat: 3.3 g }',
    )
    expect(fixes(after)).toEqual([])
  })

  test('writes the unit a figure lacks, and kilocalories for calories', () => {
    const slips = mended.replace('"190 kcal"', '190 cal').replace('6.6 g', '6.6')
    expect(mendedText(slips, fixes(slips))).toBe(mended.replace('"190 kcal"', '190 kcal'))
  })

  test('leaves a figure that is no plain number', () => {
    const rough = dish.replace('99.0 g', '<0.5 g')
    expect(mendedText(rough, fixes(rough))).toContain('protein: <0.5 g')
  })
})

test('of two fixes that overlap the first stands, and the rest of the text is untouched', () => {
  const at = (start: number, end: number): Fix['place'] => ({
    start: {line: 1, column: start + 1, offset: start},
    end: {line: 1, column: end + 1, offset: end},
  })
  expect(
    mendedText('0123456789', [
      {place: at(4, 6), text: 'B'},
      {place: at(2, 5), text: 'A'},
      {place: at(9, 9), text: '+'},
    ]),
  ).toBe('01A5678+9')
  fc.assert(fc.property(fc.string(), (text) => mendedText(text, []) === text))
})
