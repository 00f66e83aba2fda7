import {execFileSync, spawn} from 'node:child_process'
import {once} from 'node:events'
import {
  createWriteStream,
  existsSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {describe, expect, test, vi} from 'vitest'
import {foodsImportCommand} from '../../src/cli/foods-import-command.ts'
import {EnvironmentFailure} from '../../src/cookbook/environment-failure.ts'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand} from './command.ts'

const {entry, run} = bundledCommand()

// The shapes of FoodData Central's downloads, made by hand from memory; every food, maker and figure
// is invented. Figures per 100 g are those of a serving × 100 ÷ its grams, as the downloads have them.

interface Packet {
  readonly id: number
  readonly name: string
  readonly owner: string
  readonly size: string
  readonly unit: string
  /** By id of the nutrient. */
  readonly amounts: Readonly<Record<number, number>>
}

/** In no order of ids. */
const packets: readonly Packet[] = [
  {
    id: 2_900_007,
    name: 'CRISP OATS',
    owner: 'Boathouse Mill',
    size: '30.0',
    unit: 'g',
    amounts: {1003: 13.33, 1004: 6.67, 1005: 66.7, 1008: 367},
  },
  {
    id: 2_900_001,
    name: 'OAT DRINK',
    owner: 'Boathouse Mill',
    size: '240',
    unit: 'ml',
    amounts: {1003: 1.25, 1004: 1.04, 1005: 5, 1008: 33},
  },
  {
    id: 415,
    name: 'WALNUT SPREAD, SMOOTH',
    owner: 'Slipway',
    size: '32',
    unit: 'GRM',
    amounts: {1003: 21.88, 1004: 50, 1005: 21.88, 1008: 594, 1093: 344},
  },
]

const units: Readonly<Record<number, readonly [string, string]>> = {
  1003: ['Protein', 'g'],
  1004: ['Total lipid (fat)', 'g'],
  1005: ['Carbohydrate, by difference', 'g'],
  1008: ['Energy', 'kcal'],
  1093: ['Sodium, Na', 'mg'],
}

function csv(rows: readonly (readonly unknown[])[]): string {
  return rows.map((row) => `${row.map((cell) => `"${cell}"`).join(',')}\n`).join('')
}

const folder = {
  'fdc/nutrient.csv': csv([
    ['id', 'name', 'unit_name'],
    ...Object.entries(units).map(([id, [name, unit]]) => [id, name, unit.toUpperCase()]),
  ]),
  'fdc/food.csv': csv([
    ['fdc_id', 'data_type', 'description'],
    ...packets.map(({id, name}) => [id, 'branded_food', name]),
    [7, 'sub_sample_food', 'Oats, a sample of them'],
  ]),
  'fdc/branded_food.csv': csv([
    ['fdc_id', 'brand_owner', 'brand_name', 'serving_size', 'serving_size_unit'],
    ...packets.map(({id, owner, size, unit}) => [id, owner, '', size, unit]),
  ]),
  'fdc/food_nutrient.csv': csv([
    ['id', 'fdc_id', 'nutrient_id', 'amount'],
    ...packets
      .flatMap(({id, amounts}) => Object.entries(amounts).map(([key, amount]) => [id, key, amount]))
      .map((cells, index) => [index + 1, ...cells]),
  ]),
}

const json = `{"BrandedFoods": [\n${packets
  .map(({id, name, owner, size, unit, amounts}) =>
    JSON.stringify({
      foodClass: 'Branded',
      description: name,
      foodNutrients: Object.entries(amounts).map(([key, amount]) => {
        const [named, unitName] = units[Number(key)] ?? []
        return {type: 'FoodNutrient', nutrient: {id: Number(key), name: named, unitName}, amount}
      }),
      brandOwner: owner,
      servingSize: Number(size),
      servingSizeUnit: unit,
      dataType: 'Branded',
      fdcId: id,
    }),
  )
  .join(',\n')}\n]}\n`

const recipe = (food: string) => `---
title: Oats in a bowl
serves: 1
ingredients:
  oats: { amount: 60 g, food: ${food} }
---
Eat.
`

function kitchen(files: Readonly<Record<string, string>> = folder): string {
  return temporaryFolder({
    'content/cookbook.yaml': 'title: Boathouse\nrules: us\ncarbohydrate: total\n',
    'content/recipes/oats.md': recipe('branded/2900007'),
    ...files,
  })
}

function imported(files?: Readonly<Record<string, string>>, download = 'fdc') {
  const cwd = kitchen(files)
  const ended = run(['foods', 'import', download, '--as', 'branded'], {cwd})
  return {...ended, cwd, table: path.join(cwd, 'content/tables/branded.foods')}
}

describe('branded foods of a folder', () => {
  test('come into an indexed file, and nothing else is left', () => {
    const {code, stdout, stderr, cwd, table} = imported()
    expect(stderr).toBe('')
    expect(code).toBe(0)
    expect(stdout).toBe('content/tables/branded.foods: 3 foods, named branded/<fdc_id>\n')
    expect(readdirSync(path.join(cwd, 'content/tables'))).toEqual(['branded.foods'])
    const [, ...lines] = readFileSync(table, 'utf8').split('\n').slice(0, 4)
    expect(lines.map((line) => line.split('\t').slice(0, 4))).toEqual([
      ['415', 'WALNUT SPREAD, SMOOTH, Slipway', '32', ''],
      ['2900001', 'OAT DRINK, Boathouse Mill (per 100 ml)', '', '240'],
      ['2900007', 'CRISP OATS, Boathouse Mill', '30.0', ''],
    ])
  })

  test('whatever order the rows are in, the file is the same to the byte', () => {
    const [header = '', ...rows] = folder['fdc/food_nutrient.csv'].slice(0, -1).split('\n')
    const turned = {
      ...folder,
      'fdc/food_nutrient.csv': `${[header, ...rows.toReversed()].join('\n')}\n`,
    }
    expect(readFileSync(imported(turned).table)).toEqual(readFileSync(imported().table))
  })

  test('of other kinds beside them come in as well; samples do not', () => {
    const {stdout} = imported({
      ...folder,
      'fdc/food.csv': `${folder['fdc/food.csv']}"8","sr_legacy_food","Oats, raw"\n`,
      'fdc/food_nutrient.csv': `${folder['fdc/food_nutrient.csv']}"99","8","1003","16.89"\n`,
    })
    expect(stdout).toContain('4 foods')
  })
})

test('JSON gives the same foods as the folder', () => {
  const {code, stderr, table} = imported({'branded.json': json}, 'branded.json')
  expect(stderr).toBe('')
  expect(code).toBe(0)
  // JSON knows no zeros at the end of a number.
  const rows = readFileSync(imported().table, 'latin1').split('\n').slice(0, 4)
  expect(readFileSync(table, 'latin1').split('\n').slice(0, 4).join('\n')).toBe(
    rows.join('\n').replace('\t30.0\t', '\t30\t'),
  )
})

describe('a cookbook with branded foods', () => {
  test('reads the rows that its recipes and foods.yaml name, however the name is written', () => {
    const {cwd} = imported()
    putFiles(cwd, {
      'content/recipes/oats.md': recipe('Branded/2900007'),
      'content/foods.yaml': 'spread:\n  same as: branded/415\n',
      'content/recipes/bread.md': recipe('spread').replace('Oats in a bowl', 'Bread'),
    })
    const {code, stdout} = run(['check'], {cwd})
    expect(stdout).toContain('0 errors')
    expect(stdout).not.toMatch(/unknown-(?:food|figure)/)
    expect(code).toBe(0)
    // 60 g of 13.33 g in 100 g are 8.0 g; a label of 30 g that says 4 g may mean 3.5 to 4.5 g, which
    // is ± 2 × 1 ÷ √12 g in 60 g with k = 2: 21 CFR 101.9(c)(7)(i), JCGM 100:2008, 4.3.7.
    const explained = run(['explain', 'oats'], {cwd}).stdout
    expect(explained).toMatch(/protein.*8(?:\.0)? ± 1\.2 g/)
  })

  test('finds them by name, shows one and compares with all', () => {
    const {cwd} = imported()
    const find = run(['foods', 'find', 'wallnut', 'spraed', '--most', '2'], {cwd}).stdout
    expect(find).toMatch(/WALNUT SPREAD, SMOOTH, Slipway +branded\/415 +594 kcal +22 g +50 g/)
    expect(run(['foods', 'find', 'CRISP OATS, Boathouse Mill'], {cwd}).stdout).toMatch(
      /^per 100 g.*\nCRISP OATS, Boathouse Mill +branded\/2900007 /,
    )
    expect(run(['foods', 'find', 'oat drink'], {cwd}).stdout).toContain('(per 100 ml)')
    expect(run(['foods', 'show', 'branded/415'], {cwd}).stdout).toContain('row 415')
    const likeNuts = run(['foods', 'like', 'peanut butter', '--most', '200'], {cwd}).stdout
    expect(likeNuts).toContain('branded/415')
    const likeOats = run(['foods', 'like', 'rolled oats', '--most', '200'], {cwd}).stdout
    // A recipe names it, so that it comes from the cookbook and from the table.
    expect(likeOats.split('branded/2900007')).toHaveLength(2)
    expect(likeOats).not.toContain('OAT DRINK')
    expect(run(['foods', 'like', 'branded/415', '--most', '1'], {cwd}).stdout).toMatch(/^per 100 g/)
  })

  test('compares them by the 60 g that a bowl uses', () => {
    const {cwd} = imported()
    const {stdout} = run(['foods', 'like', 'oats', '--in', 'oats', '--most', '9999'], {cwd})
    // √((8.55 × 4)² + (43.33 × 9)² + (44.82 × 4)²) × 0.6 = 258 kcal.
    expect(stdout).toMatch(/^WALNUT SPREAD, SMOOTH, Slipway +branded\/415 +60 g +356 kcal/mu)
    expect(stdout).toMatch(/^with WALNUT SPREAD, SMOOTH, Slipway .* 258 kcal +not stated$/mu)
    expect(stdout).not.toContain('branded/2900007')
  })

  test('is compared with what git has of it, though the table is in no repository', () => {
    const {cwd} = imported()
    putFiles(cwd, {'.gitignore': '*.foods\n'})
    const author = ['-c', 'user.name=A tester', '-c', 'user.email=tester@example.org']
    for (const args of [
      ['init', '-q'],
      ['add', '.'],
      [...author, 'commit', '-qm', 'Start'],
    ]) {
      execFileSync('git', args, {cwd, stdio: 'pipe'})
    }
    putFiles(cwd, {'content/recipes/oats.md': recipe('branded/2900007').replace('60 g', '90 g')})
    const {code, stdout} = run(['compare', 'HEAD'], {cwd})
    expect(code).toBe(0)
    expect(stdout).toMatch(/energy.*220.*330/)
    expect(stdout).not.toContain('unknown')
  })

  test('is told of figures per 100 ml, which have no weight', () => {
    const {cwd} = imported()
    putFiles(cwd, {'content/recipes/oats.md': recipe('branded/2900001')})
    const {code, stdout} = run(['check'], {cwd})
    expect(code).toBe(1)
    expect(stdout).toContain('Figures of `2900001` are per 100 ml')
    expect(stdout).toContain('`branded/2900001` is unknown')
  })

  test('is told that an id is no row', () => {
    const {cwd} = imported()
    putFiles(cwd, {'content/recipes/oats.md': recipe('branded/416')})
    expect(run(['check'], {cwd}).stdout).toContain('`branded/416` is unknown')
  })

  test('refuses a file that is cut off, and says how to make it again', () => {
    const {cwd, table} = imported()
    writeFileSync(table, readFileSync(table).subarray(0, -30))
    for (const args of [['check'], ['build'], ['foods', 'find', 'oats']]) {
      const {code, stderr} = run(args, {cwd})
      expect(code, args.join(' ')).toBe(2)
      expect(stderr).toContain('branded.foods cannot be used: it is cut off')
      expect(stderr).toContain('scalepan foods import DOWNLOAD --as NAME')
    }
    // What names none of its rows does not open it.
    putFiles(cwd, {'content/recipes/oats.md': recipe('rolled oats')})
    expect(run(['check'], {cwd}).code).toBe(0)
  })

  test('has one table a name', () => {
    const {cwd} = imported()
    putFiles(cwd, {
      'plain.csv': 'id,name\n1,Oats\n',
      'plain.mapping': 'columns: {id: id, name: name}\n',
    })
    const args = ['foods', 'import', 'plain.csv', '--map', 'plain.mapping', '--as', 'branded']
    const {code, stderr} = run(args, {cwd})
    expect(code).toBe(2)
    expect(stderr).toContain('branded.foods is there already')
    expect(existsSync(path.join(cwd, 'content/tables/branded.tsv'))).toBe(false)
  })
})

/** The files of the download with one text in place of another. */
function changed(name: keyof typeof folder, from: string, to: string) {
  expect(folder[name]).toContain(from)
  return {...folder, [name]: folder[name].replace(from, to)}
}

/** Within this process: the command ends with 2 and the message of what was thrown. */
async function refused(cwd: string, download: string, told: RegExp): Promise<void> {
  const content = path.join(cwd, 'content')
  const options = {content, as: 'branded', color: false, quiet: true}
  const failure = await foodsImportCommand(path.join(cwd, download), options).catch(
    (error: unknown) => error,
  )
  expect(failure).toBeInstanceOf(EnvironmentFailure)
  expect(failure).toMatchObject({message: expect.stringMatching(told)})
  const tables = path.join(content, 'tables')
  expect(existsSync(tables) ? readdirSync(tables) : []).toEqual([])
}

describe('a folder that is cut off or mislabelled is refused with its row', () => {
  const figures = folder['fdc/food_nutrient.csv']
  const counts = 'fdc/all_downloaded_table_record_counts.csv'

  test.each<[string, Readonly<Record<string, string>>, RegExp]>([
    [
      'figures within a row',
      {...folder, 'fdc/food_nutrient.csv': figures.slice(0, -12)},
      /food_nutrient.csv, line 14: expected `4` cells, not `3`|line 14: a quote is never closed/,
    ],
    [
      'figures between two rows',
      {...folder, 'fdc/food_nutrient.csv': figures.slice(0, figures.indexOf('"9","415"'))},
      /food.csv, line 4: expected figures of `WALNUT SPREAD, SMOOTH` in food_nutrient.csv/,
    ],
    [
      'packets between two rows',
      changed('fdc/branded_food.csv', '"415","Slipway","","32","GRM"\n', ''),
      /food.csv, line 4: expected a row of `WALNUT SPREAD, SMOOTH` in branded_food.csv/,
    ],
    [
      'fewer rows than it counts',
      {...folder, [counts]: '"Table","Number of Records"\n"food_nutrient","14"\n'},
      /food_nutrient.csv has 13 rows, expected 14 as all_downloaded_table_record_counts.csv says/,
    ],
    [
      'another unit',
      changed('fdc/nutrient.csv', '"Sodium, Na","MG"', '"Sodium, Na","G"'),
      /nutrient.csv, line 6: expected `Sodium, Na` in `MG`, not in `G`/,
    ],
    [
      'another heading',
      changed('fdc/branded_food.csv', 'serving_size_unit', 'unit'),
      /branded_food.csv, line 1: expected a column `serving_size_unit`/,
    ],
    [
      'a word for a figure',
      changed('fdc/food_nutrient.csv', '"344"', '"high"'),
      /food_nutrient.csv, line 14: expected a number as `amount`, not `high`/,
    ],
    [
      'more fat than there can be',
      changed('fdc/food_nutrient.csv', '"50"', '"500"'),
      /food.csv, line 4: expected other figures of `WALNUT.*`fat_g` is `500`/,
    ],
    [
      'a serving in pieces',
      changed('fdc/branded_food.csv', '"GRM"', '"pieces"'),
      /food.csv, line 4: expected `g` or `ml` as unit of the serving, not `pieces`/,
    ],
    [
      'a food twice',
      changed('fdc/food.csv', '"2900001"', '"415"'),
      /food.csv, line 4: expected each `fdc_id` once, not `415` again/,
    ],
    [
      'no number for an id',
      changed('fdc/food.csv', '"415"', '"4294967296"'),
      /food.csv, line 4: expected a number as `fdc_id`, not `4294967296`/,
    ],
  ])('%s', async (_, files, told) => {
    await refused(kitchen(files), 'fdc', told)
  })

  test('but of many one that cannot be used is left out, and told', () => {
    const many = Array.from({length: 60}, (_, index) => 500 + index)
    const {code, stdout, stderr} = imported({
      ...changed('fdc/food_nutrient.csv', '"50"', '"500"'),
      'fdc/food.csv':
        folder['fdc/food.csv'] + csv(many.map((id) => [id, 'branded_food', `BISCUIT ${id}`])),
      'fdc/branded_food.csv':
        folder['fdc/branded_food.csv'] + csv(many.map((id) => [id, 'Slipway', '', '', ''])),
      'fdc/food_nutrient.csv':
        changed('fdc/food_nutrient.csv', '"50"', '"500"')['fdc/food_nutrient.csv'] +
        csv(many.map((id) => [id, id, 1003, 8])),
    })
    expect(code).toBe(0)
    expect(stdout).toContain('62 foods')
    expect(stderr).toMatch(/1 food left out as unusable, the first: .*line 4: .*`fat_g` is `500`/)
  })
})

describe('JSON that is cut off or mislabelled is refused with its food', () => {
  test.each<[string, string, RegExp]>([
    ['within a food', json.slice(0, -60), /line 4, food 3: expected the rest of the object/],
    ['behind a food', json.slice(0, json.indexOf('\n', 30)), /line 2, food 1: expected/],
    [
      'another list',
      json.replace('BrandedFoods', 'SurveyFoods'),
      /a list of SurveyFoods, expected/,
    ],
    [
      'another kind',
      json.replace('"Branded","fdcId":2900001', '"Survey","fdcId":2900001'),
      /line 3, food 2: expected `Branded` as `dataType`, not `Survey`/,
    ],
    [
      'another unit',
      json.replace('"unitName":"mg"', '"unitName":"g"'),
      /food 3: expected `Sodium, Na` in `MG`, not in `g`/,
    ],
    [
      'a word for a figure',
      json.replace('"amount":594', '"amount":"high"'),
      /food 3: expected a number as `amount`, not `high`, for `Energy`/,
    ],
    [
      'no figures',
      json.replace(/"foodNutrients":\[.*?\]/, '"foodNutrients":[]'),
      /food 1: expected figures of `CRISP OATS/,
    ],
    [
      'a food twice',
      json.replace('2900001', '415'),
      /food \d: expected each `fdcId` once, not `415` again/,
    ],
    ['no foods', '{"BrandedFoods": []}', /has no foods/],
    ['no JSON', '<html></html>', /line 1, food 0: expected an object with one list of objects/],
  ])('%s', async (_, text, told) => {
    await refused(kitchen({'branded.json': text}), 'branded.json', told)
  })
})

test.each<['SIGINT' | 'SIGTERM', number]>([
  ['SIGINT', 130],
  ['SIGTERM', 143],
])('stopped by %s, an import leaves nothing behind', async (signal, exitCode) => {
  const cwd = kitchen()
  // A pipe that says nothing more keeps the import waiting for the rest of the file.
  const figures = path.join(cwd, 'fdc/food_nutrient.csv')
  rmSync(figures)
  execFileSync('mkfifo', [figures])
  const child = spawn(process.execPath, [entry(), 'foods', 'import', 'fdc', '--as', 'branded'], {
    cwd,
  })
  const pipe = createWriteStream(figures)
  await once(pipe, 'open')
  expect(readdirSync(path.join(cwd, 'content/tables'))).toHaveLength(2)
  const closed = once(child, 'close')
  child.kill(signal)
  // The process ends when its read does; before that it has tidied up.
  await vi.waitFor(() => expect(readdirSync(path.join(cwd, 'content/tables'))).toEqual([]), {
    timeout: 30_000,
  })
  pipe.destroy()
  expect((await closed)[0]).toBe(exitCode)
  expect(readdirSync(path.join(cwd, 'content/tables'))).toEqual([])
})
