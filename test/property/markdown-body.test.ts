import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {placeInPassage} from '../../src/cookbook/passage-place.ts'
import {pointsOf} from '../../src/cookbook/points.ts'
import type {Passage} from '../../src/cookbook/recipe.ts'
import {type ReadBody, readRecipeBody} from '../cookbook/read-body.ts'
import {grams, line} from '../kitchen.ts'

/** What somebody would try to bring onto a page, wherever it takes text. */
const attacks = fc.constantFrom(
  '<script>alert(1)</script>',
  '"><script>alert(1)</script>',
  `' onmouseover='alert(1)`,
  '" autofocus onfocus="alert(1)',
  '<img src=x onerror=alert(1)>',
  '<svg/onload=alert(1)>',
  '</p></main><iframe srcdoc="<script>alert(1)</script>">',
  '<a href="javascript:alert(1)">x</a>',
  '<!--><script>alert(1)</script>-->',
  ']]><script>alert(1)</script>',
  '<style>@import "//example.org"</style>',
  '<meta http-equiv=refresh content="0;url=//example.org">',
  '<base href="//example.org">',
  '&lt;script&gt;alert(1)&lt;/script&gt;',
  '&#60;script&#62;alert(1)&#60;/script&#62;',
  '\\<script\\>alert(1)\\</script\\>',
  'javascript:alert(1)',
  'java&#10;script:alert(1)',
  'java&Tab;script:alert(1)',
  '&#x6A;avascript:alert(1)',
  ' data:text/html;base64,PHNjcmlwdD4=',
  'vbscript:x',
  '//example.org/x',
  '\\\\example.org\\x',
  '../../../../etc/passwd',
  '__proto__',
  'constructor',
  'location',
  '{{constructor.constructor("alert(1)")()}}',
  '\u0000',
  '`',
  '*',
)
const word = fc.oneof(attacks, fc.string({unit: 'grapheme', maxLength: 12}))
const words = fc.array(word, {minLength: 1, maxLength: 3}).map((parts) => parts.join(' '))

/** A body with something nasty in each place that takes text. */
const body = fc
  .array(
    fc.oneof(
      words,
      words.map((text) => `# ${text}`),
      words.map((text) => `${text}\n===`),
      words.map((text) => `1. ${text}\n   ${text}`),
      words.map((text) => `- ${text}\n\n  > ${text}`),
      words.map((text) => `**${text}** _${text}_ \`${text}\``),
      words.map((text) => `\`\`\`${text}\n${text}\n\`\`\``),
      words.map((text) => `    ${text}`),
      fc.tuple(words, words, words).map(([text, to, title]) => `[${text}](<${to}> "${title}")`),
      fc.tuple(words, words).map(([text, to]) => `[${text}](${to})`),
      fc.tuple(words, words, words).map(([text, to, title]) => `![${text}](<${to}> '${title}')`),
      fc.tuple(words, words).map(([alt, to]) => `![${alt}](../images/${to})`),
      words.map((to) => `<${to}>`),
      words.map((to) => `[](#${to}) [barley](#pearl-barley) [x](#x)`),
      fc.tuple(words, words).map(([to, title]) => `[x][y] ![x][y]\n\n[y]: <${to}> "${title}"`),
      words.map((text) => `<div title="${text}">\n${text}\n</div>`),
    ),
    {minLength: 1, maxLength: 6},
  )
  .chain((blocks) => fc.constantFrom('\n', '\n\n', '\r\n\r\n').map((gap) => blocks.join(gap)))

const nasty = '<b onclick="alert(1)">barley</b>'
const lines = [{...line(nasty, {...grams(180), text: nasty}), anchor: 'pearl-barley'}, line('x', 1)]

/** Elements of Markdown, with the attributes that may stand on them. */
const elements: Readonly<Record<string, readonly string[]>> = {
  p: [],
  em: [],
  strong: [],
  code: ['class'],
  pre: [],
  blockquote: [],
  ul: [],
  ol: ['start'],
  li: [],
  hr: [],
  br: [],
  h3: ['id'],
  h4: ['id'],
  h5: ['id'],
  h6: ['id'],
  a: ['href', 'title'],
  img: ['src', 'alt', 'title'],
  span: ['class', 'data-anchor', 'data-grams', 'title'],
}

const tag = /<\/?([a-z][a-z0-9]*)((?: [a-z-]+(?:="[^"]*")?)*)>/g
const attribute = /([a-z-]+)(?:="([^"]*)")?/g

/** Fails unless the text is made of known elements and attributes, and of text without a `<`. */
function expectPlain(html: string): void {
  const text = html.replace(tag, (_, name: string, attributes: string) => {
    const allowed = elements[name] ?? []
    expect(Object.keys(elements)).toContain(name)
    for (const [, key = '', value = ''] of attributes.matchAll(attribute)) {
      expect(allowed).toContain(key)
      if (key === 'href') expect(value).toMatch(/^(?:#|\.\.\/|https?:\/\/|mailto:)/)
      if (key === 'src') expect(value).toMatch(/^\.\.\/images\//)
      if (key === 'id') expect(value).toMatch(/^section(?:-[a-z0-9]+)*$/)
    }
    return ''
  })
  expect(text).not.toContain('<')
}

/** Reads a body that may be beyond the limits: then there is nothing to show. */
function readOrRefuse(text: string): ReadBody | undefined {
  try {
    return readRecipeBody(text, lines)
  } catch (error) {
    if (error instanceof Error && error.message.startsWith('not parsed')) return undefined
    throw error
  }
}

describe('whatever an author writes', () => {
  test('the page holds Markdown’s own elements and safe addresses, and the rest as text', () => {
    fc.assert(
      fc.property(body, (text) => {
        const read = readOrRefuse(text)
        if (read) expectPlain(read.html)
      }),
      {numRuns: 3000},
    )
  })

  test('no text at all, not even half a character, is more than can be read', () => {
    const sign = fc.constantFrom(...'\\`*_{}[]()<>#+-.!|&;:"\'~=\t\r\n \u0000\uFFFD0a')
    const any = fc.oneof(
      fc.string({unit: 'binary', maxLength: 60}),
      fc.array(sign, {maxLength: 60}).map((signs) => signs.join('')),
      fc
        .array(fc.integer({min: 0, max: 0xffff}), {maxLength: 40})
        .map((codes) => String.fromCharCode(...codes)),
    )
    fc.assert(
      fc.property(any, (text) => {
        const read = readOrRefuse(text)
        if (read) expectPlain(read.html)
      }),
      {numRuns: 4000},
    )
  })

  test('every place lies in the file, with its line and column', () => {
    fc.assert(
      fc.property(body, (text) => {
        const read = readOrRefuse(text)
        if (!read) return
        const pointAt = pointsOf(text)
        const {passages, images, links, ingredientLinks} = read.method
        const places = [...read.problems, ...passages, ...images, ...links, ...ingredientLinks]
        for (const {place} of places) {
          expect(place?.start).toEqual(pointAt(place?.start.offset ?? -1))
          expect(place?.end).toEqual(pointAt(place?.end.offset ?? -1))
          expect(place?.end.offset).toBeGreaterThanOrEqual(place?.start.offset ?? 0)
        }
      }),
      {numRuns: 1000},
    )
  })
})

describe('the characters of a passage', () => {
  /** Pieces that Markdown takes something away from, between words. */
  const piece = fc.constantFrom(
    'stir',
    '180 °C',
    ' ',
    '\n',
    '\r\n',
    '\n> ',
    '\n   ',
    '\n- ',
    '\n1. ',
    '\n\n',
    '  \n',
    '\\\n',
    '\\*',
    '\\a',
    '\\\\',
    '&amp;',
    '&deg;',
    '&#176;',
    '&#x1F60A;',
    '&ngE;',
    '&nope;',
    '&',
    '*',
    '**',
    '`',
    '``',
    '[a](#x)',
    '[b](c.md "d")',
    '<b>',
    '>',
    '\t',
    '#',
    '```\n',
    '\u0338',
    'é',
    '😊',
  )
  const text = fc.array(piece, {maxLength: 25}).map((pieces) => pieces.join(''))

  /** What stands in the file for one character of a passage. */
  const written = (file: string, passage: Passage, index: number) => {
    const {start, end} = placeInPassage(passage, index, index + 1)
    return file.slice(start.offset, end.offset)
  }

  test('are the characters of the file, or stand for a reference or the end of a line', () => {
    fc.assert(
      fc.property(text, (file) => {
        for (const passage of readOrRefuse(file)?.method.passages ?? []) {
          for (let index = 0; index < passage.text.length; index++) {
            const character = passage.text[index] ?? ''
            const there = written(file, passage, index)
            if (there === character) continue
            const isReference = /^&[#\w]+;$/.test(there)
            const isLineEnd = /^[ \n]$/.test(character) && /^(?: *|\\)(?:\r\n?|\n)$/.test(there)
            const isTab = character === ' ' && there === '\t'
            if (!isReference && !isLineEnd && !isTab) {
              throw new Error(
                `${JSON.stringify(character)} at ${index} is ${JSON.stringify(there)}`,
              )
            }
          }
        }
      }),
      {numRuns: 5000},
    )
  })

  test('come in the order of the file', () => {
    fc.assert(
      fc.property(text, (file) => {
        for (const {stretches} of readOrRefuse(file)?.method.passages ?? []) {
          for (const [index, stretch] of stretches.entries()) {
            const next = stretches[index + 1]
            expect(stretch.end).toBeGreaterThan(stretch.start)
            if (next) expect(next.start).toBeGreaterThanOrEqual(stretch.end)
          }
        }
      }),
      {numRuns: 1000},
    )
  })
})
