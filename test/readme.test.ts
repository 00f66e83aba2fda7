/** README.md keeps what it asks of others: its recipe and its foods pass the checks. */

import {readFileSync} from 'node:fs'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {beforeAll, expect, test} from 'vitest'
import {examine} from '../src/build.ts'
import type {Severity} from '../src/cookbook/problem.ts'
import {readCookbook} from '../src/cookbook/read-folder.ts'
import type {ReadCookbook} from '../src/cookbook/sources.ts'

const project = fileURLToPath(new URL('..', import.meta.url))
const readme = readFileSync(path.join(project, 'README.md'), 'utf8')

function block(language: string, holds: string): string {
  const blocks = readme.matchAll(new RegExp(`^\`\`\`${language}\\n([^]*?)^\`\`\`$`, 'gm'))
  const [found] = [...blocks].flatMap(([, text = '']) => (text.includes(holds) ? [text] : []))
  if (found === undefined) throw new Error(`README.md has no block with ${holds}`)
  return found
}

let demo: ReadCookbook

beforeAll(async () => {
  demo = await readCookbook(path.join(project, 'content'))
})

/** What is found in one file of the demo, with another text in its place. */
function findings(file: string, text: string, counted: readonly Severity[]): readonly string[] {
  const texts = demo.sources.texts.map((one) => (one.path === file ? {...one, text} : one))
  const {problems} = examine({...demo, sources: {...demo.sources, texts}})
  return problems.flatMap(({severity, file: where, reason}) =>
    counted.includes(severity) && where.endsWith(file) ? [reason] : [],
  )
}

test('the figures of its recipe follow from its ingredients', () => {
  const recipe = block('markdown', 'title: Barley pot')
  // Its method is cut short, so what warns of methods does not count.
  const errors = (text: string) => findings('recipes/barley-pot.md', text, ['error'])
  expect(errors(recipe)).toEqual([])
  expect(errors(recipe.replace('protein: 38 g', 'protein: 45 g'))).toHaveLength(1)
})

test('its packets are labels that can be', () => {
  const foods = block('yaml', 'skyr, plain')
  const told = (text: string) => findings('foods.yaml', text, ['error', 'warning'])
  expect(told(foods)).toEqual([])
  expect(told(foods.replace('98 kcal', '980 kcal'))).toHaveLength(1)
})
