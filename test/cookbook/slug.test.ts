import {expect, test} from 'vitest'
import type {Problem} from '../../src/cookbook/problem.ts'
import {reportInto} from '../../src/cookbook/problems.ts'
import {slugOf} from '../../src/cookbook/slug.ts'

function slug(path: string) {
  const problems: Problem[] = []
  return {slug: slugOf(path, 'recipes', reportInto(problems, path)), problems}
}

test.each(['barley-pot', 'soup', '5-minute-soup', 'a'])('%s is an address', (name) => {
  expect(slug(`recipes/${name}.md`)).toEqual({slug: name, problems: []})
})

test.each([
  ['Barley Pot', 'barley-pot.md'],
  ['crème-brûlée', 'creme-brulee.md'],
  ['barley_pot', 'barley-pot.md'],
  ['-barley', 'barley.md'],
  ['a--b', 'a-b.md'],
  ['..', 'name.md'],
  ['粥', 'name.md'],
  ['', 'name.md'],
  ['a'.repeat(101), `${'a'.repeat(100)}.md`],
])('%j is none, and the message offers one', (name, instead) => {
  const {slug: found, problems} = slug(`recipes/${name}.md`)
  expect(found).toBeUndefined()
  expect(problems).toMatchObject([{ruleId: 'slug-name', expected: [instead]}])
})

test.each([
  'recipes/../../etc/passwd.md',
  'recipes/soups/leek.md',
  'leek.md',
  '../leek.md',
  '/leek.md',
])('%s does not stand in the folder', (path) => {
  const {slug: found, problems} = slug(path)
  expect(found).toBeUndefined()
  expect(problems[0]?.reason).toBe(
    `File \`${path}\` stands elsewhere, expected it directly in \`recipes/\``,
  )
})
