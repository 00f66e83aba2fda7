import {describe, expect, test} from 'vitest'
import {placeInPassage} from '../../src/cookbook/passage-place.ts'
import type {Passage} from '../../src/cookbook/recipe.ts'
import {line} from '../kitchen.ts'
import {readRecipeBody} from './read-body.ts'

/** The text of the file where some words of a passage stand. */
function where(text: string, passage: Passage | undefined, words: string): string {
  const from = passage?.text.indexOf(words) ?? -1
  if (!passage || from < 0) throw new Error(`no “${words}” in “${passage?.text}”`)
  const {start, end} = placeInPassage(passage, from, from + words.length)
  return text.slice(start.offset, end.offset)
}

function passagesOf(text: string): readonly Passage[] {
  return readRecipeBody(text, [line('barley', 180)]).method.passages
}

test('each heading, paragraph, list item and block of code is a passage', () => {
  const text = [
    '# Day 1',
    'Stir.',
    '',
    '1. Bake\n\n   and wait\n   - so',
    '2. Rest\n\n> Tip\n',
    '```\n1 egg\n```',
    '<b>',
    '---',
  ].join('\n')
  expect(passagesOf(text).map(({kind, text}) => [kind, text])).toEqual([
    ['heading', 'Day 1'],
    ['text', 'Stir.'],
    ['step', 'Bake'],
    ['step', 'and wait'],
    ['step', 'so'],
    ['step', 'Rest'],
    ['text', 'Tip'],
    ['text', '1 egg'],
  ])
})

test('its text is the words without their marks, in one line, without amounts', () => {
  const [passage] = passagesOf(
    '*Stir* the [**barley**](#barley)\n  for `5\n  min`\\\nand &frac12; \\*',
  )
  expect(passage?.text).toBe('Stir the barley for 5   min\nand ½ *')
})

describe('words of a passage point at the file', () => {
  // Each text holds `180 °C` in one piece for the reader; what the place must hold follows it.
  test.each([
    ['Bake at 180 °C.', '180 °C'],
    ['1. Bake at\n   180 °C.', '180 °C'],
    ['1. Bake at 180\n   °C.', '180\n   °C'],
    ['Bake at 180\r\n°C.', '180\r\n°C'],
    ['Bake at 180\r°C.', '180\r°C'],
    ['> Bake at 180\n> °C.', '180\n> °C'],
    ['> - Bake at 180 \n>     °C.', '180 \n>     °C'],
    ['> Bake at 180\n°C.', '180\n°C'],
    ['Bake at **180** °C.', '180** °C'],
    ['Bake at [180 °C](https://example.org "180 °C") now', '180 °C'],
    ['Bake at [180](https://example.org) °C now', '180](https://example.org) °C'],
    ['Bake at 180 &deg;C.', '180 &deg;C'],
    ['Bake at &#49;80&#x20;°C.', '&#49;80&#x20;°C'],
    ['Bake \\& \\\\ at 180 °C.', '180 °C'],
    ['&lt; &amp; &amp;amp; &nope; & &ngE;&#x1F60A;j 180 °C.', '180 °C'],
    ['`a` ``  ` `` `180 °C`', '180 °C'],
    ['` 180 °C `', '180 °C'],
    ['# 180 °C #', '180 °C'],
    ['A <b>x</b> 180<!-- y --> °C', '180<!-- y --> °C'],
    ['```\nx\n 180 °C\n```', '180 °C'],
    ['> ~~~ js\n> x\n>   180 °C\n> ~~~', '180 °C'],
    ['    x\n\n      180 °C', '180 °C'],
    ['- a\n\n      180 °C', '180 °C'],
    ['\t180 °C', '180 °C'],
    ['a\n    > 180 °C', '180 °C'],
    ['> a\n>     > 180 °C', '180 °C'],
    ['> a\n> \\> 180 °C', '180 °C'],
    ['> a\n> &gt; 180 °C', '180 °C'],
    ['a\\\n  180 °C', '180 °C'],
    ['a\u0000 180 °C', '180 °C'],
  ])('%j', (text, expected) => {
    const passage = passagesOf(text).find((candidate) => candidate.text.includes('180 °C'))
    expect(where(text, passage, '180 °C')).toBe(expected)
  })

  test('in lines and columns of the whole file', () => {
    const text = '---\ntitle: Barley pot\n---\n\n1. Heat.\n2. Stir, then\r\n   bake at 180 °C.\n'
    const passage = passagesOf(text).at(-1)
    const from = passage?.text.indexOf('180') ?? 0
    expect(passage && placeInPassage(passage, from, from + 6)).toEqual({
      start: {line: 7, column: 12, offset: text.indexOf('180')},
      end: {line: 7, column: 18, offset: text.indexOf('180') + 6},
    })
  })

  test('no words are the point where they would begin', () => {
    const [passage] = passagesOf('Stir.')
    expect(passage && placeInPassage(passage, 2, 2)).toEqual({
      start: {line: 1, column: 3, offset: 2},
      end: {line: 1, column: 3, offset: 2},
    })
  })
})

// CommonMark specification 0.31.2, section 2.4 "Backslash escapes", first example, and section 2.5
// "Entity and numeric character references", first example: texts and what they stand for.
test('escapes and references of the specification are told from the text around them', () => {
  const punctuation = '!"#$%&\'()*+,-./:;<=>?@[\\]^_`{|}~'
  const escapes = `${Array.from(punctuation, (sign) => `\\${sign}`).join('')} end`
  const [escaped] = passagesOf(escapes)
  expect(escaped?.text).toBe(`${punctuation} end`)
  expect(where(escapes, escaped, 'end')).toBe('end')
  expect(where(escapes, escaped, '&')).toBe('&')
  expect(where(escapes, escaped, '\\')).toBe('\\')

  const references =
    '&nbsp; &amp; &copy; &AElig; &Dcaron;\n&frac34; &HilbertSpace; &DifferentialD;\n&ClockwiseContourIntegral; &ngE;'
  const [referred] = passagesOf(references)
  expect(referred?.text).toBe('\u00A0 & © Æ Ď ¾ ℋ ⅆ ∲ ≧̸')
  expect(where(references, referred, '&')).toBe('&amp;')
  expect(where(references, referred, '¾')).toBe('&frac34;')
  expect(where(references, referred, '≧̸')).toBe('&ngE;')
})
