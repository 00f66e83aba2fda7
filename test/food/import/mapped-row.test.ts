import {expect, test} from 'vitest'
import {rowMapper} from '../../../src/food/import/mapped-row.ts'
import type {MappedColumn, TableMapping} from '../../../src/food/import/table-mapping.ts'

const header = ['Code', 'Food', 'Energy', 'Fat', 'Starch', 'Sugars', 'Salt']

function mapped(
  cells: readonly string[],
  column: Partial<MappedColumn>,
  more: Partial<TableMapping> = {},
) {
  const mapping: TableMapping = {
    delimiter: ',',
    decimals: 'point',
    unknown: new Set(['N']),
    trace: new Set(['Tr']),
    columns: [
      {column: 'id', from: ['Code'], zeroIsUnknown: false},
      {column: 'name', from: ['Food'], zeroIsUnknown: false},
      {column: 'fat_g', from: ['Fat'], zeroIsUnknown: false, ...column},
    ],
    ...more,
  }
  const mapper = rowMapper(mapping, {cells: header, line: 1})
  return mapper.ok ? mapper.value({cells, line: 2}) : mapper
}

/** The third cell of the row that a cell of the published table gives. */
function figure(cell: string, column: Partial<MappedColumn> = {}, more?: Partial<TableMapping>) {
  const {from = ['Fat']} = column
  const cells = header.map((heading) => (from.includes(heading) ? cell : 'x'))
  const row = mapped(cells, {from, ...column}, more)
  return row.ok ? row.value.split('\t')[2] : `expected ${row.expected}`
}

test('figures keep their digits; blank and agreed words are unknown, a trace is 0', () => {
  expect(figure('3.40')).toBe('3.40')
  expect(figure('')).toBe('')
  expect(figure('N')).toBe('')
  expect(figure('Tr')).toBe('0')
  expect(figure('0')).toBe('0')
  expect(figure('0', {zeroIsUnknown: true})).toBe('')
  expect(figure('3,4', {}, {decimals: 'comma'})).toBe('3.4')
})

test('units are turned into the column’s own, to no finer step than was printed', () => {
  // 1,607 kJ ÷ 4.184 (thermochemical calorie) = 384.1 kcal; a step of 1 kJ is 0.2 kcal.
  expect(figure('1607', {column: 'energy_kcal', unit: 'kJ'})).toBe('384')
  expect(figure('0.125', {column: 'sodium_mg', unit: 'g'})).toBe('125')
  expect(figure('1250', {column: 'fat_g', unit: 'mg'})).toBe('1.250')
  expect(figure('4', {column: 'fat_g', unit: 'kJ'})).toContain('a unit of `fat_g`')
})

test('several headings are added up as finely as the coarsest; one unknown makes it unknown', () => {
  const row = (starch: string, sugars: string) =>
    mapped(['1', 'x', '', '', starch, sugars, ''], {
      column: 'carbohydrate_g',
      from: ['Starch', 'Sugars'],
    })
  expect(row('10.25', '1.5')).toEqual({ok: true, value: '1\tx\t11.8'})
  expect(row('10.25', '')).toEqual({ok: true, value: '1\tx\t'})
})

test.each([
  ['a text', 'high', 'expected a number, not `high`, as `Fat`'],
  ['a sign', '-1', 'expected a number, not `-1`, as `Fat`'],
  ['more than there can be', '101', 'expected other figures: `fat_g` is `101`'],
])('%s in a column of figures is refused', (_, cell, told) => {
  expect(figure(cell)).toContain(told)
})

test('a row of other length and a heading that is not there are refused', () => {
  expect(mapped(['1', 'x'], {})).toMatchObject({ok: false, expected: '`7` cells, not `2`'})
  expect(mapped([], {from: ['Fats']})).toMatchObject({
    ok: false,
    expected: expect.stringContaining('there is `Fat`'),
  })
})
