import {setImmediate as nextTurn} from 'node:timers/promises'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {
  brandedColumns,
  type FdcFood,
  fdcAmount,
  fdcLine,
  fdcServing,
} from '../food/import/fdc-food.ts'
import {fdcNutrients} from '../food/import/fdc-nutrients.ts'
import {brandedName} from '../food/import/fdc-object.ts'
import {idLimit} from '../food/large/layout.ts'
import type {Parsed} from '../units/parsed.ts'
import {refusal} from './download-rows.ts'
import {FdcFolder} from './fdc-folder.ts'
import {foodKinds} from './import-fdc.ts'
import {type ImportedFoods, type LargeOut, LeftOut} from './imported-foods.ts'
import {LargeTableWriter} from './large-table-writer.ts'
import {SpilledLines} from './spilled-lines.ts'

/** What foods of brands are in food.csv. */
const branded = 'branded_food'

/** Ids in one bucket: so many foods at most are in memory. */
export const idsPerBucket = 16_384

/** The three files, parted by ids. */
interface Parted {
  /** Id, line in food.csv, kind, description. */
  readonly foods: SpilledLines
  /** Id, size and unit of the serving, brand. */
  readonly packets: SpilledLines
  /** Id, nutrient, amount. */
  readonly amounts: SpilledLines
}

/**
 * Turns a folder of FoodData Central with branded foods (CSV) into a large table, foods of other
 * kinds beside them. The files are parted by ids on the disk first, so that the foods of one part
 * at a time are in memory.
 */
export async function importBranded(path: string, out: LargeOut): Promise<ImportedFoods> {
  const {file, work, begin} = out
  const folder = await FdcFolder.open(path)
  await folder.checkUnits()
  const parted = {
    foods: new SpilledLines(work, 'food'),
    packets: new SpilledLines(work, 'packet'),
    amounts: new SpilledLines(work, 'amount'),
  }
  begin('reading food.csv')
  await partFoods(folder, parted.foods)
  begin(`reading ${branded}.csv`)
  await partPackets(folder, parted.packets)
  begin('reading food_nutrient.csv')
  await partAmounts(folder, parted.amounts)
  const leftOut = new LeftOut()
  const writer = new LargeTableWriter(file, work, brandedColumns.join('\t'))
  try {
    begin('writing foods')
    for (const bucket of parted.foods.buckets()) {
      // Lets a signal stop it.
      await nextTurn()
      writeBucket({folder, parted, writer, leftOut, bucket})
    }
    begin('writing the index of names')
    return leftOut.imported(await writer.end())
  } finally {
    writer.close()
  }
}

async function partFoods(folder: FdcFolder, foods: SpilledLines): Promise<void> {
  const file = folder.file('food')
  for await (const {row, cell} of folder.rows('food', ['fdc_id', 'data_type', 'description'])) {
    const [id, kind] = [cell('fdc_id'), cell('data_type')]
    if (kind !== branded && !foodKinds.has(kind)) continue
    const number = /^\d{1,10}$/.test(id) ? Number(id) : idLimit
    if (number >= idLimit) throw refusal(file, row, `a number as \`fdc_id\`, not \`${id}\``)
    foods.add(bucketOf(id), `${id}\t${row.line}\t${kind}\t${plain(cell('description'))}`)
  }
  if (foods.buckets().length === 0) throw new EnvironmentFailure(`${file} has no foods`)
}

async function partPackets(folder: FdcFolder, packets: SpilledLines): Promise<void> {
  const headings = ['fdc_id', 'brand_owner', 'brand_name', 'serving_size', 'serving_size_unit']
  for await (const {cell} of folder.rows(branded, headings)) {
    const id = cell('fdc_id')
    const brand = plain(cell('brand_name') || cell('brand_owner'))
    const serving = [cell('serving_size'), cell('serving_size_unit')].map(plain).join('\t')
    packets.add(bucketOf(id), `${id}\t${serving}\t${brand}`)
  }
}

async function partAmounts(folder: FdcFolder, amounts: SpilledLines): Promise<void> {
  const table = 'food_nutrient'
  for await (const {row, cell} of folder.rows(table, ['fdc_id', 'nutrient_id', 'amount'])) {
    const [id, nutrient, written] = [cell('fdc_id'), cell('nutrient_id'), cell('amount')]
    if (!fdcNutrients.has(nutrient) || written === '') continue
    const amount = fdcAmount(nutrient, written)
    if (!amount.ok) throw refusal(folder.file(table), row, amount.expected)
    amounts.add(bucketOf(id), `${id}\t${nutrient}\t${amount.value}`)
  }
}

/** An id that is no number is no food's; food.csv is held to that. */
function bucketOf(id: string): number {
  return Math.floor(Number(id) / idsPerBucket)
}

/** A text without tabs and line ends, which part cells and rows. */
function plain(text: string): string {
  return text.replace(/\s+/g, ' ')
}

interface Bucket {
  readonly folder: FdcFolder
  readonly parted: Parted
  readonly writer: LargeTableWriter
  readonly leftOut: LeftOut
  readonly bucket: number
}

function writeBucket({folder, parted, writer, leftOut, bucket}: Bucket): void {
  const file = folder.file('food')
  const packets = new Map<string, string>()
  for (const line of parted.packets.lines(bucket)) packets.set(firstCell(line), line)
  const amounts = new Map<string, Map<string, string>>()
  for (const line of parted.amounts.lines(bucket)) {
    const [id = '', nutrient = '', amount = ''] = line.split('\t')
    const own = amounts.get(id)
    if (own) own.set(nutrient, amount)
    else amounts.set(id, new Map([[nutrient, amount]]))
  }
  const foods = Array.from(parted.foods.lines(bucket), (line) => line.split('\t'))
  let before = ''
  for (const cells of foods.toSorted(byId)) {
    const [id = '', line = '', kind = '', description = ''] = cells
    const row = {line: Number(line)}
    if (id === before) throw refusal(file, row, `each \`fdc_id\` once, not \`${id}\` again`)
    before = id
    const packet = packets.get(id)
    const figures = amounts.get(id)
    if (kind === branded && packet === undefined) {
      leftOut.leave(refusal(file, row, `a row of \`${description}\` in ${branded}.csv`))
    } else if (!figures) {
      leftOut.leave(refusal(file, row, `figures of \`${description}\` in food_nutrient.csv`))
    } else {
      const food = foodOf({id, name: description, amounts: figures}, packet)
      const text = food.ok ? fdcLine(food.value, brandedColumns) : food
      if (!text.ok) leftOut.leave(refusal(file, row, text.expected))
      else if (food.ok) writer.add({id: Number(id), name: food.value.name, line: text.value})
    }
  }
}

function byId([left]: readonly string[], [right]: readonly string[]): number {
  return Number(left) - Number(right)
}

function firstCell(line: string): string {
  return line.slice(0, line.indexOf('\t'))
}

/** The food with what its packet says; one of another kind has no packet. */
function foodOf(food: FdcFood, packet: string | undefined): Parsed<FdcFood> {
  if (packet === undefined) return {ok: true, value: food}
  const [, size = '', unit = '', brand = ''] = packet.split('\t')
  const serving = fdcServing(size, unit)
  if (!serving.ok) return serving
  const name = brandedName({description: food.name, brand, serving: serving.value})
  return {ok: true, value: {...food, name, ...(serving.value && {serving: serving.value})}}
}
