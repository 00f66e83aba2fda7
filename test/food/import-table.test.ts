import {setFlagsFromString} from 'node:v8'
import {runInNewContext} from 'node:vm'
import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {importTable} from '../../src/food/import-table.ts'
import {tableColumns} from '../../src/food/table-columns.ts'
import {standardUncertainty} from '../../src/units/uncertain.ts'

/** A table written with blanks for tabs and no names of two words. */
function tsv(...lines: readonly string[]): string {
  return `${lines.map((line) => line.replaceAll(' ', '\t').replaceAll('_', '')).join('\n')}\n`
}

function told(text: string): readonly string[] {
  return importTable(text, 'lab').faults.map(
    ({place, reason}) => `${place.start.line}:${place.start.column} ${reason}`,
  )
}

const header = 'id\tname\tgroup\tenergy_kcal\tprotein_g\tcarbohydrate_g\tfibre_g\tsodium_mg\n'

describe('A row of a brought table', () => {
  const {table, faults} = importTable(
    `${header}A1\tRye flakes\tGrains\t340\t9.50\t70\t14.6\t2\nA2\tKelp\t\t\t1.7\t\t1.3\t233\n`,
    'lab',
  )

  test('is a food of the table, with the figures as written', () => {
    expect(faults).toEqual([])
    const food = table.food('A1')
    expect(food).toMatchObject({id: 'lab/A1', name: 'Rye flakes', aisle: 'grains'})
    expect(food?.provenance).toEqual({kind: 'table', table: 'lab', row: 'A1'})
    expect(food?.per100g.energy.value).toBe(340)
    expect(food?.per100g.salt.value).toBeCloseTo(0.005, 12)
    expect(food?.per100g.availableCarbohydrate.value).toBeCloseTo(55.4, 12)
  })

  test('knows each figure to its last written digit', () => {
    const figures = table.food('A1')?.per100g
    expect(figures && standardUncertainty(figures.protein)).toBeCloseTo(0.01 / Math.sqrt(12), 12)
    expect(figures && standardUncertainty(figures.carbohydrate)).toBeCloseTo(1 / Math.sqrt(12), 12)
  })

  test('leaves a blank unknown, and what follows from it, and every column that is not there', () => {
    const figures = table.food('a2')?.per100g
    for (const nutrient of ['energy', 'carbohydrate', 'availableCarbohydrate', 'fat'] as const) {
      expect(figures?.[nutrient].missing).toEqual(new Set(['Kelp']))
    }
    expect(figures?.protein.missing.size).toBe(0)
  })

  test('says nothing of allergens or of what it is made from', () => {
    expect(table.food('A2')).toMatchObject({allergensKnown: false, from: [], aisle: 'other'})
  })

  test('has its refuse as a ratio and its ash, where the table says', () => {
    const {table: peeled} = importTable(
      'id\tname\trefuse_pct\tash_g\n1\tPlantain\t35\t1.17\n',
      'lab',
    )
    expect(peeled.food('1')).toMatchObject({refuseRatio: 0.35, ashGrams: 1.17})
    expect(table.food('A1')?.refuseRatio).toBe(0)
    expect(table.food('A1')?.ashGrams).toBeUndefined()
  })

  test('is one and the same food whenever it is asked for', () => {
    expect(table.food('A1')).toBe(table.food('a1'))
    expect(table.food('A3')).toBeUndefined()
  })
})

test('A table may come with Windows line ends and without a last one', () => {
  const {table, faults} = importTable('id\tname\tfat_g\r\n1\tLard\t99.8\r\n2\tSuet\t94', 'lab')
  expect(faults).toEqual([])
  expect(table.food('1')?.per100g.fat.value).toBe(99.8)
  expect(table.food('2')?.per100g.fat.value).toBe(94)
})

describe('What is wrong with a row is told at its place, and the row is left out', () => {
  test.each([
    ['1\tRye\t\t340\t9.5\t70\t14.6', '2:1 The row has `7` cells, expected `8` as in the header'],
    [
      '1\tRye\t\t340\t9.5\t70\t14.6\t2\t9',
      '2:1 The row has `9` cells, expected `8` as in the header',
    ],
    [
      '1\tRye\t\t340\t-3\t70\t14.6\t2',
      '2:12 `protein_g` is `-3`, expected a number from `0` to `100`',
    ],
    [
      '1\tRye\t\t340\t9,5\t70\t14.6\t2',
      '2:12 `protein_g` is `9,5`, expected a number from `0` to `100`',
    ],
    [
      '1\tRye\t\t340\ttr\t70\t14.6\t2',
      '2:12 `protein_g` is `tr`, expected a number from `0` to `100`',
    ],
    [
      '1\tRye\t\t1423\t9.5\t70\t14.6\t2',
      '2:8 `energy_kcal` is `1423`, expected a number from `0` to `910`',
    ],
    [
      '1\tRye\t\t340\t9.5\t700\t14.6\t2',
      '2:16 `carbohydrate_g` is `700`, expected a number from `0` to `100`',
    ],
    [
      '1\tRye\t\t340\t9.5\t70\t14.6\tNaN',
      '2:24 `sodium_mg` is `NaN`, expected a number from `0` up',
    ],
    [
      '1\tRye\t\t340\t9.5\t70\t14.6\t1e3',
      '2:24 `sodium_mg` is `1e3`, expected a number from `0` up',
    ],
    ['\tRye\t\t340\t9.5\t70\t14.6\t2', '2:1 The row has no `id`, expected one in every row'],
    ['1\t \t\t340\t9.5\t70\t14.6\t2', '2:4 The row has no `name`, expected one in every row'],
  ])('%j', (row, message) => {
    const text = `${header}${row}\n2\tOats\t\t\t\t\t\t\n`
    expect(told(text)).toEqual([message])
    const {table} = importTable(text, 'lab')
    expect(table.size).toBe(1)
    expect(table.food('2')?.name).toBe('Oats')
  })

  test('an id that stands there twice', () => {
    const text = tsv('id name fat', 'a Lard 99', 'A Suet 94').replace('fat', 'fat_g')
    expect(told(text)).toEqual(['3:1 Id `A` stands in the table twice, expected once'])
    expect(importTable(text, 'lab').table.food('a')?.name).toBe('Lard')
  })

  test('the first twenty, then how many more', () => {
    const rows = Array.from({length: 30}, (_, index) => `${index}\tFood ${index}\t-1\n`)
    const messages = told(`id\tname\tfat_g\n${rows.join('')}`)
    expect(messages).toHaveLength(21)
    expect(messages.at(-1)).toBe('1:1 `10` more rows of the table cannot be used and are left out')
  })
})

describe('A header', () => {
  test.each([
    ['code\tname', '1:1 Column 1 of the table is `code`, expected `id`'],
    ['id\tfood', '1:4 Column 2 of the table is `food`, expected `name`'],
    ['id\tname\tprotien_g', '1:9 Unknown column `protien_g`, expected `protein_g`'],
    ['id\tname\tfat_g\tfat_g', '1:15 Column `fat_g` stands in the table twice, expected once'],
  ])('%j', (line, message) => {
    expect(told(`${line}\n1\tRye\n`)).toEqual([message])
    expect(importTable(`${line}\n1\tRye\n`, 'lab').table.size).toBe(0)
  })

  test.each([
    ['id name fat_g', '1:1 Column 1 of the table is `id name fat_g`, expected `id`'],
    ['', '1:1 Column 1 of the table is missing, expected `id`'],
    ['id', '1:3 Column 2 of the table is missing, expected `name`'],
  ])('%j', (line, message) => {
    expect(told(`${line}\n1\tRye\n`)[0]).toBe(message)
  })
})

test('Every row is either a food or told, whatever is in it', () => {
  const cell = fc.oneof(
    fc.double({min: 0, max: 120, noNaN: true}).map(String),
    fc.integer({min: -5, max: 120}).map(String),
    fc.constantFrom('', ' ', '1.', '.5', '1.2.3', '-', 'tr', ' 7 ', '100.4', '1e5'),
  )
  fc.assert(
    fc.property(fc.array(cell, {minLength: 3, maxLength: 3}), (cells) => {
      const text = `id\tname\tfat_g\twater_g\tiron_mg\nA\tFood\t${cells.join('\t')}\n`
      const {table, faults} = importTable(text, 'lab')
      expect(table.size + faults.length).toBe(1)
      const figures = table.food('A')?.per100g
      if (figures) {
        for (const nutrient of ['fat', 'water', 'iron'] as const) {
          expect(figures[nutrient].value).toBeGreaterThanOrEqual(0)
        }
      }
    }),
  )
})

describe('A national table of 8,789 foods', () => {
  // A row with figures per 100 ml cannot be used.
  const columns = tableColumns.filter((column) => column !== 'serving_ml')
  const cells = columns.map((column) => (column === 'group' ? 'Grains' : '12.34'))
  const rows = Array.from({length: 8789}, (_, index) => {
    const name = 'Meal of the region, dried, sifted and ground in a stone mill'.slice(index % 50)
    return `${10_000 + index}\t${name}\t${cells.join('\t')}\n`
  })
  const text = `id\tname\t${columns.join('\t')}\n${rows.join('')}`

  test('is indexed whole', () => {
    expect(importTable(text, 'national').table.size).toBe(8789)
  })

  test('takes less than 10 MB besides its text: rows are not turned into foods', () => {
    const before = heapBytes()
    const {table} = importTable(text, 'national')
    const taken = heapBytes() - before
    expect(table.food('10000')?.name).toBe(
      'Meal of the region, dried, sifted and ground in a stone mill',
    )
    expect(taken).toBeLessThan(10e6)
  })
})

/** What is on the heap once everything that nobody holds is gone. */
function heapBytes(): number {
  setFlagsFromString('--expose-gc')
  runInNewContext('gc')()
  return process.memoryUsage().heapUsed
}
