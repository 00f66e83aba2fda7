import type {promises as disk} from 'node:fs'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {DelimitedRow} from '../food/import/delimited-rows.ts'
import {fdcAmount, fdcLine, fdcTableColumns} from '../food/import/fdc-food.ts'
import {fdcNutrients} from '../food/import/fdc-nutrients.ts'
import {refusal} from './download-rows.ts'
import {FdcFolder} from './fdc-folder.ts'
import type {ImportedFoods} from './imported-foods.ts'

/** Kinds of food that are one composition each; the downloads list samples and markets beside. */
export const foodKinds: ReadonlySet<string> = new Set(['foundation_food', 'sr_legacy_food'])

/** Foods held in memory at once. SR Legacy has about 7,800. */
const mostFoods = 50_000

/** A food while its figures come in. */
interface ComingFood {
  readonly name: string
  readonly row: DelimitedRow
  /** By id of the nutrient, as printed. */
  readonly amounts: Map<string, string>
}

/**
 * Turns a folder of FoodData Central (Foundation or SR Legacy, CSV) into a brought table, its foods
 * named by `fdc_id`. In memory are the foods; the figures, a hundred times as many, go by.
 */
export async function importFdc(path: string, out: disk.FileHandle): Promise<ImportedFoods> {
  const folder = await FdcFolder.open(path)
  await folder.checkUnits()
  const foods = await readFoods(folder)
  await readAmounts(folder, foods)
  await out.write(`${fdcTableColumns.join('\t')}\n`)
  for (const [id, food] of foods) await out.write(`${tableLine(id, food, folder)}\n`)
  return {count: foods.size}
}

async function readFoods(folder: FdcFolder): Promise<ReadonlyMap<string, ComingFood>> {
  const foods = new Map<string, ComingFood>()
  const file = folder.file('food')
  for await (const {row, cell} of folder.rows('food', ['fdc_id', 'data_type', 'description'])) {
    if (!foodKinds.has(cell('data_type'))) continue
    const [id, name] = [cell('fdc_id'), cell('description').replace(/\s+/g, ' ')]
    if (!/^\d+$/.test(id)) throw refusal(file, row, `a number as \`fdc_id\`, not \`${id}\``)
    if (foods.has(id)) throw refusal(file, row, `each \`fdc_id\` once, not \`${id}\` again`)
    if (foods.size === mostFoods) throw refusal(file, row, `at most \`${mostFoods}\` foods`)
    foods.set(id, {name, row, amounts: new Map()})
  }
  if (foods.size > 0) return foods
  throw new EnvironmentFailure(
    `${file} has no foods of ${[...foodKinds].join(' or ')}`,
    'Branded foods come in where branded_food.csv lies beside it',
  )
}

async function readAmounts(
  folder: FdcFolder,
  foods: ReadonlyMap<string, ComingFood>,
): Promise<void> {
  const table = 'food_nutrient'
  for await (const {row, cell} of folder.rows(table, ['fdc_id', 'nutrient_id', 'amount'])) {
    const food = foods.get(cell('fdc_id'))
    const id = cell('nutrient_id')
    const written = cell('amount')
    if (!food || !fdcNutrients.has(id) || written === '') continue
    const amount = fdcAmount(id, written)
    if (!amount.ok) throw refusal(folder.file(table), row, amount.expected)
    food.amounts.set(id, amount.value)
  }
}

function tableLine(id: string, {name, row, amounts}: ComingFood, folder: FdcFolder): string {
  // A figure file that is cut off between two rows leaves foods behind without any figure.
  if (amounts.size === 0) {
    throw refusal(folder.file('food'), row, `figures of \`${name}\` in food_nutrient.csv`)
  }
  const line = fdcLine({id, name, amounts}, fdcTableColumns)
  if (!line.ok) throw refusal(folder.file('food'), row, line.expected)
  return line.value
}
