import {describe, expect, test} from 'vitest'
import type {Problem} from '../../../src/cookbook/problem.ts'
import {reportInto} from '../../../src/cookbook/problems.ts'
import {parseYaml} from '../../../src/cookbook/yaml/parse-yaml.ts'
import {wholeFile} from '../../../src/cookbook/yaml/yaml-source.ts'
import {pointedAt} from './read-yaml.ts'

function parse(yaml: string) {
  const problems: Problem[] = []
  const node = parseYaml(wholeFile(yaml), reportInto(problems, 'foods.yaml'))
  return {node, problems}
}

test('Values stay as written: numbers, numbers that look odd, and words YAML 1.1 took for others', () => {
  const {node} = parse('a: 12.50\nb: 012\nc: yes\nd: 1e3\ne: "12"\nf: .nan\ng: 1:30\n')
  const entries = node?.kind === 'mapping' ? node.entries : []
  expect(entries.map(({value}) => (value.kind === 'text' ? value.text : value.kind))).toEqual([
    '12.50',
    '012',
    'yes',
    '1e3',
    '12',
    '.nan',
    '1:30',
  ])
})

test('A decimal comma between braces stays in its value, for the reader of the value to tell', () => {
  const source = 'label: { per: 100 g, carbohydrate: 6,7 g, fat: 0,2, salt: 1 g, serves: 4, 5 g }\n'
  const {node} = parse(source)
  const label = node?.kind === 'mapping' ? node.entries[0]?.value : undefined
  const entries = label?.kind === 'mapping' ? label.entries : []
  expect(
    entries.map(({key, value}) => [key.value, value.kind === 'text' ? value.text : value.kind]),
  ).toEqual([
    ['per', '100 g'],
    ['carbohydrate', '6,7 g'],
    ['fat', '0,2'],
    ['salt', '1 g'],
    ['serves', '4'],
    ['5 g', 'empty'],
  ])
  const {place} = entries[1]?.value ?? {}
  expect(source.slice(place?.start.offset, place?.end.offset)).toBe('6,7 g')
})

test('An empty file is nothing to read and no error', () => {
  expect(parse('')).toEqual({node: undefined, problems: []})
  expect(parse('# nothing yet\n')).toEqual({node: undefined, problems: []})
})

describe('A slip of the pen is answered in words, at its place', () => {
  test.each([
    ['a:\n\t- x', 'A tab indents this line, expected spaces', ''],
    ['a: @b', 'A text begins with `@`, expected it in quotes', '@'],
    ['t: Pot: the second', 'A second `key: value` begins on this line, expected one a line', 'P'],
    [
      'a: 1\nb 2\nc: 3',
      '`b 2` is no `key: value`, expected a colon and a space behind the key',
      'b 2',
    ],
    ['a: 1\nb 2\n', '`b 2` is no `key: value`, expected a colon and a space behind the key', 'b 2'],
    ['a:1\nb: 2', '`a:1` is no `key: value`, expected a colon and a space behind the key', 'a:1'],
    ['b: 1\na: "x\nc: 2\n', '`"` opens here and never closes, expected `"` behind it', '"'],
    ["b: 1\na: 'x\nc: 2\n", "`'` opens here and never closes, expected `'` behind it", "'"],
    ['a: [1 2, "b" "c"]', 'A comma is missing before `"`, expected one between two values', '"'],
    ['a: [1, 2\nb: 3', '`[` opens here and never closes, expected `]` behind it', '['],
    [
      'a:\n   b: 1\n  c: 2',
      'The indentation does not fit the lines above, expected one column for one level',
      '',
    ],
    [
      'a: {b: 1 c: 2}',
      '`1 c: 2` does not fit within braces, expected `{ key: value, key: value }`',
      '1 c: 2',
    ],
    ["a: 'it's'", "`s'` does not fit here, expected one `key: value` a line", "s'"],
    ['a: *Best* pot', '`pot` does not fit here, expected one `key: value` a line', 'pot'],
    ['a: "\\q"', '`\\` opens no known escape, expected `\\\\` for a backslash', '\\'],
    ['a: 1\n---\nb: 2', 'A second YAML document starts here, expected one in a file', ''],
  ])('%j', (yaml, reason, at) => {
    const {node, problems} = parse(yaml)
    expect(node).toBeUndefined()
    expect(problems[0]?.reason).toBe(reason)
    expect(pointedAt(yaml, problems[0])).toBe(at)
  })
})

describe('What YAML allows and a cookbook does not need is refused', () => {
  test.each([
    ['a: &x 1\nb: *x', ['no-alias', 'no-alias']],
    ['a: !!str 1', ['no-alias']],
    ['a: !egg 1', ['no-alias']],
    ['a: 1\na: 2', ['no-duplicate-key']],
    ['"a": 1\na: 2', ['no-duplicate-key']],
    ['__proto__: {admin: true}', ['readable-value']],
    ['constructor: 1', ['readable-value']],
    ['[a, b]: 1', ['readable-value']],
    [': 1', ['readable-value']],
  ])('%j', (yaml, ruleIds) => {
    const {problems} = parse(yaml)
    expect(problems.map(({ruleId}) => ruleId)).toEqual(ruleIds)
  })

  test('an alias bomb, before it grows', () => {
    const levels = Array.from({length: 30}, (_, level) =>
      level === 0 ? 'l0: &l0 [x, x]' : `l${level}: &l${level} [*l${level - 1}, *l${level - 1}]`,
    )
    const {problems} = parse(levels.join('\n'))
    expect(new Set(problems.map(({ruleId}) => ruleId))).toEqual(new Set(['no-alias']))
  })

  test.each([
    ['brackets', '['.repeat(100_000)],
    ['closed brackets', `${'['.repeat(5_000)}${']'.repeat(5_000)}`],
    ['braces', '{a: '.repeat(20_000)],
    ['dashes', `${'- '.repeat(20_000)}a`],
    ['question marks', `${'? '.repeat(20_000)}a`],
    ['indentation', Array.from({length: 1_000}, (_, level) => `${' '.repeat(level)}a:`).join('\n')],
  ])('nesting by %s', (_, yaml) => {
    const {node, problems} = parse(yaml)
    expect(node).toBeUndefined()
    expect(problems.map(({ruleId}) => ruleId)).toEqual(['no-deep-nesting'])
  })

  test('twenty levels pass, twenty-one do not', () => {
    const nested = (levels: number) => `${'['.repeat(levels)}${']'.repeat(levels)}`
    expect(parse(nested(20)).problems).toEqual([])
    expect(parse(nested(21)).problems.map(({ruleId}) => ruleId)).toEqual(['no-deep-nesting'])
  })
})
