import {existsSync, readFileSync} from 'node:fs'
import path from 'node:path'
import {expect, test} from 'vitest'
import {temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand} from './command.ts'

const {run} = bundledCommand()

// The shapes of FoodData Central's CSV downloads, made by hand from memory. The figures of butter:
// USDA SR28 (2015), NDB 01001; the ids of foods are invented.
const download = {
  'fdc/food.csv': `"fdc_id","data_type","description","food_category_id","publication_date"
"900001","sr_legacy_food","Butter, salted","1","2019-04-01"
"900002","sub_sample_food","Butter, a sample of it","1","2019-04-01"
"900003","foundation_food","Oats, ""whole grain"", rolled","20","2022-10-28"
`,
  'fdc/nutrient.csv': `"id","name","unit_name","nutrient_nbr","rank"
"1003","Protein","G","203","600.0"
"1004","Total lipid (fat)","G","204","800.0"
"1005","Carbohydrate, by difference","G","205","1110.0"
"1008","Energy","KCAL","208","300.0"
"1062","Energy","kJ","268","400.0"
"1093","Sodium, Na","MG","307","5800.0"
"2047","Energy (Atwater General Factors)","KCAL","957","280.0"
"2048","Energy (Atwater Specific Factors)","KCAL","958","290.0"
`,
  'fdc/food_nutrient.csv': `"id","fdc_id","nutrient_id","amount","data_points","derivation_id"
"1","900001","1003","0.85","16","1"
"2","900001","1004","81.11","580","1"
"3","900001","1005","0.06","0","49"
"4","900001","1008","717","0","49"
"5","900001","1062","2999","0","49"
"6","900001","1093","643","24","1"
"7","900002","1003","12.3","1","1"
"8","900003","1003","13.5","8","1"
"9","900003","2047","381","","49"
"10","900003","2048","379.5","","49"
"11","900003","1005","-0.04","","49"
`,
}

type Name = keyof typeof download

function imported(changes: Partial<Record<Name, string>> = {}) {
  const cwd = temporaryFolder({...download, ...changes})
  const ended = run(['foods', 'import', 'fdc', '--as', 'fdc'], {cwd})
  const table = path.join(cwd, 'content/tables/fdc.tsv')
  return {...ended, table: existsSync(table) ? readFileSync(table, 'utf8') : undefined}
}

test('foods of Foundation and SR Legacy come in with their figures, samples do not', () => {
  const {code, table = '', stdout} = imported()
  expect(code).toBe(0)
  expect(stdout).toContain('2 foods')
  const [header = [], butter = [], oats = [], ...more] = table
    .slice(0, -1)
    .split('\n')
    .map((line) => line.split('\t'))
  expect(more).toEqual([])
  const figures = (row: readonly string[]) =>
    ['id', 'name', 'energy_kcal', 'protein_g', 'fat_g', 'carbohydrate_g', 'sodium_mg'].map(
      (column) => row[header.indexOf(column)],
    )
  expect(figures(butter)).toEqual([
    '900001',
    'Butter, salted',
    '717',
    '0.85',
    '81.11',
    '0.06',
    '643',
  ])
  // Energy by specific factors before general ones; what nobody published stays blank.
  expect(figures(oats)).toEqual([
    '900003',
    'Oats, "whole grain", rolled',
    '379.5',
    '13.5',
    '',
    '0',
    '',
  ])
})

function changed(name: Name, from: string, to: string): Partial<Record<Name, string>> {
  expect(download[name]).toContain(from)
  return {[name]: download[name].replace(from, to)}
}

test.each<[string, Name, string, string, RegExp]>([
  [
    'cut off within a row',
    'fdc/food_nutrient.csv',
    ',"379.5","","49"\n"11","900003","1005","-0.04","","49"\n',
    '',
    /food_nutrient.csv, line 11: expected `6` cells, not `3`/,
  ],
  [
    'cut off between rows',
    'fdc/food_nutrient.csv',
    download['fdc/food_nutrient.csv'].slice(download['fdc/food_nutrient.csv'].indexOf('"8"')),
    '',
    /food.csv, line 4: expected figures of `Oats/,
  ],
  [
    'in another unit',
    'fdc/nutrient.csv',
    '"Sodium, Na","MG"',
    '"Sodium, Na","G"',
    /nutrient.csv, line 7: expected `Sodium, Na` in `MG`, not in `G`/,
  ],
  [
    'under other headings',
    'fdc/food_nutrient.csv',
    '"amount"',
    '"value"',
    /food_nutrient.csv, line 1: expected a column `amount`/,
  ],
  [
    'with more fat than there can be',
    'fdc/food_nutrient.csv',
    '"81.11"',
    '"811.1"',
    /food.csv, line 2: .*`fat_g` is `811.1`/,
  ],
  [
    'with a word for a figure',
    'fdc/food_nutrient.csv',
    '"643"',
    '"high"',
    /food_nutrient.csv, line 7: expected a number as `amount`, not `high`/,
  ],
  [
    'with a food twice',
    'fdc/food.csv',
    '"900003"',
    '"900001"',
    /food.csv, line 4: expected each `fdc_id` once/,
  ],
])('a download %s is refused with its row', (_, name, from, to, told) => {
  const {code, stderr, table} = imported(changed(name, from, to))
  expect(code).toBe(2)
  expect(stderr).toMatch(told)
  expect(table).toBeUndefined()
})

test('branded foods without the file of their packets are not imported, and it is said why', () => {
  const {code, stderr, table} = imported({
    'fdc/food.csv': '"fdc_id","data_type","description"\n"5","branded_food","CRISP OATS"\n',
  })
  expect(code).toBe(2)
  expect(stderr).toContain('Branded foods come in where branded_food.csv lies beside it')
  expect(table).toBeUndefined()
})

test('an amount below 0 is none where it is a difference, and a slip elsewhere', () => {
  expect(imported().table).toContain('\t0\t')
  const {code, stderr} = imported(changed('fdc/food_nutrient.csv', '"13.5"', '"-13.5"'))
  expect(code).toBe(2)
  expect(stderr).toContain('line 9: expected a number as `amount`, not `-13.5`')
})

// The same shapes in JSON, made by hand from memory.
const json = `{"FoundationFoods": [
{"foodClass": "FinalFood", "description": "Butter, salted", "foodNutrients": [
  {"type": "FoodNutrient", "nutrient": {"id": 1003, "name": "Protein", "unitName": "g"}, "amount": 0.85},
  {"type": "FoodNutrient", "nutrient": {"id": 1004, "name": "Total lipid (fat)", "unitName": "g"}, "amount": 81.11},
  {"type": "FoodNutrient", "nutrient": {"id": 1008, "name": "Energy", "unitName": "kcal"}, "amount": 7.17E2},
  {"type": "FoodNutrient", "nutrient": {"id": 1062, "name": "Energy", "unitName": "kJ"}, "amount": 2999},
  {"type": "FoodNutrient", "nutrient": {"id": 1093, "name": "Sodium, Na", "unitName": "mg"}, "amount": 643},
  {"type": "FoodNutrient", "nutrient": {"id": 1114, "name": "Vitamin D (D2 + D3)", "unitName": "\u00b5g"}, "amount": 5e-8},
  {"type": "FoodNutrient", "nutrient": {"id": 1253, "name": "Cholesterol", "unitName": "mg"}}
], "dataType": "Foundation", "fdcId": 900001, "inputFoods": [{"id": 1, "inputFood": {"fdcId": 3}}]},
{"description": "Oats, \\"whole grain\\", rolled", "foodNutrients": [
  {"nutrient": {"id": 1003, "name": "Protein", "unitName": "g"}, "amount": 13.5},
  {"nutrient": {"id": 1005, "name": "Carbohydrate, by difference", "unitName": "g"}, "amount": -0.04}
], "dataType": "Foundation", "fdcId": 900003}
]}
`

function importedJson(text: string) {
  const cwd = temporaryFolder({'foundation.json': text})
  const ended = run(['foods', 'import', 'foundation.json', '--as', 'fdc'], {cwd})
  const table = path.join(cwd, 'content/tables/fdc.tsv')
  return {...ended, table: existsSync(table) ? readFileSync(table, 'utf8') : undefined}
}

test('foods of a JSON download come in with their figures', () => {
  const {code, stderr, stdout, table = ''} = importedJson(json)
  expect(stderr).toBe('')
  expect(code).toBe(0)
  expect(stdout).toContain('2 foods')
  const [header = [], butter = [], oats = []] = table.split('\n').map((line) => line.split('\t'))
  const figures = (row: readonly string[]) =>
    Object.fromEntries(header.flatMap((column, at) => (row[at] ? [[column, row[at]]] : [])))
  expect(figures(butter)).toEqual({
    id: '900001',
    name: 'Butter, salted',
    energy_kcal: '717',
    protein_g: '0.85',
    fat_g: '81.11',
    sodium_mg: '643',
    vitamin_d_ug: '0.00000005',
  })
  expect(figures(oats)).toEqual({
    id: '900003',
    name: 'Oats, "whole grain", rolled',
    protein_g: '13.5',
    carbohydrate_g: '0',
  })
})

test.each<[string, string, string, RegExp]>([
  [
    'cut off',
    json.slice(json.indexOf('"dataType": "Foundation", "fdcId": 900003')),
    '',
    /line 14, food 2: expected the rest/,
  ],
  [
    'of another kind',
    '"dataType": "Foundation"',
    '"dataType": "Branded"',
    /line 2, food 1: expected `Foundation`/,
  ],
  [
    'in another unit',
    '"unitName": "mg"}, "amount": 643',
    '"unitName": "g"}, "amount": 643',
    /food 1: expected `Sodium, Na` in `MG`/,
  ],
  ['with more fat than there can be', '81.11', '811.1', /food 1: .*`fat_g` is `811.1`/],
  [
    'with an amount below 0',
    '13.5',
    '-13.5',
    /food 2: expected a number as `amount`, not `-13.5`, for `Protein`/,
  ],
  ['with a food twice', '900003', '900001', /food 2: expected each `fdcId` once/],
  ['without a name', '"Butter, salted"', '""', /food 1: expected a `description`/],
  [
    'without figures',
    json.slice(
      json.indexOf('  {"nutrient"'),
      json.indexOf('], "dataType": "Foundation", "fdcId": 900003'),
    ),
    '',
    /food 2: expected figures of `Oats/,
  ],
])('a JSON download %s is refused with its food', (_, from, to, told) => {
  expect(json).toContain(from)
  const {code, stderr, table} = importedJson(json.replace(from, to))
  expect(stderr).toMatch(told)
  expect(code).toBe(2)
  expect(table).toBeUndefined()
})
