import {expect, test} from 'vitest'
import {reportHiddenCharacters} from '../../src/cookbook/hidden-characters.ts'
import type {Problem} from '../../src/cookbook/problem.ts'
import {reportInto} from '../../src/cookbook/problems.ts'
import {understandCookbook} from '../../src/cookbook/understand.ts'
import {pointedAt} from './read-body.ts'

function found(text: string): Problem[] {
  const problems: Problem[] = []
  reportHiddenCharacters(text, reportInto(problems, 'recipes/barley-pot.md'))
  return problems
}

// The overrides, embeddings and isolates of UAX 9 (Unicode 16.0), table 4, and other characters
// without a shape.
test.each([
  '\u202A',
  '\u202B',
  '\u202C',
  '\u202D',
  '\u202E',
  '\u2066',
  '\u2067',
  '\u2068',
  '\u2069',
  '\u200B',
  '\u2060',
  '\u2028',
  '\uFEFF',
  '\u0000',
  '\u0008',
  '\u001B',
  '\u007F',
  '\u0085',
])('a character that does not show is reported where it stands (%#)', (character) => {
  const text = `salt: 5 g\npearl ${character}barley`
  const problems = found(text)
  expect(problems).toHaveLength(1)
  expect(problems[0]).toMatchObject({ruleId: 'no-hidden-character', severity: 'error'})
  expect(problems[0]?.place?.start).toEqual({line: 2, column: 7, offset: 16})
  expect(problems[0] && pointedAt(text, problems[0])).toBe(character)
})

test('what scripts and emoji are written with passes', () => {
  expect(found('نیم‌پز 👩‍🍳 שמן\u200E 5 g\tÄpfel\u00A0è\r\nso\u00ADft')).toEqual([])
})

test('a file full of them gets a few messages', () => {
  expect(found('\u200B'.repeat(10_000))).toHaveLength(5)
})

test('every file that a writer writes is looked at', () => {
  const paths = ['cookbook.yaml', 'foods.yaml', 'pages/about.md', 'plans/week.md', 'recipes/pot.md']
  const texts = paths.map((path) => ({path, text: `---\n# left to right \u202E\n---\n`}))
  const {problems} = understandCookbook({texts, images: []})
  const told = problems.filter(({ruleId}) => ruleId === 'no-hidden-character')
  expect(told.map(({file}) => file).toSorted()).toEqual(paths)
})
