import fc from 'fast-check'
import {expect, test} from 'vitest'
import {parse} from 'yaml'
import {type LabelEntry, withEntry} from '../../src/cookbook/label-entry.ts'

const curd: LabelEntry = {
  name: 'plain curd',
  panel: new Map([
    ['per', '100 g'],
    ['energy', '62 kcal'],
    ['salt', '<0.1 g'],
  ]),
  contains: ['milk'],
  mayContain: [],
  sold: new Map([
    ['weight', '450 g'],
    ['price', '2.39'],
  ]),
}

const lines = [
  'plain curd:',
  '  label:',
  '    per: 100 g',
  '    energy: 62 kcal',
  '    salt: <0.1 g',
  '  sold: { weight: 450 g, price: 2.39 }',
  '  contains: [milk]',
  '  may contain: []',
  '',
]

test('an entry stands behind everything, which stays as it is', () => {
  const before = '# Ours.\noats: { same as: rolled oats }   # the thick ones\n'
  expect(withEntry(before, curd)).toBe(`${before}\n${lines.join('\n')}`)
  expect(withEntry('', curd)).toBe(lines.join('\n'))
})

test('a last line without its end gets one, and lines end as in the file', () => {
  const before = 'oats:\r\n  same as: rolled oats'
  expect(withEntry(before, curd)).toBe(`${before}\r\n\r\n${lines.join('\r\n')}`)
})

test('any name comes back from YAML as it was given', () => {
  const name = fc.oneof(
    fc.string({minLength: 1}),
    fc.constantFrom('no', '12', '1.5', '- x', 'a: b', 'a #b', 'null', '{x}', '2026-10-03', '1e3'),
  )
  fc.assert(
    fc.property(name, (given) => {
      const read: unknown = parse(withEntry('', {...curd, name: given, contains: [given]}))
      const texts = typeof read === 'object' && read !== null ? Object.keys(read) : []
      expect(texts).toEqual([given])
    }),
    {numRuns: 300},
  )
})
