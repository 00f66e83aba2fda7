/** Small cookbooks with the whole report that `check` prints about each. */

import {readdirSync} from 'node:fs'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {expect, test} from 'vitest'
import {examine} from '../src/build.ts'
import {cookbookRules, recipeRules} from '../src/check/rules.ts'
import {readFolder} from '../src/cookbook/read-folder.ts'
import {message} from '../src/report/message.ts'
import {plainPaint} from '../src/report/paint.ts'
import {summary} from '../src/report/summary.ts'
import {findingsText} from '../src/report/summary-text.ts'
import {textMessages} from '../src/report/text-report.ts'
import {fixtureDay} from './fixture-day.ts'

const fixtures = fileURLToPath(new URL('fixtures', import.meta.url))

/** Folders below `fixtures` that hold a report: each is a case. */
const cases = readdirSync(path.join(fixtures, 'rules'), {withFileTypes: true})
  .filter((rule) => rule.isDirectory())
  .flatMap((rule) =>
    readdirSync(path.join(fixtures, 'rules', rule.name)).map(
      (name) => `rules/${rule.name}/${name}`,
    ),
  )
  .concat('one-of-each')

async function reportOn(folder: string): Promise<string> {
  const examined = examine(await readFolder(folder), {today: fixtureDay})
  const messages = examined.problems.map((problem) => message(problem, (file) => file))
  return `${[...textMessages(messages, plainPaint)].join('')}${findingsText(summary(examined))}\n`
}

test.each(cases)('%s', async (name) => {
  const folder = path.join(fixtures, name)
  await expect(await reportOn(folder)).toMatchFileSnapshot(path.join(folder, 'messages.txt'))
})

test('the cookbook with one fault of each kind has one finding of every rule that checks', async () => {
  const folder = path.join(fixtures, 'one-of-each')
  const {problems} = examine(await readFolder(folder), {today: fixtureDay})
  const found = problems.map(({ruleId}) => ruleId).toSorted()
  expect(found).toEqual([...recipeRules, ...cookbookRules].map(({id}) => id).toSorted())
  const byFile = problems.filter(({file}) => file.startsWith('recipes/'))
  expect(byFile.map(({file}) => file)).toEqual(byFile.map(({ruleId}) => `recipes/${ruleId}.md`))
})
