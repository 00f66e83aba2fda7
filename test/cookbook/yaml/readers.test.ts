import {expect, test} from 'vitest'
import {
  list,
  mapping,
  openMapping,
  optional,
  required,
  textOrMapping,
} from '../../../src/cookbook/yaml/collection-readers.ts'
import {choice, flag, number, text, wholeNumber} from '../../../src/cookbook/yaml/text-readers.ts'
import {pointedAt, readYaml} from './read-yaml.ts'

const dish = mapping('the keys of a dish', {
  title: required(text, 'Name of the dish', 'what is the dish called?'),
  serves: optional(wholeNumber({from: 1}), 'Servings of the batch'),
  weight: optional(number({above: 0}), 'Grams'),
  vegan: optional(flag, 'No animal product'),
  season: optional(choice(['spring', 'summer', 'autumn']), 'When it is best'),
  tags: optional(list('a list such as `[soup]`', text), 'Words to find it by'),
  oven: optional(mapping('a mapping', {heat: required(text, 'Heat', 'how hot?')}), 'The oven'),
  lines: optional(
    openMapping('ingredients with amounts', textOrMapping(text, mapping('conditions', {}))),
    'Lines',
  ),
})

test('A dish is read with every value in its place', () => {
  const source = 'title: Barley pot\nserves: 4\nvegan: true\ntags: [one pot, soup]\nweight: 12.50\n'
  const {value, problems} = readYaml(source, dish)
  expect(problems).toEqual([])
  expect(value?.serves).toEqual({
    value: 4,
    place: {
      start: {line: 2, column: 9, offset: 26},
      end: {line: 2, column: 10, offset: 27},
    },
  })
  expect(value?.tags?.value.map((tag) => tag.value)).toEqual(['one pot', 'soup'])
  expect(value?.weight?.value).toBe(12.5)
  expect(value).not.toHaveProperty('season')
})

test.each([
  ['title: x\nserves: four', '`serves` is `four`, expected a whole number from `1` up', 'four'],
  ['title: x\nserves: 0', '`serves` is `0`, expected a whole number from `1` up', '0'],
  ['title: x\nserves: 2.5', '`serves` is `2.5`, expected a whole number from `1` up', '2.5'],
  ['title: x\nserves: 0x10', '`serves` is `0x10`, expected a whole number from `1` up', '0x10'],
  ['title: x\nserves:', '`serves` is empty, expected a whole number from `1` up', 'serves'],
  ['title: x\nserves: ~', '`serves` is empty, expected a whole number from `1` up', 'serves'],
  ['title: x\nserves: [4]', '`serves` is a list, expected a whole number from `1` up', '4'],
  [
    'title: x\nserves: {four: 4}',
    '`serves` is a mapping of keys to values, expected a whole number from `1` up',
    'four',
  ],
  ['title: x\nweight: .nan', '`weight` is `.nan`, expected a number above `0`', '.nan'],
  ['title: x\nweight: .inf', '`weight` is `.inf`, expected a number above `0`', '.inf'],
  ['title: x\nweight: -1', '`weight` is `-1`, expected a number above `0`', '-1'],
  [
    `title: x\nweight: ${'9'.repeat(400)}`,
    `\`weight\` is \`${'9'.repeat(59)}…\`, expected a number above \`0\``,
    '9'.repeat(400),
  ],
  ['title: x\nvegan: yes', '`vegan` is `yes`, expected `true` or `false`', 'yes'],
  [
    'title: x\nseason: sumer',
    '`season` is `sumer`, expected one of `spring`, `summer`, `autumn`',
    'sumer',
  ],
  ['title: x\ntags: soup', '`tags` is `soup`, expected a list such as `[soup]`', 'soup'],
  [
    'title: x\ntags: [a, {b: c}]',
    'An entry of `tags` is a mapping of keys to values, expected a text',
    'b',
  ],
  ['serves: 4', '`title` is missing: what is the dish called?', 'serves'],
  ['title: x\noven: {het: 200}', 'Unknown key `het` in `oven`, expected `heat`', 'het'],
  ['title: x\nsurves: 4', 'Unknown key `surves`, expected `serves`', 'surves'],
  [
    'title: x\nlines: {flour: [a]}',
    '`flour` in `lines` is a list, expected a text, or conditions',
    'a',
  ],
  ['- title: x', 'The file is a list, expected the keys of a dish', 'title'],
])("%j is refused in a writer's words", (source, reason, at) => {
  const {problems} = readYaml(source, dish)
  expect(problems.map((problem) => problem.reason)).toContain(reason)
  expect(
    pointedAt(
      source,
      problems.find((problem) => problem.reason === reason),
    ),
  ).toBe(at)
})

test('A key far from every known one is answered with all of them', () => {
  expect(readYaml('title: x\noven: {heat: 1, zzz: 2}', dish).reasons).toEqual([
    'Unknown key `zzz` in `oven`, expected `heat`',
  ])
})

test('Every slip in a mapping is reported, not only the first', () => {
  expect(readYaml('serves: four\nsurves: 4\nvegan: yes', dish).problems).toHaveLength(4)
})

test('A missing key in an inner mapping leaves the rest of the dish readable', () => {
  const {value, reasons} = readYaml('title: x\noven: {}\nserves: 4', dish)
  expect(value?.serves?.value).toBe(4)
  expect(value).not.toHaveProperty('oven')
  expect(reasons).toEqual(['`heat` in `oven` is missing: how hot?'])
})

test('The definitions that validate also describe the fields to an editor', () => {
  expect(dish.schema).toMatchObject({
    type: 'object',
    required: ['title'],
    additionalProperties: false,
    properties: {
      title: {description: 'Name of the dish'},
      serves: {type: 'integer', minimum: 1, description: 'Servings of the batch'},
      weight: {type: 'number', exclusiveMinimum: 0},
      season: {enum: ['spring', 'summer', 'autumn']},
      tags: {type: 'array', items: {type: ['string', 'number', 'boolean']}},
    },
  })
})
