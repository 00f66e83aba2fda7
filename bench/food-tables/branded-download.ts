/**
 * I/O: writes a made-up download of branded foods in the public shape of FoodData Central (CSV; from
 * memory). Names, makers and figures are invented; the same in every run.
 */

import {closeSync, openSync, writeSync} from 'node:fs'
import path from 'node:path'
import {seededRandom} from '../../test/seeded-random.ts'

const kinds = ['Oat', 'Rye', 'Barley', 'Lentil', 'Walnut', 'Plum', 'Curd', 'Beet', 'Leek', 'Cocoa']
const forms = ['Flakes', 'Biscuit', 'Spread', 'Drink', 'Soup', 'Bar', 'Crackers', 'Relish', 'Bread']
const ways = ['Smooth', 'Toasted', 'Salted', 'Sweet', 'Spiced', 'Sliced', 'Whole Grain', 'Dark']
const makers = ['Boathouse Mill', 'Slipway', 'Towpath Kitchen', 'Weir Works', 'Lock Side']

/** Id and unit of each nutrient, and its largest figure per 100 g here. */
const nutrients = [
  ['1008', 'Energy', 'KCAL', 850],
  ['1003', 'Protein', 'G', 30],
  ['1004', 'Total lipid (fat)', 'G', 40],
  ['1258', 'Fatty acids, total saturated', 'G', 20],
  ['1005', 'Carbohydrate, by difference', 'G', 30],
  ['1079', 'Fiber, total dietary', 'G', 12],
  ['2000', 'Total Sugars', 'G', 25],
  ['1093', 'Sodium, Na', 'MG', 900],
  ['1087', 'Calcium, Ca', 'MG', 400],
  ['1089', 'Iron, Fe', 'MG', 9],
] as const

/** The first id; every other number is one. */
const firstId = 400_001

export function idOf(index: number): number {
  return firstId + 2 * index
}

/** @param folder there, and empty */
export function writeBrandedDownload(folder: string, foods: number): void {
  const random = seededRandom(8_789)
  const pick = <T>(from: readonly T[]): T | undefined => from[Math.floor(random() * from.length)]
  const write = (table: string, header: string, rows: Iterable<readonly unknown[]>): void =>
    writeCsv(path.join(folder, `${table}.csv`), header, rows)
  // In no order of ids, as they do not have to be.
  const order = (index: number): number => idOf((index * 7_919) % foods)
  write(
    'nutrient',
    'id,name,unit_name',
    nutrients.map(([id, name, unit]) => [id, name, unit]),
  )
  write(
    'food',
    'fdc_id,data_type,description',
    rowsOf(foods, (index) => [
      order(index),
      'branded_food',
      `${pick(ways)} ${pick(kinds)} ${pick(forms)}, ${pick(ways)}, No. ${index % 997}`.toUpperCase(),
    ]),
  )
  write(
    'branded_food',
    'fdc_id,brand_owner,brand_name,serving_size,serving_size_unit',
    rowsOf(foods, (index) => [order(index), pick(makers), '', 20 + (index % 80), 'g']),
  )
  write(
    'food_nutrient',
    'id,fdc_id,nutrient_id,amount',
    rowsOf(foods * nutrients.length, (index) => {
      const [id, , , most] = nutrients[index % nutrients.length] ?? nutrients[0]
      const food = order(Math.floor(index / nutrients.length))
      return [index + 1, food, id, (random() * most).toFixed(2)]
    }),
  )
}

function* rowsOf(
  count: number,
  row: (index: number) => readonly unknown[],
): Iterable<readonly unknown[]> {
  for (let index = 0; index < count; index++) yield row(index)
}

function writeCsv(file: string, header: string, rows: Iterable<readonly unknown[]>): void {
  const out = openSync(file, 'wx')
  let text = `${quoted(header.split(','))}\n`
  for (const row of rows) {
    text += `${quoted(row)}\n`
    if (text.length < 1_000_000) continue
    writeSync(out, text)
    text = ''
  }
  writeSync(out, text)
  closeSync(out)
}

function quoted(cells: readonly unknown[]): string {
  return cells.map((cell) => `"${String(cell)}"`).join(',')
}
