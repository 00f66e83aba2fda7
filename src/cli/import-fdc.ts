import type {promises as disk} from 'node:fs'
import path from 'node:path'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {DelimitedRow} from '../food/import/delimited-rows.ts'
import {fdcColumns, fdcNutrients} from '../food/import/fdc-nutrients.ts'
import {rowFault} from '../food/table-row.ts'
import {refusal, rowsOf} from './download-rows.ts'

/** Kinds of food that are one composition each; the downloads list samples and markets beside. */
const foodKinds: ReadonlySet<string> = new Set(['foundation_food', 'sr_legacy_food'])

/** Foods held in memory at once. SR Legacy has about 7,800. */
const mostFoods = 50_000

/** Carbohydrate, by difference. */
const byDifference = '1005'

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
 * @returns how many foods there are
 */
export async function importFdc(folder: string, out: disk.FileHandle): Promise<number> {
  await checkUnits(path.join(folder, 'nutrient.csv'))
  const foodFile = path.join(folder, 'food.csv')
  const foods = await readFoods(foodFile)
  await readAmounts(path.join(folder, 'food_nutrient.csv'), foods)
  await out.write(`${['id', 'name', ...fdcColumns].join('\t')}\n`)
  for (const [id, food] of foods) await out.write(`${tableLine(id, food, foodFile)}\n`)
  return foods.size
}

/** Rows of a CSV by the headings asked for; every row has as many cells as the header. */
async function* cellsOf<const H extends string>(
  file: string,
  headings: readonly H[],
): AsyncIterable<{readonly row: DelimitedRow; readonly cell: (heading: H) => string}> {
  let header: readonly string[] | undefined
  for await (const row of rowsOf(file, ',')) {
    if (!header) {
      header = row.cells
      const missing = headings.find((heading) => !row.cells.includes(heading))
      if (missing !== undefined) throw refusal(file, row, `a column \`${missing}\``)
      continue
    }
    const {cells} = row
    const places = header
    if (cells.length !== places.length) {
      throw refusal(file, row, `\`${places.length}\` cells, not \`${cells.length}\``)
    }
    yield {row, cell: (heading) => cells[places.indexOf(heading)]?.trim() ?? ''}
  }
}

async function checkUnits(file: string): Promise<void> {
  for await (const {row, cell} of cellsOf(file, ['id', 'name', 'unit_name'])) {
    const nutrient = fdcNutrients.get(cell('id'))
    const unit = cell('unit_name').toUpperCase()
    if (nutrient && unit !== nutrient.unit) {
      throw refusal(file, row, `\`${cell('name')}\` in \`${nutrient.unit}\`, not in \`${unit}\``)
    }
  }
}

async function readFoods(file: string): Promise<ReadonlyMap<string, ComingFood>> {
  const foods = new Map<string, ComingFood>()
  for await (const {row, cell} of cellsOf(file, ['fdc_id', 'data_type', 'description'])) {
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
    'Branded foods are not imported: copy the packet with scalepan foods label',
  )
}

async function readAmounts(file: string, foods: ReadonlyMap<string, ComingFood>): Promise<void> {
  for await (const {row, cell} of cellsOf(file, ['fdc_id', 'nutrient_id', 'amount'])) {
    const food = foods.get(cell('fdc_id'))
    const id = cell('nutrient_id')
    const amount = cell('amount')
    if (!food || !fdcNutrients.has(id) || amount === '') continue
    // Worked out by difference, it may come out a little below 0: there is none.
    const isNone = id === byDifference && /^-[\d.]+$/.test(amount)
    if (!isNone && !/^(?:\d+\.?\d*|\.\d+)$/.test(amount)) {
      throw refusal(file, row, `a number as \`amount\`, not \`${amount}\``)
    }
    food.amounts.set(id, isNone ? '0' : amount)
  }
}

function tableLine(id: string, {name, row, amounts}: ComingFood, file: string): string {
  // A figure file that is cut off between two rows leaves foods behind without any figure.
  if (amounts.size === 0) throw refusal(file, row, `figures of \`${name}\` in food_nutrient.csv`)
  const cells = fdcColumns.map((column) => {
    const ids = [...fdcNutrients].filter(([, nutrient]) => nutrient.column === column)
    return ids.map(([each]) => amounts.get(each)).find((amount) => amount !== undefined) ?? ''
  })
  const text = [id, name, ...cells].join('\t')
  const fault = rowFault({text, line: row.line, start: 0}, ['id', 'name', ...fdcColumns])
  if (fault) throw refusal(file, row, `other figures of \`${name}\`: ${fault.reason}`)
  return text
}
