import {readFileSync} from 'node:fs'
import path from 'node:path'
import {describe, expect, test} from 'vitest'
import {temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand} from './command.ts'

const {run} = bundledCommand()

const files = {
  'content/cookbook.yaml': 'title: Boathouse kitchen\nrules: us\n',
  'content/foods.yaml': `# Read at the shelf.
plain curd:
  label: { per: 100 g, energy: 62 kcal, protein: 11 g, fat: 0.2 g, carbohydrate: 4 g, read: 2026-10-03 }
  contains: [milk]
  measures: { cup: 240 g, scoop: 60 g }
`,
  'content/tables/river.tsv':
    'id\tname\tenergy_kcal\tprotein_g\tfat_g\tcarbohydrate_g\nR1\tReed millet\t360\t11.0\t4.0\t70.0\n',
  'content/recipes/dressing.md': `---
title: Curd dressing
yield: 200 g
ingredients:
  plain curd: 190 g
  lemon juice: 10 g
---

Stir.
`,
  'content/recipes/bowl.md': `---
title: Barley bowl
serves: 2
ingredients:
  pearl barley: 120 g
  dressing: { amount: 100 g, recipe: dressing }
---

Cook the barley and stir in the dressing.
`,
}

function foods(...args: readonly string[]) {
  return run(['foods', ...args], {cwd: temporaryFolder(files)})
}

describe('foods find', () => {
  test('shows figures per 100 g and id, slips allowed', () => {
    const {code, stdout} = foods('find', 'zuchini', '--most', '1')
    expect(code).toBe(0)
    // USDA SR28 (2015), 11477: 17 kcal, 1.21 g protein, 0.32 g fat, 3.11 g carbohydrate.
    expect(stdout.split('\n')[1]).toMatch(/^courgette +usda\/11477 +17 kcal +1.2 g +0.3 g +3.1 g$/)
  })

  test('finds labels and rows of brought tables', () => {
    expect(foods('find', 'curd').stdout).toContain('own/plain curd')
    expect(foods('find', 'reed', 'milet').stdout).toContain('river/R1')
  })

  test('says where nothing is like it, and refuses a number of none', () => {
    expect(foods('find', 'xylophone')).toMatchObject({code: 0, stdout: ''})
    expect(foods('find', 'curd', '--most', '0').code).toBe(2)
  })
})

describe('foods show', () => {
  test('shows a label with its allergens, source and the recipes it is in', () => {
    const {code, stdout} = foods('show', 'plain curd')
    expect(code).toBe(0)
    // A US panel prints 62 kcal to the last written digit: ± 2 × 1/√12 = 0.6, shown as whole kcal.
    expect(stdout).toMatch(/energy +62 ± 1 kcal/)
    expect(stdout).toContain('unknown: saturated')
    // The long line of what is unknown widens no column.
    expect(stdout).toMatch(/^ {2}energy {2,24}\d/mu)
    expect(stdout).toContain('Source: label in foods.yaml, line 3')
    expect(stdout).toContain('Allergens: milk')
    expect(stdout).toContain('Curd dressing (dressing)\n')
    expect(stdout).toContain('Barley bowl (bowl), through Curd dressing\n')
  })

  test('shows measures and an id, and says nobody spoke of allergens', () => {
    expect(foods('show', 'pearl barley').stdout).toContain('Measures: US cup 200 g')
    expect(foods('show', 'river/R1').stdout).toContain('nobody has said')
    // One's own cup is not the table's.
    expect(foods('show', 'plain curd').stdout).toContain('Measures: cup 240 g, scoop 60 g')
  })

  test('a miss suggests, and ends as a call that could not run', () => {
    const {code, stderr} = foods('show', 'perl barley')
    expect(code).toBe(2)
    expect(stderr).toContain('Did you mean pearl barley')
  })
})

describe('foods like', () => {
  test('puts the nearest foods below a food, itself left out', () => {
    const {code, stdout} = foods('like', 'plain curd', '--most', '3')
    expect(code).toBe(0)
    const [, wanted = '', ...near] = stdout.trimEnd().split('\n')
    expect(wanted).toMatch(/^plain curd {2,}62 kcal/)
    expect(near).toHaveLength(3)
    expect(near.join('\n')).not.toContain('plain curd')
  })

  test('compares the finished dish of a recipe within an aisle', () => {
    const {stdout} = foods('like', 'dressing', '--aisle', 'dairy', '--most', '2')
    expect(stdout).toMatch(/^Curd dressing/m)
    expect(stdout).toMatch(/yoghurt/)
  })

  test('asks for the weight of a dish that was not weighed', () => {
    const {code, stderr} = foods('like', 'bowl')
    expect(code).toBe(2)
    expect(stderr).toContain('Weigh the finished batch')
  })
})

describe('without a cookbook', () => {
  const bare = (...args: readonly string[]) => run(['foods', ...args], {cwd: temporaryFolder({})})

  test('the built-in table is found, shown and compared', () => {
    expect(bare('find', 'zuchini').stdout).toContain('usda/11477')
    expect(bare('show', 'pearl barley').stdout).toContain('No recipe uses it.')
    expect(bare('like', 'pearl barley', '--most', '2').stdout).toMatch(/^pearl barley /mu)
  })

  test('a folder that is named must be there', () => {
    for (const args of [
      ['find', 'leek'],
      ['show', 'leek'],
      ['like', 'leek'],
    ]) {
      const {code, stderr} = bare(...args, '--content', 'book')
      expect(code).toBe(2)
      expect(stderr).toContain('the folder book is missing')
    }
  })

  test('a cookbook without recipes has its own foods', () => {
    const cwd = temporaryFolder({'content/foods.yaml': files['content/foods.yaml']})
    expect(run(['foods', 'find', 'curd'], {cwd}).stdout).toContain('own/plain curd')
    expect(run(['foods', 'show', 'plain curd'], {cwd}).stdout).toContain('Allergens: milk')
  })
})

describe('foods as JSON', () => {
  const parsed = (...args: readonly string[]): unknown => {
    const {code, stdout} = foods(...args, '--format', 'json')
    expect(code).toBe(0)
    return JSON.parse(stdout)
  }

  test('found: macros with ±, and an empty list where nothing is like it', () => {
    // USDA SR28 (2015), 11477: printed to 1 kcal and 0.01 g, so ± 2/√12 of the last digit.
    expect(parsed('find', 'zuchini', '--most', '1')).toEqual({
      foods: [
        {
          id: 'usda/11477',
          name: 'courgette',
          aisle: 'vegetables',
          per100g: {
            energy: {value: 17, uncertainty: expect.closeTo(0.577, 3), unit: 'kcal'},
            protein: {value: 1.21, uncertainty: expect.closeTo(0.00577, 5), unit: 'g'},
            fat: {value: 0.32, uncertainty: expect.closeTo(0.00577, 5), unit: 'g'},
            carbohydrate: {value: 3.11, uncertainty: expect.closeTo(0.00577, 5), unit: 'g'},
          },
        },
      ],
    })
    expect(parsed('find', 'xylophone')).toEqual({foods: []})
  })

  test('shown: what nobody published is left out, not 0', () => {
    const shown = parsed('show', 'plain curd')
    expect(shown).toMatchObject({
      id: 'own/plain curd',
      source: 'label in foods.yaml, line 3',
      contains: ['milk'],
      per100g: {energy: {value: 62, unit: 'kcal'}},
      usedIn: [{slug: 'bowl', through: 'Curd dressing'}, {slug: 'dressing'}],
    })
    expect(shown).not.toHaveProperty('per100g.fibre')
    expect(parsed('show', 'river/R1')).not.toHaveProperty('contains')
    expect(parsed('show', 'pearl barley')).toMatchObject({measures: {cup: 200}})
  })

  test('alike: how far apart, nearest first', () => {
    const near = parsed('like', 'dressing', '--most', '2')
    expect(near).toMatchObject({
      wanted: {name: 'Curd dressing'},
      foods: [{apart: expect.any(Number)}, {apart: expect.any(Number)}],
    })
    const [first, second] = Object(near).foods
    expect(first.apart).toBeLessThanOrEqual(second.apart)
  })
})

describe('foods audit', () => {
  test('prints what is odd, and counts what it looked at; odd is not wrong', () => {
    const aged = foods('audit', '--today', '2027-10-04')
    expect(aged.code).toBe(0)
    expect(aged.stdout).toContain('content/foods.yaml:3:')
    expect(aged.stdout).toContain('was read on `2026-10-03`')
    expect(aged.stderr).toBe('1 label and 2 table rows in use: 1 finding\n')
  })

  test('a day is a day of the calendar', () => {
    expect(foods('audit', '--today', '2026-02-30').code).toBe(2)
  })
})

describe('foods label', () => {
  const panel = ['per: 100 g', 'energy: 42 kcal', 'protein: 3.4 g', 'fat: 1 g', 'carbohydrate: 5 g']

  function label(...args: readonly string[]) {
    const folder = temporaryFolder(files)
    const ended = run(['foods', 'label', ...args], {
      cwd: folder,
      env: {SOURCE_DATE_EPOCH: '1790000000'},
    })
    return {...ended, folder, text: readFileSync(path.join(folder, 'content/foods.yaml'), 'utf8')}
  }

  test('writes a packet behind what is there, and the cookbook can name it', () => {
    const {code, text, folder} = label(
      'thin milk',
      ...panel,
      '--contains',
      'milk',
      '--aisle',
      'dairy',
    )
    expect(code).toBe(0)
    expect(text.startsWith(files['content/foods.yaml'])).toBe(true)
    // 1790000000 s after 1970 is 21 September 2026.
    expect(text).toContain('    read: 2026-09-21\n  sold: { aisle: dairy }\n  contains: [milk]\n')
    expect(run(['foods', 'show', 'thin milk'], {cwd: folder}).stdout).toMatch(/energy +42 /)
  })

  test('does not write figures that do not fit each other, unless the packet says so', () => {
    const odd = panel.map((line) => line.replace('42 kcal', '420 kcal'))
    const refused = label('thin milk', ...odd)
    expect(refused.code).toBe(1)
    expect(refused.text).toBe(files['content/foods.yaml'])
    expect(refused.stderr).toContain('from its macros')
    expect(label('thin milk', ...odd, '--anyway').text).toContain('energy: 420 kcal')
  })

  test.each([
    ['a key no panel has', ['curds', 'per: 100 g', 'calories: 42'], 'Unknown key `calories`'],
    ['an unknown allergen', ['curds', ...panel, '--contains', 'lactose'], 'lactose'],
    ['a name that is taken', ['Plain curd', ...panel], 'is taken'],
  ])('does not write %s, even if asked to', (_, args, told) => {
    const {code, text, stderr} = label(...args, '--anyway')
    expect(code).toBe(1)
    expect(text).toBe(files['content/foods.yaml'])
    expect(stderr).toContain(told)
  })

  test('makes the file where there is none, and asks nothing of a pipe', () => {
    const {'content/foods.yaml': _, ...others} = files
    const folder = temporaryFolder(others)
    expect(run(['foods', 'label', 'thin milk', ...panel], {cwd: folder}).code).toBe(0)
    expect(readFileSync(path.join(folder, 'content/foods.yaml'), 'utf8')).toMatch(/^thin milk:\n/)
    expect(run(['foods', 'label'], {cwd: folder}).stderr).toContain('no terminal')
  })

  test('does not write behind a file that is a flow mapping', () => {
    const folder = temporaryFolder({...files, 'content/foods.yaml': '{}\n'})
    const {code} = run(['foods', 'label', 'thin milk', ...panel], {cwd: folder})
    expect(code).toBeGreaterThan(0)
    expect(readFileSync(path.join(folder, 'content/foods.yaml'), 'utf8')).toBe('{}\n')
  })
})
