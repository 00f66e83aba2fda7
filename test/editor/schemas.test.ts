/** The schemas and the readers are one definition: what one takes the other takes. */

import {mkdtempSync, readdirSync, readFileSync, rmSync} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {Ajv} from 'ajv'
import {expect, test} from 'vitest'
import {parse, YAMLParseError} from 'yaml'
import {examine} from '../../src/build.ts'
import type {SourceText} from '../../src/cookbook/sources.ts'
import {schemaOf, schemas} from '../../src/editor/schemas.ts'
import {writeSchemas} from '../../src/editor/write-schemas.ts'

const project = fileURLToPath(new URL('../..', import.meta.url))

const ajv = new Ajv({strict: true, allowUnionTypes: true})
const validators = new Map(
  Object.values(schemas).map((schema) => [schema, ajv.compile(schema)] as const),
)

/** What the reader of a file finds in it, on its own: what is written, not what it means. */
const structural = new Set([
  'known-key',
  'key-present',
  'readable-value',
  'front-matter-present',
  'yaml-readable',
  'no-alias',
  'no-deep-nesting',
])

function readerRefuses(file: SourceText): boolean {
  const {problems} = examine({sources: {texts: [file], images: []}, problems: []})
  return problems.some(({ruleId}) => structural.has(ruleId))
}

function schemaRefuses({path: file, text}: SourceText): boolean {
  const schema = schemaOf(file)
  const validate = schema && [...validators].find(([one]) => one === schema)?.[1]
  if (!validate) throw new Error(`${file} has no schema`)
  const yaml = file.endsWith('.md') ? text.split(/^---\s*$/mu)[1] : text
  try {
    return !validate(parse(yaml ?? '', {uniqueKeys: false}))
  } catch (error) {
    if (error instanceof YAMLParseError) return true
    throw error
  }
}

/** Every file with a schema below a folder that holds cookbooks or is one. */
function filesBelow(folder: string): readonly SourceText[] {
  return readdirSync(path.join(project, folder), {recursive: true, encoding: 'utf8'}).flatMap(
    (entry) => {
      const file = entry.split(path.sep).join('/')
      const inCookbook = /(?:recipes|plans|pages)\/[^/]+\.md$|(?:foods|cookbook)\.yaml$/u.exec(file)
      if (!inCookbook) return []
      return [{path: inCookbook[0], text: readFileSync(path.join(project, folder, entry), 'utf8')}]
    },
  )
}

test('every file of the demo passes its schema', () => {
  const files = filesBelow('content')
  expect(files.length).toBeGreaterThan(25)
  expect(files.filter(schemaRefuses)).toEqual([])
})

test('a schema refuses no file of the fixtures that the reader takes', () => {
  const files = filesBelow('test/fixtures')
  const refused = files.filter(schemaRefuses)
  expect(files.length - refused.length).toBeGreaterThan(100)
  expect(refused.filter((file) => !readerRefuses(file))).toEqual([])
})

const recipe = (lines: string) => ({path: 'recipes/pot.md', text: `---\n${lines}\n---\n\nStir.\n`})
const pot = (lines: string) => recipe(`title: Pot\nserves: 2\nyield: 300 g\n${lines}`)
const foods = (text: string) => ({path: 'foods.yaml', text})
const settings = (text: string) => ({path: 'cookbook.yaml', text})
const plan = (lines: string) => ({path: 'plans/week.md', text: `---\n${lines}\n---\n`})

test.each([
  ['a bare recipe', pot('ingredients: { rice: 300 g }')],
  ['a title that looks like a number', recipe('title: 1989\nserves: 2\ningredients: {rice: 1 g}')],
  ['a title that looks like a flag', recipe('title: true\nserves: 2\ningredients: {rice: 1 g}')],
  ['a group of ingredients', pot('ingredients: { rice: 1 g, For the top: { oats: 2 g } }')],
  ['a line with conditions', pot('ingredients: { rice: { amount: 1 g, bought: true } }')],
  ['an alternative', pot('ingredients: { rice: { amount: 1 g, instead: { oats: 2 g } } }')],
  ['an acceptance', pot('ingredients: { rice: 1 g }\naccepted: { missing-stated: a component }')],
  ['an open list', pot('ingredients: { rice: 1 g }\ntags: [one pot, 30]')],
  ['a panel', foods('skyr: { label: { per: 100 g, protein: 11 g }, contains: [milk] }')],
  ['another name', foods('brown onion: { same as: onion }')],
  ['settings', settings('rules: us\ntolerances: { energy: 20 kcal }\nchecks: { no-alias: note }')],
  ['a plan', plan('title: Week\nservings: { pot: 4 }')],
])('reader and schema take %s', (_, file) => {
  expect({reader: readerRefuses(file), schema: schemaRefuses(file)}).toEqual({
    reader: false,
    schema: false,
  })
})

test.each([
  ['a misspelt key', pot('ingredients: { rice: 1 g }\nsummery: Good')],
  ['no title', recipe('serves: 2\ningredients: { rice: 1 g }')],
  ['no ingredients', pot('summary: Nothing in it')],
  ['an empty list of ingredients', pot('ingredients: {}')],
  ['a list where a mapping belongs', pot('ingredients: [rice]')],
  ['a mapping where a text belongs', pot('ingredients: { rice: 1 g }\nsummary: { a: b }')],
  ['no portion at all', recipe('title: Pot\nserves: 0\ningredients: { rice: 1 g }')],
  ['half a portion', recipe('title: Pot\nserves: 2.5\ningredients: { rice: 1 g }')],
  ['another word for a basis', pot('ingredients: { rice: 1 g }\nstated: { per: 50 g, fat: 1 g }')],
  ['a nutrient nobody knows', pot('ingredients: { rice: 1 g }\nstated: { zeal: 1 g }')],
  ['a misspelt condition', pot('ingredients: { rice: { amount: 1 g, cookd: boiled } }')],
  ['a flag that is none', pot('ingredients: { rice: { amount: 1 g, bought: perhaps } }')],
  ['a line that lost its amount', pot('ingredients: { rice: { bought: true } }')],
  ['no stated figure', pot('ingredients: { rice: 1 g }\nstated: {}')],
  ['an allergen of nobody’s list', foods('skyr: { same as: onion, contains: [dust] }')],
  ['a panel for no weight', foods('skyr: { label: { protein: 11 g } }')],
  ['a price below nothing', foods('skyr: { same as: onion, sold: { weight: 1 kg, price: -2 } }')],
  ['a key of no cookbook', settings('colour: green')],
  ['a severity of nobody’s', settings('checks: { no-alias: loud }')],
  ['servings of a plan below one', plan('title: Week\nservings: { pot: 0 }')],
])('reader and schema refuse %s', (_, file) => {
  expect({reader: readerRefuses(file), schema: schemaRefuses(file)}).toEqual({
    reader: true,
    schema: true,
  })
})

test('every key has words for the editor', () => {
  const keys: string[] = []
  const mute: string[] = []
  JSON.stringify(schemas, (_, value: unknown) => {
    if (typeof value !== 'object' || value === null || !('properties' in value)) return value
    for (const [key, property] of Object.entries(value.properties ?? {})) {
      keys.push(key)
      if (!property.description) mute.push(key)
    }
    return value
  })
  expect(keys.length).toBeGreaterThan(100)
  expect(mute).toEqual([])
})

test('the package gets a file for each schema', async () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'scalepan-schemas-'))
  try {
    await writeSchemas(path.join(folder, 'schemas'))
    const files = readdirSync(path.join(folder, 'schemas')).toSorted()
    expect(files).toEqual(['cookbook.json', 'foods.json', 'page.json', 'plan.json', 'recipe.json'])
    const written = readFileSync(path.join(folder, 'schemas/recipe.json'), 'utf8')
    expect(JSON.parse(written)).toEqual(JSON.parse(JSON.stringify(schemas.recipe)))
  } finally {
    rmSync(folder, {recursive: true})
  }
})
