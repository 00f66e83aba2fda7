/** A writer's session with the demo, over real stdio, with the command as it is bundled. */

import {cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {afterAll, afterEach, beforeAll, expect, test} from 'vitest'
import {bundledCommand} from '../cli/command.ts'
import {Editor} from './editor.ts'

const demo = fileURLToPath(new URL('../../content', import.meta.url))
const command = bundledCommand()

let folder = ''
let editor: Editor
const file = (name: string) => path.join(folder, 'content', name)

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'scalepan editor ü '))
  cpSync(demo, path.join(folder, 'content'), {recursive: true})
})
beforeAll(async () => {
  editor = new Editor(command.entry())
  await editor.begin()
})
afterEach(() => editor.closeAll())
afterAll(() => rmSync(folder, {recursive: true, force: true}))

const has = (rule: string) => (found: readonly {code?: unknown}[]) =>
  found.some(({code}) => code === rule)
const lacks = (rule: string) => (found: readonly {code?: unknown}[]) => !has(rule)(found)

test('a broken figure is shown at its place, and mended by its fix', async () => {
  const uri = await editor.open(file('recipes/baked-oats.md'))
  const before = editor.text(uri)
  await editor.type(uri, 'protein: 23 g', 'protein: 32 g')
  const found = await editor.found(uri, has('stated-macros'))
  const wrong = found.filter(({code}) => code === 'stated-macros')
  const line = before.split('\n').findIndex((each) => each.startsWith('stated:'))
  const character = editor.text(uri).split('\n')[line]?.indexOf('32 g') ?? -1
  expect(wrong).toMatchObject([
    {
      range: {start: {line, character}, end: {line, character: character + '32 g'.length}},
      severity: 1,
      source: 'scalepan',
      message: expect.stringMatching(
        /^Stated protein `32 g` per serving, expected `22\.\d ± 0\.\d g`/u,
      ),
    },
  ])
  const [problem] = wrong
  if (!problem) throw new Error('nothing was found')
  const actions = await editor.actions(uri, problem)
  const fix = actions.find(({title}) => title === 'Write `23 g`')
  expect(fix).toMatchObject({kind: 'quickfix', isPreferred: true})
  if (fix) await editor.apply(fix)
  expect(editor.text(uri)).toBe(before)
  await editor.found(uri, lacks('stated-macros'))
})

test('a slip in a name offers the nearest foods, and a missing block the whole of it', async () => {
  const uri = await editor.open(file('recipes/baked-oats.md'))
  await editor.type(uri, '  walnuts: 40 g', '  wallnuts: 40 g')
  const [unknown] = (await editor.found(uri, has('unknown-food'))).filter(
    ({code}) => code === 'unknown-food',
  )
  if (!unknown) throw new Error('nothing was found')
  const actions = await editor.actions(uri, unknown)
  expect(actions.map(({title}) => title)).toContain('Write `walnuts`')
  const write = actions.find(({title}) => title === 'Write `walnuts`')
  if (write) await editor.apply(write)
  await editor.found(uri, lacks('unknown-food'))
  const stated = /^stated: .*\n/mu.exec(editor.text(uri))?.[0] ?? ''
  await editor.type(uri, stated, '')
  const [missing] = (await editor.found(uri, has('missing-stated'))).filter(
    ({code}) => code === 'missing-stated',
  )
  if (!missing) throw new Error('nothing was found')
  const put = (await editor.actions(uri, missing)).find(({title}) => /^Put `stated: /u.test(title))
  if (put) await editor.apply(put)
  expect(editor.text(uri)).toMatch(/^stated: \{ energy: 401 kcal, protein: 23 g, .*\}\n---$/mu)
  await editor.found(uri, lacks('missing-stated'))
})

test('what is typed in one file is found in another', async () => {
  const foods = await editor.open(file('foods.yaml'))
  const recipe = await editor.open(file('recipes/baked-oats.md'))
  await editor.found(recipe, lacks('unknown-food'))
  await editor.type(foods, 'vanilla whey powder:', 'vanilla powder:')
  await editor.found(recipe, has('unknown-food'))
  await editor.type(foods, 'vanilla powder:', 'vanilla whey powder:')
  await editor.found(recipe, lacks('unknown-food'))
})

test('what changes on the disk is seen, in the file that is open too', async () => {
  const recipe = await editor.open(file('recipes/baked-oats.md'))
  await editor.found(recipe, lacks('unknown-food'))
  const foods = readFileSync(file('foods.yaml'), 'utf8')
  writeFileSync(file('foods.yaml'), foods.replace('vanilla whey powder:', 'vanilla powder:'))
  await editor.changedOnDisk(file('foods.yaml'))
  await editor.found(recipe, has('unknown-food'))
  writeFileSync(file('foods.yaml'), foods)
  await editor.changedOnDisk(file('foods.yaml'))
  await editor.found(recipe, lacks('unknown-food'))
  expect(await editor.watched).toContain('**/{cookbook,foods}.yaml')
})

test('a recipe that is not saved yet belongs to the cookbook', async () => {
  const text =
    '---\ntitle: Rice\nserves: 1\nyield: 80 g\ningredients: { rise: 80 g }\n---\n\nBoil.\n'
  const uri = await editor.open(file('recipes/new-one.md'), text)
  const found = await editor.found(uri, has('unknown-food'))
  expect(found.find(({code}) => code === 'unknown-food')?.range.start).toEqual({
    line: 4,
    character: 15,
  })
})

test('keys, foods, components and rules are completed where they belong', async () => {
  const uri = await editor.open(file('recipes/baked-oats.md'))
  const labels = async (marker: string) =>
    (await editor.completion(uri, editor.behind(uri, marker))).items.map(({label}) => label)
  await editor.type(uri, 'serves: 6\n', 'serves: 6\nle\n')
  expect(await labels('\nle')).toContain('left behind')
  expect(await labels('\nle')).not.toContain('serves')
  await editor.type(uri, '\nle\n', '\naccepted: { no-all: x }\n')
  expect(await labels('accepted: { no-al')).toContain('no-alias')
  await editor.type(uri, '  walnuts: 40 g', '  walnuts: 40 g\n  pearl bar')
  expect(await labels('  pearl bar')).toContain('pearl barley')
  await editor.type(uri, '  pearl bar', '  stock: { amount: 20 g, recipe: b')
  expect(await labels('recipe: b')).toContain('brown-chicken-stock')
  await editor.type(uri, ', recipe: b', ', ')
  expect(await labels('  stock: { amount: 20 g, ')).toContain('poured off')
  await editor.type(uri, 'stated: { ', 'stated: { fib, ')
  expect(await labels('stated: { fib')).toContain('fibre')
  expect(await labels('stated: { fib')).not.toContain('energy')
})

test('a completion is written as the place asks: with its colon, in quotes within braces', async () => {
  const uri = await editor.open(file('recipes/baked-oats.md'))
  await editor.type(uri, '  walnuts: 40 g', '  walnuts: 40 g\n  beef mince, 20')
  const block = await editor.completion(uri, editor.behind(uri, 'beef mince, 20'))
  expect(block.items[0]?.textEdit?.newText).toMatch(/^beef mince, 20 % fat.*: $/u)
  await editor.type(uri, '  beef mince, 20', '  meat: { amount: 1 g, food: beef mi')
  const flow = await editor.completion(uri, editor.behind(uri, 'food: beef mi'))
  expect(flow.items[0]?.textEdit?.newText).toMatch(/^"beef mince, .*"$/u)
})

test('figures are told where the pointer rests', async () => {
  const uri = await editor.open(file('recipes/baked-oats.md'))
  const said = async (marker: string) =>
    JSON.stringify((await editor.hover(uri, editor.behind(uri, marker)))?.contents)
  // Rolled oats, SR28 20038 or 08120: near 380 kcal per 100 g, 50 g a serving of about 400 kcal.
  expect(await said('  rolled oa')).toMatch(/energy \| 19\d kcal \| 4\d % \| 40\d kcal/u)
  expect(await said('energy: 40')).toMatch(/energy per serving: agrees.*computed 40\d ± \d+ kcal/u)
  expect(await editor.hover(uri, editor.behind(uri, 'Heat the'))).toBeNull()
  const foods = await editor.open(file('foods.yaml'))
  const food = await editor.hover(foods, editor.behind(foods, 'vanilla whe'))
  expect(JSON.stringify(food?.contents)).toMatch(/label in foods\.yaml.*baked-oats/u)
})

test('a component leads to its recipe, a food of one’s own to its entry', async () => {
  const oats = await editor.open(file('recipes/baked-oats.md'))
  const entry = await editor.definition(oats, editor.behind(oats, '  vanilla whey'))
  const foods = await editor.open(file('foods.yaml'))
  const line = editor.text(foods).split('\n').indexOf('vanilla whey powder:')
  expect(entry).toMatchObject({uri: foods, range: {start: {line, character: 0}}})
  const stock = await editor.open(file('recipes/brown-chicken-stock.md'))
  expect(await editor.definition(stock, editor.behind(stock, '\n  wat'))).toBeNull()
  const plan = await editor.open(file('plans/sunday-batch.md'))
  const slug = /servings:\s*\n?\s*\{?\s*(?<slug>[a-z-]+):/u.exec(editor.text(plan))?.groups?.slug
  const recipe = await editor.definition(plan, editor.behind(plan, `${slug}`))
  expect(recipe?.uri.endsWith(`/content/recipes/${slug}.md`)).toBe(true)
})

test('a folder that only looks like a cookbook is left alone', async () => {
  mkdirSync(path.join(folder, 'docs/pages'), {recursive: true})
  const other = path.join(folder, 'docs/pages/notes.md')
  writeFileSync(other, '# Notes\n')
  const uri = await editor.open(other)
  expect(await editor.hover(uri, {line: 0, character: 3})).toBeNull()
  expect(readFileSync(other, 'utf8')).toBe('# Notes\n')
})

test('the server ends when it is asked to, and says that all is well', async () => {
  expect(await editor.end()).toBe(0)
})
