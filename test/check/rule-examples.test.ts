/** The examples on the rules page are the fixtures: this keeps the module that ships them true. */

import {existsSync, readdirSync, readFileSync} from 'node:fs'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {expect, test} from 'vitest'
import {examine} from '../../src/build.ts'
import type {RuleExample} from '../../src/check/rule-example.ts'
import {ruleExamples} from '../../src/check/rule-examples.ts'
import {ruleTexts} from '../../src/check/rule-texts.ts'
import type {Problem} from '../../src/cookbook/problem.ts'
import {readFolder} from '../../src/cookbook/read-folder.ts'
import {printable} from '../../src/report/printable.ts'
import {fixtureDay} from '../fixture-day.ts'

const fixtures = fileURLToPath(new URL('../fixtures/rules', import.meta.url))

/** Rules that no folder in git can break; other tests hold them. */
const withoutFixture: Readonly<Record<string, string>> = {
  'inside-folder': 'needs a link out of the folder: test/cookbook/read-folder.test.ts',
  'file-size': 'needs a file of megabytes: test/cookbook/read-folder.test.ts',
  'cookbook-size': 'needs thousands of files: test/cookbook/read-folder.test.ts',
  'table-rows': 'needs thousands of rows: test/cookbook/read-table.test.ts',
  'component-nesting': 'needs fifty recipes: test/nutrition/recipe-graph.test.ts',
  'one-file-a-slug': 'a folder has one file a name: test/cookbook/understand.test.ts',
  'recipe-computed': 'only told in other pipelines: test/remark/foreign-pipeline.test.ts',
}

const withFixture = ruleTexts.filter(({id}) => withoutFixture[id] === undefined)

async function problemsOf(folder: string): Promise<readonly Problem[]> {
  return examine(await readFolder(folder), {today: fixtureDay}).problems
}

test.each(withFixture)('$id has a fixture that fails by it alone, once', async ({id}) => {
  const found = await problemsOf(path.join(fixtures, id, 'not-ok'))
  expect(found.map(({ruleId}) => ruleId)).toEqual([id])
})

test.each(withFixture)('$id has a fixture that passes', async ({id}) => {
  const folder = path.join(fixtures, id, 'ok')
  expect(existsSync(folder)).toBe(true)
  const found = await problemsOf(folder)
  // What is accepted is told all the same.
  expect(found.filter(({accepted}) => accepted === undefined)).toEqual([])
})

test('every fixture is of a rule, and every rule without one has its reason', () => {
  const ids = new Set(ruleTexts.map(({id}) => id))
  const folders = readdirSync(fixtures)
  expect(folders.filter((folder) => !ids.has(folder))).toEqual([])
  expect(Object.keys(withoutFixture).filter((id) => !ids.has(id) || folders.includes(id))).toEqual(
    [],
  )
})

test('the module that ships the examples is made of the fixtures (vitest -u makes it anew)', async () => {
  const entries: string[] = []
  for (const {id} of withFixture) {
    entries.push(`  ${JSON.stringify(id)}: ${JSON.stringify(await exampleOf(id))},\n`)
  }
  const module = `/** Made of test/fixtures/rules by test/check/rule-examples.test.ts; do not edit. */
import type {RuleExample} from './rule-example.ts'

/** By rule id. */
export const ruleExamples: Readonly<Record<string, RuleExample>> = {
${entries.join('')}}
`
  const file = fileURLToPath(new URL('../../src/check/rule-examples.ts', import.meta.url))
  await expect(module).toMatchFileSnapshot(file)
})

test('an example shows what differs, and the reason', () => {
  expect(ruleExamples['raw-egg']).toEqual({
    files: [
      {
        path: 'recipes/dish.md',
        fails: expect.stringContaining('1. Whisk the yolks with the oil.'),
        passes: expect.stringContaining('1. Whisk the yolks, from pasteurised eggs, with the oil.'),
      },
    ],
    reason: 'Egg `egg yolk` stays raw or soft, expected pasteurised egg or a word of caution',
  })
})

async function exampleOf(id: string): Promise<RuleExample> {
  const [fails, passes] = [path.join(fixtures, id, 'not-ok'), path.join(fixtures, id, 'ok')]
  const names = [...new Set([...filesBelow(fails), ...filesBelow(passes)])].toSorted()
  const files = names.flatMap((name) => {
    const [before, after] = [linesOf(path.join(fails, name)), linesOf(path.join(passes, name))]
    return before.join('\n') === after.join('\n') ? [] : [{path: name, ...excerpts(before, after)}]
  })
  const [problem] = await problemsOf(fails)
  return {files, reason: problem?.reason ?? ''}
}

function filesBelow(folder: string): readonly string[] {
  return readdirSync(folder, {recursive: true, encoding: 'utf8', withFileTypes: true})
    .filter((entry) => entry.isFile() && entry.name !== 'messages.txt')
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)))
    .map((name) => name.split(path.sep).join('/'))
}

/** Lines with what does not show made visible; none where there is no file. */
function linesOf(file: string): readonly string[] {
  if (!existsSync(file)) return []
  return readFileSync(file, 'utf8').trimEnd().split('\n').map(printable)
}

/** Lines shown around a difference, and lines shown at most. */
const context = 2
const mostLines = 14

function excerpts(before: readonly string[], after: readonly string[]) {
  const shorter = Math.min(before.length, after.length)
  let first = 0
  while (first < shorter && before[first] === after[first]) first++
  let same = 0
  while (same < shorter - first && before.at(-1 - same) === after.at(-1 - same)) same++
  const from = Math.max(0, first - context)
  const excerpt = (lines: readonly string[]) => {
    const shown = lines.slice(from, lines.length - Math.max(0, same - context))
    return shown.length > mostLines
      ? [...shown.slice(0, mostLines), '…'].join('\n')
      : shown.join('\n')
  }
  return {fails: excerpt(before), passes: excerpt(after)}
}
