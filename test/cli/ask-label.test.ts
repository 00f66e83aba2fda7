import {expect, test} from 'vitest'
import {askLabel} from '../../src/cli/ask-label.ts'
import {answering} from './answering.ts'

test('the answers make an entry, with the day of reading', async () => {
  const {ask} = answering({
    Name: ['plain curd'],
    Figures: ['100 g'],
    Rules: ['EU'],
    'energy kcal': ['62 kcal'],
    protein: ['11 g'],
    Contains: ['Milk, egg'],
    'May contain': ['none'],
    Weight: ['450 g'],
    Aisle: ['dairy'],
  })
  expect(await askLabel(ask, {today: '2026-11-25'})).toEqual({
    name: 'plain curd',
    panel: new Map([
      ['per', '100 g'],
      ['rules', 'eu'],
      ['energy', '62 kcal'],
      ['protein', '11 g'],
      ['read', '2026-11-25'],
    ]),
    contains: ['milk', 'egg'],
    mayContain: [],
    sold: new Map([
      ['weight', '450 g'],
      ['aisle', 'dairy'],
    ]),
  })
})

test.each([
  ['Figures', ['a pot', '100 g'], 'per', '100 g'],
  ['fat', ['much', '0.2', '0.2 g'], 'fat', '0.2 g'],
  ['energy kcal', ['62 kJ', '62 kcal'], 'energy', '62 kcal'],
])('an answer to %s that cannot be read is asked for again', async (start, given, key, value) => {
  const {ask, questions} = answering({Figures: ['100 g'], [start]: given})
  const entry = await askLabel(ask, {name: 'curd', today: '2026-11-25'})
  expect(entry.panel.get(key)).toBe(value)
  const again = questions.filter((question) => question.startsWith('  Expected '))
  expect(again).toHaveLength(given.length - 1)
  expect(questions[0]).toMatch(/^Figures are for/)
})

test('an unknown allergen is refused, and nothing said stays unknown', async () => {
  const {ask, questions} = answering({Figures: ['100 g'], Contains: ['milk, lactose', '']})
  const entry = await askLabel(ask, {name: 'curd', today: '2026-11-25'})
  expect(entry).not.toHaveProperty('contains')
  expect(questions.join('\n')).toContain('Expected one of wheat, rye')
})
