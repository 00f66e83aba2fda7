import fc from 'fast-check'
import {expect, test} from 'vitest'
import {printable} from '../../src/report/printable.ts'

test.each([
  ['an escape code that would clear the screen', '\u001B[2Jpot', '\\u{1B}[2Jpot'],
  ['a second line', 'pot\nerror: all is well', 'pot\\u{A}error: all is well'],
  ['a turned reading direction', 'gpj.\u202Etop', 'gpj.\\u{202E}top'],
  ['a joint nobody sees', 'p\u200Bot', 'p\\u{200B}ot'],
])('%s is shown, not done', (_, text, shown) => {
  expect(printable(text)).toBe(shown)
})

test('letters of every script stay as they are', () => {
  expect(printable('Crème brûlée, 餃子, خبز — ½ cup')).toBe('Crème brûlée, 餃子, خبز — ½ cup')
})

test('nothing that comes out can move a cursor', () => {
  fc.assert(
    fc.property(fc.string({unit: 'binary'}), (text) => {
      expect(printable(text)).not.toMatch(/[\p{Cc}\u202A-\u202E]/u)
    }),
  )
})
