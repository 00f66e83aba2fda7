/** Every regular expression of the sources ends soon, whatever it is given. */

import {readdirSync, readFileSync} from 'node:fs'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {expect, test} from 'vitest'

const project = fileURLToPath(new URL('..', import.meta.url))

const sources = ['src', 'templates'].flatMap((folder) =>
  readdirSync(path.join(project, folder), {recursive: true, encoding: 'utf8'})
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => path.join(folder, file)),
)

/** A literal where an expression may begin, on one line. */
const literal =
  /(?<=[=(,:!&|?\s]|^)\/(?![*/ ])((?:[^\\/[\n]|\\.|\[(?:[^\\\]\n]|\\.)*\])+)\/([dgimsuvy]*)(?=[\s.,;)\]:]|$)/gm

const expressions = sources.flatMap((file) =>
  [...readFileSync(path.join(project, file), 'utf8').matchAll(literal)].map(
    ([, source = '', flags = '']) => ({file, expression: new RegExp(source, flags)}),
  ),
)

/** What is repeated, behind a beginning and before an end that fits nothing. */
const repeated = [
  ' ',
  'a',
  '0',
  '-',
  '.',
  '"',
  '(',
  '/',
  ',',
  '<',
  '\n',
  '*',
  '_',
  '=',
  ':',
  '[',
  '!',
]
const repeatedWords = [
  ' a',
  '0 ',
  'a,',
  '0.',
  ' - ',
  '1/',
  '1 g ',
  '<a',
  'a="b" ',
  '10 min ',
  'and ',
]
const ends = [
  {beginning: '', end: '\u0001'},
  {beginning: '1', end: '\u0001'},
  {beginning: '<a', end: ''},
]

/** Characters; each a quarter longer, so that what grows without bound shows before it hangs. */
const lengths = Array.from({length: 23}, (_, step) => Math.round(20 * 1.25 ** step))

/** Milliseconds; on a quiet machine none takes 30 of them for the longest text. */
const patience = 300

test('none takes longer and longer for a text that repeats itself', () => {
  expect(expressions.length).toBeGreaterThan(300)
  const slow = expressions.flatMap(({file, expression}) => {
    const text = [...repeated, ...repeatedWords]
      .flatMap((unit) =>
        ends.flatMap((around) => lengths.map((length) => ({unit, ...around, length}))),
      )
      .find((text) => millisecondsFor(expression, text) > patience)
    return text ? [`${file}: ${expression} on ${JSON.stringify(text)}`] : []
  })
  expect(slow).toEqual([])
}, 120_000)

interface Text {
  readonly unit: string
  readonly beginning: string
  readonly end: string
  readonly length: number
}

function millisecondsFor(expression: RegExp, {unit, beginning, end, length}: Text): number {
  const text = beginning + unit.repeat(length / unit.length) + end
  const began = performance.now()
  if (expression.global) text.replace(expression, '')
  else expression.test(text)
  return performance.now() - began
}
