import {readdirSync, readFileSync} from 'node:fs'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {expect, test} from 'vitest'
import {ruleTexts} from '../../src/check/rule-texts.ts'

const sources = fileURLToPath(new URL('../../src', import.meta.url))

/** Every rule id that a source file writes into a problem. */
function idsInSources(): readonly string[] {
  const ids = readdirSync(sources, {recursive: true, encoding: 'utf8'})
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) => [
      ...readFileSync(path.join(sources, file), 'utf8').matchAll(/\bruleId: '([^']+)'/g),
    ])
    .map(([, id]) => id ?? '')
  return [...new Set(ids)].toSorted()
}

test('Every rule a problem can name has its text, once', () => {
  const ids = ruleTexts.map(({id}) => id)
  expect(idsInSources().length).toBeGreaterThan(20)
  expect(idsInSources().filter((id) => !ids.includes(id))).toEqual([])
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([])
})

test.each(ruleTexts.map((rule) => [rule.id, rule] as const))('%s says what and why', (_, rule) => {
  expect(rule.summary).toMatch(/^[A-Z].*\.$/)
  expect(rule.why).toMatch(/^[A-Z].*\.$/)
})
