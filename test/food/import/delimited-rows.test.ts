import fc from 'fast-check'
import {expect, test} from 'vitest'
import {delimitedReader} from '../../../src/food/import/delimited-rows.ts'

function rows(pieces: readonly string[], delimiter = ',') {
  const reader = delimitedReader(delimiter)
  const read = pieces.flatMap((piece) => [...reader.push(piece)])
  const open = reader.openQuote()
  return {open, rows: [...read, reader.end()].flatMap((row) => row ?? [])}
}

const cells = (text: string, delimiter?: string) =>
  rows([text], delimiter).rows.map((row) => row.cells)

test('the examples of RFC 4180 (2005), section 2', () => {
  expect(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n')).toEqual([
    ['aaa', 'bbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ])
  expect(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx')).toHaveLength(2)
  expect(cells('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')[0]).toEqual(['aaa', 'b\r\nbb', 'ccc'])
  expect(cells('"aaa","b""bb","ccc"')).toEqual([['aaa', 'b"bb', 'ccc']])
})

test('other delimiters, empty cells and quotes within a cell', () => {
  expect(cells('a;;"c;d"\n', ';')).toEqual([['a', '', 'c;d']])
  expect(cells('5" plate,,\n""\n')).toEqual([['5" plate', '', ''], ['']])
})

test('a row knows the line it begins on, and a quote that stays open is told', () => {
  const {rows: read, open} = rows(['a,"b\nc"\nd,e\nf,"g\nh'])
  expect(read.map(({line}) => line)).toEqual([1, 3, 4])
  expect(open).toBe(4)
  expect(rows(['a,"b"\n']).open).toBeUndefined()
})

test('what is written as RFC 4180 says comes back, however it is cut into pieces', () => {
  const table = fc.array(
    fc.array(fc.string({unit: fc.constantFrom('a', ',', '"', '\n', ' ', 'é')}), {
      minLength: 2,
      maxLength: 3,
    }),
    {maxLength: 4},
  )
  fc.assert(
    fc.property(table, fc.nat(9), (given, step) => {
      const text = given
        .map((row) => `${row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')}\r\n`)
        .join('')
      const pieces = text.match(new RegExp(`[^]{1,${step + 1}}`, 'g')) ?? []
      expect(rows(pieces).rows.map((row) => row.cells)).toEqual(given)
    }),
  )
})
