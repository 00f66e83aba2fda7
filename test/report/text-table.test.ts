import {expect, test} from 'vitest'
import {textTable} from '../../src/report/text-table.ts'

test('names stand to the left, figures to the right, accents count once', () => {
  const decomposed = 'cre\u0300me'
  expect(
    textTable([
      ['', 'g'],
      [decomposed, '7'],
      ['barley pot', '1480'],
    ]),
  ).toEqual(['               g', `${decomposed}          7`, 'barley pot  1480'])
})

test('rows of different lengths end where they end', () => {
  expect(textTable([['a', 'b', 'c'], ['a']])).toEqual(['a  b  c', 'a'])
})
