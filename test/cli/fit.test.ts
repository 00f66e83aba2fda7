import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {afterEach, beforeEach, describe, expect, test} from 'vitest'
import {bundledCommand} from './command.ts'

const command = bundledCommand()

/** CRLF, a comment, quotes and odd blanks: whatever a writer's editor leaves. */
const recipe = [
  '---',
  'title:   Porridge',
  'serves: 1',
  'yield: 300 g',
  'ingredients:   # weighed dry',
  '  rolled oats: "50 g"   # not instant',
  '  water:   { amount: 250 g }',
  '  honey: 10 g (1 tsp)',
  'stated: { energy: 220 kcal }',
  '---',
  '',
  'Stir the oats into the water, add the honey.   ',
  '',
].join('\r\n')

let folder = ''
let file = ''

beforeEach(() => {
  // The solver is a package beside this one, as an installation has it.
  const modules = path.resolve(path.dirname(command.entry()), '../../node_modules')
  const project = fileURLToPath(new URL('../../node_modules', import.meta.url))
  if (!existsSync(modules)) symlinkSync(project, modules)
  folder = mkdtempSync(path.join(tmpdir(), 'scalepan-fit-'))
  mkdirSync(path.join(folder, 'content/recipes'), {recursive: true})
  writeFileSync(path.join(folder, 'content/cookbook.yaml'), 'title: Boathouse\n')
  file = path.join(folder, 'content/recipes/porridge.md')
  writeFileSync(file, recipe)
})

afterEach(() => rmSync(folder, {recursive: true}))

function fitting(...args: readonly string[]) {
  return command.run(['fit', 'porridge', ...args], {cwd: folder})
}

describe('fit', () => {
  test('tells the change, and writes nothing unless asked', () => {
    const {code, stdout} = fitting('energy <= 200 kcal')
    expect(code).toBe(0)
    expect(stdout).toMatch(/energy <= 200 kcal: met \(\d+\.\d kcal → (?:19\d|200)\.\d kcal\)/u)
    expect(stdout).toMatch(/rolled oats +50 g +→ +4\d g/u)
    expect(readFileSync(file, 'utf8')).toBe(recipe)
  })

  test('writes the amounts and no other byte', () => {
    const {code, stdout, stderr} = fitting('energy <= 200 kcal', '--write')
    const [, grams = ''] = /rolled oats +50 g +→ +(\d+) g/u.exec(stdout) ?? []
    expect(readFileSync(file, 'utf8')).toBe(recipe.replace('"50 g"', `"${grams} g"`))
    expect(code).toBe(0)
    expect(stderr).toContain('`scalepan check --fix`')
    expect(fitting('energy <= 200 kcal').stdout).toContain('No amount has to change.')
  })

  test('says what cannot be met and by how much, and leaves the file', () => {
    const {code, stdout, stderr} = fitting('energy <= 50 kcal', '--write')
    expect(code).toBe(1)
    expect(stdout).toMatch(/energy <= 50 kcal: missed by \d+\.\d kcal .*by itself it would still/u)
    expect(stderr).toContain('nothing was written')
    expect(readFileSync(file, 'utf8')).toBe(recipe)
  })

  test('holds bounds, steps, and lines that stay', () => {
    expect(fitting('energy <= 200 kcal', '--step', '20').stdout).toMatch(/oats +50 g +→ +40 g/u)
    expect(fitting('energy <= 200 kcal', '--between', 'rolled oats=48..60').code).toBe(1)
    expect(fitting('energy <= 200 kcal', '--keep', 'rolled oats').code).toBe(1)
    const kept = fitting('energy <= 200 kcal', '--keep-ratio', 'water / rolled oats').stdout
    const [, oats = '', water = ''] = /oats .*→ +(\d+) g.*water .*→ +(\d+) g/su.exec(kept) ?? []
    expect(Math.abs(Number(water) - Number(oats) * 5)).toBeLessThanOrEqual(0.5)
    expect(Number(oats)).toBeLessThan(50)
  })

  test.each([
    [['energie <= 200 kcal'], /energy/u],
    [['energy <= 200 kcal', '--change', 'rolled oat'], /`rolled oats`, not `rolled oat`/u],
    [['energy <= 200 kcal', '--change', 'honey'], /plain weight, which `honey` has not/u],
    [['energy <= 200 kcal', '--between', 'rolled oats'], /rolled oats.*carrot=100\.\.300/u],
    [['polyols <= 1 g'], /nobody published polyols for/u],
  ])('says what it cannot take: %j', (args, words) => {
    const {code, stderr} = fitting(...args)
    expect(code).toBe(2)
    expect(stderr).toMatch(words)
  })
})
