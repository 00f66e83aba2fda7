import {expect, test} from 'vitest'
import {cursorInYaml} from '../../../src/cookbook/yaml/cursor-in-yaml.ts'

/** The cursor is the `|`. */
function cursorAt(marked: string) {
  const offset = marked.indexOf('|')
  return cursorInYaml(marked.slice(0, offset) + marked.slice(offset + 1), offset)
}

test.each([
  ['a key that is begun', 'title: Pot\nser|\n', 'key', [], 'ser'],
  ['an empty line', 'title: Pot\n|\n', 'key', [], ''],
  [
    'an empty line of an ingredient list',
    'ingredients:\n  rice: 1 g\n  |\n',
    'key',
    ['ingredients'],
    '',
  ],
  [
    'a name with a comma',
    'ingredients:\n  beef mince, 20|\n',
    'key',
    ['ingredients'],
    'beef mince, 20',
  ],
  [
    'a group',
    'ingredients:\n  For the top:\n    oat|\n',
    'key',
    ['ingredients', 'For the top'],
    'oat',
  ],
  [
    'braces that do not close',
    'stated: { energy: 1 kcal, pro|\nserves: 2\n',
    'key',
    ['stated'],
    'pro',
  ],
  ['an empty place in braces', 'stated: {| }\n', 'key', ['stated'], ''],
  [
    'a condition',
    'ingredients:\n  egg: { amount: 1 g, bou|: true }\n',
    'key',
    ['ingredients', 'egg'],
    'bou',
  ],
  ['a value', 'stated: { per: 100| }\n', 'value', ['stated', 'per'], '100'],
  ['an empty value', 'tolerance: |\n', 'value', ['tolerance'], ''],
  [
    'a value in braces',
    'ingredients:\n  stock: { amount: 1 g, recipe: bro|\n',
    'value',
    ['ingredients', 'stock', 'recipe'],
    'bro',
  ],
  ['an element', 'contains: [milk, e|]\n', 'value', ['contains'], 'e'],
  ['an element of its own line', 'contains:\n  - mi|\n', 'value', ['contains'], 'mi'],
  [
    'nothing behind a quotation mark that never closes',
    'title: "Pot\nrules: u|\n',
    undefined,
    undefined,
    undefined,
  ],
  [
    'a line behind a slip',
    'title: [Pot\nstated: { fat: 1 g }\n\nrules: u|\n',
    'value',
    ['rules'],
    'u',
  ],
] as const)('finds %s', (_, marked, kind, path, typed) => {
  const found = cursorAt(marked)
  expect({kind: found?.kind, typed: found?.typed}).toEqual({kind, typed})
  expect(found?.path).toEqual(path)
})

test('takes the whole key, and knows its colon and its neighbours', () => {
  expect(cursorAt('stated: { energy: 1 kcal, pro|tein: 2 g }')).toMatchObject({
    text: 'protein',
    typed: 'pro',
    hasColon: true,
    isFlow: true,
    siblings: ['energy'],
  })
  expect(cursorAt('ingredients:\n  pearl| barley: 180 g\n')).toMatchObject({
    text: 'pearl barley',
    from: 15,
    to: 27,
    isFlow: false,
  })
})

test('nothing is completed in a comment', () => {
  expect(cursorAt('serves: 2  # for t|wo')).toBeUndefined()
})

test('a value ends before its comment', () => {
  expect(cursorAt('scale: 1| g   # the smallest step')).toMatchObject({text: '1 g', kind: 'value'})
})
