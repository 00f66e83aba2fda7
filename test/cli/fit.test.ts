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
  '  salt: 1 tsp',
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
    expect(
      fitting('energy <= 200 kcal', '--keep', 'honey', '--between', 'rolled oats=48..60').code,
    ).toBe(1)
    expect(fitting('energy <= 200 kcal', '--keep', 'rolled oats').code).toBe(1)
    const kept = fitting('energy <= 200 kcal', '--keep-ratio', 'water / rolled oats').stdout
    const [, oats = '', water = ''] = /oats .*→ +(\d+) g.*water .*→ +(\d+) g/su.exec(kept) ?? []
    expect(Math.abs(Number(water) - Number(oats) * 5)).toBeLessThanOrEqual(0.5)
    expect(Number(oats)).toBeLessThan(50)
  })

  test('writes a weight and its measure together', () => {
    const {stdout} = fitting('energy <= 206 kcal', '--change', 'honey', '--write')
    expect(stdout).toMatch(
      /honey +10 g \(1 tsp\) +→ +5 g \(½ tsp\) +−50\.0 % +as little as it may/u,
    )
    expect(readFileSync(file, 'utf8')).toBe(recipe.replace('10 g (1 tsp)', '5 g (½ tsp)'))
  })

  test('names the lines that stay, with the reason', () => {
    expect(fitting('energy <= 200 kcal').stdout).toContain(
      'Lines that stay:\n  salt: `1 tsp` has no weight beside it\n',
    )
  })

  test('takes targets about 100 g and proportions, and shows what they are', () => {
    const {code, stdout} = fitting('energy <= 68 kcal per 100 g', 'protein / carbohydrate >= 1 : 6')
    expect(code).toBe(0)
    expect(stdout).toMatch(/per 100 g: met \(7\d\.\d kcal → 6\d\.\d kcal\)/u)
    expect(stdout).toMatch(/1 : 6: met \(0\.1\d+ → 0\.1\d+\)/u)
    expect(stdout).toMatch(/Sum of the changes: .*\n {2}without energy .*\n {2}without protein/u)
  })

  test('for other servings shows whole steps of each', () => {
    const {stdout} = fitting('energy <= 200 kcal', '--for', '2,3')
    expect(stdout).toMatch(/for +1 +2 +3\n {2}rolled oats +4(\d) g +(8|9)\d g +1[2-4]\d g\n/u)
  })

  test('says that the batch weighs another weight, unless it is kept', () => {
    expect(fitting('energy <= 200 kcal').stderr).toMatch(/weighs 31\d g, and 316 g before/u)
    const kept = fitting('energy <= 200 kcal', '--keep-yield')
    expect(kept.code).toBe(0)
    expect(kept.stderr).toBe('')
    expect(kept.stdout).toMatch(/water +250 g +→ +25\d g/u)
    expect(kept.stdout).toContain('without keeping the weight of what is mixed: ')
  })

  test('says that nothing in whole steps keeps what is to be kept', () => {
    const {code, stderr} = fitting(
      ...['energy <= 200 kcal', '--keep-ratio', 'water / rolled oats'],
      ...['--between', 'water=300..310', '--between', 'rolled oats=41..42'],
    )
    expect(code).toBe(1)
    expect(stderr).toBe(
      'No amounts in whole steps within the bounds keep this: water / rolled oats. Nothing was written.\n',
    )
  })

  test.each([
    [['energie <= 200 kcal'], /energy/u],
    [['energy <= 200 kcal', '--change', 'rolled oat'], /`rolled oats`, not `rolled oat`/u],
    [['energy <= 200 kcal', '--change', 'salt'], /`salt` cannot: `1 tsp` has no weight beside/u],
    [['energy <= 200 kcal', '--for', 'two'], /whole numbers from 1 up/u],
    [['energy per 100 g <= 200 kcal'], /one of energy, protein/u],
    [['energy <= 200 kcal', '--between', 'rolled oats'], /rolled oats.*carrot=100\.\.300/u],
    [['polyols <= 1 g'], /nobody published polyols for/u],
  ])('says what it cannot take: %j', (args, words) => {
    const {code, stderr} = fitting(...args)
    expect(code).toBe(2)
    expect(stderr).toMatch(words)
  })
})
