import {expect, test} from 'vitest'
import type {Problem} from '../../src/cookbook/problem.ts'
import {inReportOrder} from '../../src/cookbook/report-order.ts'
import {filePathBelow} from '../../src/report/file-path.ts'
import {message} from '../../src/report/message.ts'
import {plainPaint} from '../../src/report/paint.ts'
import {textMessages} from '../../src/report/text-report.ts'

const problem: Problem = {
  ruleId: 'stated-macros',
  severity: 'error',
  file: 'recipes/pot.md',
  place: {start: {line: 12, column: 24}, end: {line: 12, column: 28}},
  reason: 'Stated protein `38 g`, expected `33 g`',
  actual: '38 g',
  expected: ['33 g'],
  note: 'Write `protein: 33 g`.\nMost of it: barley 18 g.',
}

const tagged = (tag: string) => (text: string) => `<${tag}>${text}</${tag}>`
const paint = {
  bold: tagged('b'),
  dim: tagged('dim'),
  red: tagged('red'),
  yellow: tagged('yellow'),
  cyan: tagged('cyan'),
  link: (text: string, file: string) => `<a ${file}>${text}</a>`,
}

test('a message has the path as the writer types it and the page of its rule', () => {
  expect(message(problem, filePathBelow('book/'), 'https://rowing.example/table/')).toEqual({
    file: 'book/recipes/pot.md',
    line: 12,
    column: 24,
    endLine: 12,
    endColumn: 28,
    rule: 'stated-macros',
    severity: 'error',
    reason: 'Stated protein `38 g`, expected `33 g`',
    actual: '38 g',
    expected: ['33 g'],
    note: 'Write `protein: 33 g`.\nMost of it: barley 18 g.',
    url: 'https://rowing.example/table/rules/#stated-macros',
  })
})

test('a problem of a whole file points at its first character; without an address the page is in the site', () => {
  const {place: _, note: __, actual: ___, expected: ____, ...whole} = problem
  expect(message(whole, filePathBelow('content'))).toEqual({
    file: 'content/recipes/pot.md',
    line: 1,
    column: 1,
    endLine: 1,
    endColumn: 1,
    rule: 'stated-macros',
    severity: 'error',
    reason: 'Stated protein `38 g`, expected `33 g`',
    expected: [],
    url: 'rules/index.html#stated-macros',
  })
})

test.each([
  ['content', 'content/a.md'],
  ['./content', './content/a.md'],
  ['../book/', '../book/a.md'],
  ['.', 'a.md'],
  ['C:\\kitchen\\book', 'C:/kitchen/book/a.md'],
])('the folder %s names its files', (folder, file) => {
  expect(filePathBelow(folder)('a.md')).toBe(file)
})

test('a finding is one block: place, severity, reason, rule, then how to mend it', () => {
  const one = message(problem, filePathBelow('content'))
  expect([...textMessages([one], plainPaint)].join('')).toBe(
    [
      'content/recipes/pot.md:12:24  error  Stated protein `38 g`, expected `33 g`  stated-macros',
      '    Write `protein: 33 g`.',
      '    Most of it: barley 18 g.',
      '',
    ].join('\n'),
  )
})

test('colour marks severities apart and says nothing the words do not', () => {
  const severities = (['error', 'warning', 'note'] as const).map((severity) =>
    message({...problem, severity}, filePathBelow('content')),
  )
  const text = [...textMessages(severities, paint)].join('')
  expect(text).toContain('<red>error</red>')
  expect(text).toContain('<yellow>warning</yellow>')
  expect(text).toContain('<cyan>note</cyan>')
})

test('the place leads to its file', () => {
  const one = message(problem, filePathBelow('content'))
  const [head] = textMessages([one], paint)
  const place = 'content/recipes/pot.md'
  expect(head).toMatch(new RegExp(`^<a ${place}><b>${place}:12:24</b></a> `, 'u'))
})

test('a file name that would move the cursor is shown by its codes', () => {
  const one = message({...problem, file: 'recipes/\u001B[2J.md'}, filePathBelow('content'))
  const [head] = textMessages([one], paint)
  expect(head).toContain('content/recipes/\\u{1B}[2J.md:12:24')
})

test('order is by path, position, rule and reason, whatever order they were found in', () => {
  const at = (line: number, column: number) => ({
    start: {line, column},
    end: {line, column},
  })
  const {place: _, ...whole} = problem
  const ordered: Problem[] = [
    {...whole, file: 'foods.yaml'},
    {...problem, file: 'recipes/Z.md'},
    {...whole, file: 'recipes/a.md'},
    {...problem, file: 'recipes/a.md', place: at(2, 30)},
    {...problem, file: 'recipes/a.md', place: at(10, 2)},
    {...problem, file: 'recipes/a.md', place: at(10, 11)},
    {...problem, file: 'recipes/a.md', place: at(10, 11), ruleId: 'unknown-food'},
    {...problem, file: 'recipes/a.md', place: at(10, 11), ruleId: 'unknown-food', reason: 'T'},
  ]
  expect(inReportOrder(ordered.toReversed())).toEqual(ordered)
  expect(inReportOrder([3, 0, 7, 1, 5, 2, 6, 4].flatMap((n) => ordered[n] ?? []))).toEqual(ordered)
})
