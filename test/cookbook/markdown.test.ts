import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {parseMarkdown} from '../../src/cookbook/markdown.ts'
import {markdownLimits} from '../../src/cookbook/markdown-limits.ts'
import type {Problem} from '../../src/cookbook/problem.ts'
import {reportInto} from '../../src/cookbook/problems.ts'
import {withoutByteOrderMark} from '../../src/cookbook/yaml/yaml-source.ts'
import {pointedAt} from './read-body.ts'

function parsed(text: string) {
  const problems: Problem[] = []
  const root = parseMarkdown(text, reportInto(problems, 'recipes/barley-pot.md'))
  return {root, problems}
}

describe('front matter', () => {
  test.each([
    '---\ntitle: Barley pot\n---\nStir.\n',
    '---\r\ntitle: Barley pot\r\n---\r\nStir.\r\n',
    '---\rtitle: Barley pot\r---\rStir.\r',
    '--- \t\ntitle: Barley pot\n---\t \nStir.',
    '---\ntitle: Barley pot\n---',
    withoutByteOrderMark('\uFEFF---\ntitle: Barley pot\n---\nStir.'),
  ])('is told from the method (%j)', (text) => {
    const {root, problems} = parsed(text)
    expect(problems).toEqual([])
    expect(root?.children[0]).toMatchObject({type: 'yaml', value: 'title: Barley pot'})
    expect(root?.children[0]?.position?.start.offset).toBe(0)
  })

  test.each([
    '---\ntitle: Barley pot\n\nStir.\n',
    '---\r\ntitle: Barley pot\r\n----\r\nStir.',
    '---\ntitle: Barley pot\n --- \nStir.',
    '---\n--- x\n',
    '---',
  ])('that never closes is said, at its fence (%j)', (text) => {
    const {root, problems} = parsed(text)
    expect(root).toBeUndefined()
    expect(problems.map(({ruleId, reason}) => [ruleId, reason])).toEqual([
      [
        'front-matter-present',
        'The `---` on the first line opens front matter that never closes, expected a second `---`',
      ],
    ])
    expect(problems[0] && pointedAt(text, problems[0])).toBe('---')
  })

  test('a text without front matter is parsed: what it needs is for its reader to say', () => {
    const {root, problems} = parsed('Stir.\n\n---\n')
    expect(problems).toEqual([])
    expect(root?.children.map(({type}) => type)).toEqual(['paragraph', 'thematicBreak'])
  })

  test('ends where the parser ends it, whatever stands there', () => {
    const line = fc.constantFrom(
      '---',
      '--- ',
      ' ---',
      '----',
      '--',
      '',
      'a: b',
      '\u2028---',
      '- a',
    )
    const ending = fc.constantFrom('\n', '\r\n', '\r')
    const text = fc
      .array(fc.tuple(line, ending), {maxLength: 8})
      .map((lines) => `---\n${lines.flat().join('')}`)
    fc.assert(
      fc.property(text, (written) => {
        const {root, problems} = parsed(written)
        const isYaml = root?.children[0]?.type === 'yaml'
        const isUnclosed = problems.some(({ruleId}) => ruleId === 'front-matter-present')
        expect(isYaml).toBe(!isUnclosed)
      }),
      {numRuns: 2000},
    )
  })
})

describe('limits', () => {
  const {characters, lines, nesting, containers, inlineSigns} = markdownLimits
  const bullets = (count: number) => '- a\n'.repeat(count)

  test.each([
    ['characters', 'x'.repeat(characters), 'x'.repeat(characters + 1)],
    ['lines', 'x\n'.repeat(lines), 'x\n'.repeat(lines + 1)],
    ['quotes', `${'> '.repeat(nesting)}x`, `${'> '.repeat(nesting + 1)}x`],
    ['tight quotes', `${'>'.repeat(nesting)}x`, `${'>'.repeat(nesting + 1)}x`],
    ['bullets in one line', `${'- '.repeat(nesting)}x`, `${'- '.repeat(nesting + 1)}x`],
    ['numbers in one line', `${'1. '.repeat(nesting)}x`, `${'1. '.repeat(nesting + 1)}x`],
    ['empty bullets', '+ '.repeat(nesting), '+ '.repeat(nesting + 1)],
    ['indentation', `a\n${' '.repeat(4 * nesting)}x`, `a\n${' '.repeat(4 * nesting + 4)}x`],
    ['tabs', `a\n${'\t'.repeat(nesting)}x`, `a\n${'\t'.repeat(nesting + 1)}x`],
    ['list items', bullets(containers), `>${bullets(containers)}`],
    ['emphasis', '*a'.repeat(inlineSigns), '*a'.repeat(inlineSigns + 1)],
    ['underscores over lines', '_\n'.repeat(inlineSigns), '_\n'.repeat(inlineSigns + 1)],
    ['brackets', '['.repeat(inlineSigns), '['.repeat(inlineSigns + 1)],
    ['pictures', '!['.repeat(inlineSigns / 10), '!['.repeat(inlineSigns / 10 + 1)],
  ])('%s: as many as allowed pass, one more is refused', (_, passes, refused) => {
    expect(parsed(passes).problems).toEqual([])
    const {root, problems} = parsed(refused)
    expect(root).toBeUndefined()
    expect(problems.map(({ruleId}) => ruleId)).toEqual(['readable-markdown'])
    expect(problems[0]?.reason).toMatch(/, expected `\d+` at most$/)
  })

  test('the message points at the line that goes too far, below the front matter', () => {
    const deep = `${'> '.repeat(1000)}x`
    const text = `---\ntitle: Barley pot\n---\n\nStir.\n\n${deep}\n`
    const {problems} = parsed(text)
    expect(problems[0]).toMatchObject({
      reason: 'Quotes and lists are nested more levels deep here, expected `20` at most',
      place: {start: {line: 7, column: 1}},
    })
    expect(problems[0] && pointedAt(text, problems[0])).toBe(deep)
  })

  test('front matter is not counted', () => {
    const text = `---\n${'ingredient: 1 g\n'.repeat(10_000)}---\nStir.\n`
    expect(parsed(text).problems).toEqual([])
  })

  test('signs are counted by the paragraph, and a rule or a list item begins another', () => {
    const signs = '*a'.repeat(200)
    for (const between of ['\n\n', '\n- ', '\n---\n', '\n* * * * *\n', '\n \t\n']) {
      expect(parsed(`${signs}${between}${signs}`).problems).toEqual([])
    }
    for (const between of ['\n', '\n2. ', '\n> ', '\n    - ', '\n-\n']) {
      expect(parsed(`${signs}${between}${signs}`).problems).toHaveLength(1)
    }
  })

  // Each of these kept the parser busy for minutes, or overflowed its stack, before the limits.
  test.each([
    ['quotes', '> '.repeat(10_000)],
    ['bullets', `${'- '.repeat(10_000)}x`],
    ['a staircase', Array.from({length: 1000}, (_, i) => `${'  '.repeat(i)}- x`).join('\n')],
    ['emphasis', `${'*a **b '.repeat(5000)}${'** c*'.repeat(5000)}`],
    ['stars', `${'*'.repeat(10_000)}a${'*'.repeat(10_000)}`],
    ['pictures in pictures', `${'!['.repeat(10_000)}a${'](b)'.repeat(10_000)}`],
    ['headings', 'a\n==\n\n'.repeat(20_000)],
    ['a lazy paragraph', `${'> '.repeat(20)}a\n${'a\n'.repeat(50_000)}`],
  ])(
    'a text made to exhaust the parser is refused at once: %s',
    (_, text) => {
      expect(parsed(text).root).toBeUndefined()
    },
    2_000,
  )

  // The slowest texts within the limits that a search by hand found.
  const fill = (text: string) => text.repeat(Math.floor(characters / text.length))
  test.each([
    ['emphasis', fill(`${'*a **b '.repeat(50)}${'** c*'.repeat(50)}\n\n`)],
    ['pictures', fill(`${'!['.repeat(30)}a${'](b)'.repeat(30)}\n\n`)],
    ['headings', 'a\n==\n'.repeat(2500)],
    ['deep lists', `${'- '.repeat(20)}a\n`.repeat(250)],
    ['a lazy paragraph', `${'> '.repeat(20)}a\n${'a\n'.repeat(4990)}`],
    ['references', fill('&amp;')],
    ['definitions', fill('[a]: b\n\n').slice(0, 20_000)],
    ['backticks', fill('`a``b```c````d`````e\n')],
    ['open tags', fill('<a ')],
    ['open comments', fill('<!--')],
  ])(
    'the slowest texts that pass take seconds, not minutes: %s',
    (_, text) => {
      const {root, problems} = parsed(text)
      expect(problems).toEqual([])
      expect(root?.type).toBe('root')
    },
    15_000,
  )
})
