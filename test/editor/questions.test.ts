/** What the server answers, on a cookbook in memory. */

import {expect, test} from 'vitest'
import {TextDocument} from 'vscode-languageserver-textdocument'
import {examine} from '../../src/build.ts'
import {completion} from '../../src/editor/completion.ts'
import {definition} from '../../src/editor/definition.ts'
import {hover} from '../../src/editor/hover.ts'
import {type FoundFile, quickFixes} from '../../src/editor/quick-fixes.ts'

const foods = 'brown onion: { same as: onion }\n'

const base = `---
title: Base
yield: 300 g
ingredients: { red lentils: 200 g, water: 200 g }
---

Boil the lentils in the water.
`

/** The recipe whose text a test changes; 100 g of rice and half of the base, for one. */
const path = 'recipes/bowl.md'
const bowl = `---
title: Bowl
serves: 1
yield: 250 g
ingredients:
  white rice: 100 g
  my **own** [base](http://example.org): { amount: 150 g, recipe: base }
  brown onion: { amount: 10 g, optional: true }
stated: { per: serving, protein: 1 g, fat: "99 g" }
---

1. Cook it at 200 °C.
`

function cookbookWith(text: string) {
  const texts = [
    {path: 'foods.yaml', text: foods},
    {path: 'recipes/base.md', text: base},
    {path, text},
  ]
  return examine({sources: {texts, images: []}, problems: []})
}

function fileWith(text: string): FoundFile {
  const problems = cookbookWith(text).problems.filter(({file}) => file === path)
  return {uri: 'file:///bowl.md', path, text, problems, address: undefined}
}

/** The actions offered at the first occurrence of a text. */
function actionsAt(text: string, at: string) {
  const position = TextDocument.create('', '', 0, text).positionAt(text.indexOf(at))
  return quickFixes(fileWith(text), {start: position, end: position})
}

function applied(text: string, action: ReturnType<typeof actionsAt>[number] | undefined) {
  const edits = Object.values(action?.edit?.changes ?? {}).flat()
  return TextDocument.applyEdits(TextDocument.create('', '', 0, text), edits)
}

test('a figure in quotation marks keeps them', () => {
  const [fix] = actionsAt(bowl, '"99 g"')
  expect(applied(bowl, fix)).toMatch(/protein: 1 g, fat: "\d[.\d]* g" \}/u)
})

test('everything with one right answer is mended in one go', () => {
  const all = actionsAt(bowl, '1 g,').find(({title}) => title.startsWith('Mend all 2'))
  const mended = applied(bowl, all)
  expect(mended).not.toBe(bowl)
  expect(cookbookWith(mended).problems.filter(({ruleId}) => ruleId === 'stated-macros')).toEqual([])
})

test('a block goes in with the line ends of the file', () => {
  const text = bowl.replace(/^stated: .*\n/mu, '').replaceAll('\n', '\r\n')
  const put = actionsAt(text, 'title').find(({title}) => title.startsWith('Put'))
  expect(applied(text, put)).toMatch(/\r\nstated: \{ .* \}\r\n---\r\n\r\n1\./u)
})

test('a misspelt key is written as it was meant', () => {
  const text = bowl.replace('serves: 1', 'serfes: 1')
  const [fix] = actionsAt(text, 'serfes')
  expect(fix?.title).toBe('Write `serves`')
  expect(applied(text, fix)).toBe(bowl)
})

test('a finding that is accepted is left as it is', () => {
  const text = bowl.replace('stated:', 'accepted: { stated-macros: a test }\nstated:')
  expect(fileWith(text).problems.some(({accepted}) => accepted === 'a test')).toBe(true)
  expect(actionsAt(text, '"99 g"')).toEqual([])
})

test('no fix puts words into the method: what the cook does is not mended by writing', () => {
  const text = bowl.replace('title: Bowl', 'title: Bowl\noven: 180 °C')
  const found = fileWith(text).problems.find(({ruleId}) => ruleId === 'oven-in-method')
  expect(found?.expected).toEqual(['180 °C'])
  expect(actionsAt(text, '200 °C')).toEqual([])
})

function asked(at: string, {file = path, text = bowl} = {}) {
  return {path: file, text, offset: text.indexOf(at) + 1}
}

test('the words of a writer stay words where the pointer rests', () => {
  const said = JSON.stringify(hover(asked('my **own**'), cookbookWith(bowl))?.contents)
  // In JSON each backslash stands twice.
  expect(said).toContain('my \\\\*\\\\*own\\\\*\\\\* \\\\[base\\\\](http://example.org)')
  expect(said).toContain('recipe `base`')
  // 150 of the base's 300 g: 100 g of lentils beside 100 g of rice.
  expect(said).toMatch(/protein \| \d+ g \| 7\d % \| \d+ g/u)
})

test('a line that is not counted says so instead of figures', () => {
  const said = hover(asked('brown onion'), cookbookWith(bowl))?.contents
  expect(JSON.stringify(said)).toContain('Optional: it adds nothing to the figures.')
})

test('a stated figure says its verdict', () => {
  const said = hover(asked('"99 g"'), cookbookWith(bowl))?.contents
  // SR28: 100 g of white rice (20444) 0.66 g, 100 g of red lentils (16144) 2.17 g.
  expect(JSON.stringify(said)).toMatch(/fat per serving: drift.*stated 99 g, computed 2\.8 ± /u)
})

test('a food is told even in a recipe that cannot be computed', () => {
  const text = bowl.replace('100 g', 'some')
  const said = hover(asked('white rice', {text}), cookbookWith(text))?.contents
  expect(JSON.stringify(said)).toMatch(/white rice.*Per 100 g/u)
})

test('names lead to where they are written', () => {
  const cookbook = cookbookWith(bowl)
  expect(definition(asked('my **own**'), cookbook)).toEqual({path: 'recipes/base.md'})
  expect(definition(asked('base }'), cookbook)).toEqual({path: 'recipes/base.md'})
  expect(definition(asked('brown onion'), cookbook)).toMatchObject({
    path: 'foods.yaml',
    place: {start: {line: 1, column: 1}},
  })
  expect(definition(asked('white rice'), cookbook)).toBeUndefined()
  expect(definition(asked('Cook it'), cookbook)).toBeUndefined()
})

test('at every place, in every state of the writing, there is an answer', () => {
  const examined = cookbookWith(bowl)
  const kinds = new Set<string>()
  for (let offset = 0; offset <= bowl.length; offset++) {
    // As it stands when the cursor is there, and when nothing below is written yet.
    for (const text of [bowl, bowl.slice(0, offset)]) {
      const {items} = completion({path, text, offset}, examined)
      for (const {label} of items.slice(0, 1)) kinds.add(label)
      hover({path: 'recipes/other.md', text, offset}, examined)
      definition({path, text, offset}, examined)
    }
  }
  for (const label of ['title', 'serving', 'amount', 'base', 'energy'])
    expect(kinds).toContain(label)
  expect(completion({path, text: bowl, offset: bowl.length}, examined).items).toEqual([])
})
