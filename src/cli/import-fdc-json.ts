import type {promises as disk} from 'node:fs'
import {setImmediate as nextTurn} from 'node:timers/promises'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {brandedColumns, type FdcFood, fdcLine, fdcTableColumns} from '../food/import/fdc-food.ts'
import {fdcFoodOf, fdcLists} from '../food/import/fdc-object.ts'
import {type JsonFault, type ListedObject, ObjectsReader} from '../food/import/json-objects.ts'
import {idLimit} from '../food/large/layout.ts'
import {type Parsed, refused} from '../units/parsed.ts'
import {textsOf} from './download-rows.ts'
import {idsPerBucket} from './import-branded.ts'
import {type ImportedFoods, type LargeOut, LeftOut} from './imported-foods.ts'
import {LargeTableWriter} from './large-table-writer.ts'
import {SpilledLines} from './spilled-lines.ts'

/** Foods read before it is told how many: some seconds' work. */
const foodsBetweenWords = 50_000

/** Whether a JSON download is one of branded foods, by the key of its list. */
export async function isBranded(file: string): Promise<boolean> {
  for await (const {dataType} of foodsOf(file)) return dataType === 'Branded'
  throw new EnvironmentFailure(`${file} has no foods`)
}

/** Turns a JSON download of Foundation or SR Legacy foods into a brought table. */
export async function importFdcJson(file: string, out: disk.FileHandle): Promise<ImportedFoods> {
  const ids = new Set<string>()
  await out.write(`${fdcTableColumns.join('\t')}\n`)
  for await (const {read, at} of foodsOf(file)) {
    if (!read.ok) throw refusal(file, at, read.expected)
    const food = read.value
    if (ids.has(food.id)) throw refusal(file, at, again(food))
    ids.add(food.id)
    if (food.amounts.size === 0) throw refusal(file, at, `figures of \`${food.name}\``)
    const line = fdcLine(food, fdcTableColumns)
    if (!line.ok) throw refusal(file, at, line.expected)
    await out.write(`${line.value}\n`)
  }
  return {count: ids.size}
}

/**
 * Turns a JSON download of branded foods into a large table. Its rows are parted by ids on the disk
 * first, so that one part at a time is put in order in memory.
 */
export async function importBrandedJson(file: string, out: LargeOut): Promise<ImportedFoods> {
  const leftOut = new LeftOut()
  const parts = new SpilledLines(out.work, 'food')
  for await (const {read, at} of foodsOf(file)) {
    if (at.number % foodsBetweenWords === 0) out.begin(`reading food ${at.number}`)
    const line = read.ok ? brandedLine(read.value) : read
    if (!line.ok) leftOut.leave(refusal(file, at, line.expected))
    else if (read.ok) {
      const bucket = Math.floor(Number(read.value.id) / idsPerBucket)
      parts.add(bucket, `${at.line}\t${at.number}\t${line.value}`)
    }
  }
  const writer = new LargeTableWriter(out.file, out.work, brandedColumns.join('\t'))
  try {
    out.begin('writing foods')
    for (const bucket of parts.buckets()) {
      // Lets a signal stop it.
      await nextTurn()
      writeBucket(file, parts.lines(bucket), writer)
    }
    out.begin('writing the index of names')
    return leftOut.imported(await writer.end())
  } finally {
    writer.close()
  }
}

function brandedLine(food: FdcFood): Parsed<string> {
  if (Number(food.id) >= idLimit) return refused(`a smaller \`fdcId\`, not \`${food.id}\``)
  if (food.amounts.size === 0) return refused(`figures of \`${food.name}\``)
  return fdcLine(food, brandedColumns)
}

function writeBucket(file: string, lines: Iterable<string>, writer: LargeTableWriter): void {
  const rows = Array.from(lines, (text) => {
    const [line = '', number = '', id = '', name = ''] = text.split('\t', 4)
    const row = text.slice(line.length + number.length + 2)
    return {id, name, line: row, at: {line: Number(line), number: Number(number)}}
  })
  let before = ''
  for (const {id, name, line, at} of rows.toSorted((a, b) => Number(a.id) - Number(b.id))) {
    if (id === before) throw refusal(file, at, again({id}))
    before = id
    writer.add({id: Number(id), name, line})
  }
}

function again({id}: Pick<FdcFood, 'id'>): string {
  return `each \`fdcId\` once, not \`${id}\` again`
}

type Place = Pick<ListedObject, 'line' | 'number'>

/** One object of the download as a food, or what is wrong with it. */
interface ReadFood {
  readonly read: Parsed<FdcFood>
  /** That foods of its list have. */
  readonly dataType: string
  readonly at: Place
}

/** The foods of a download, read as they are asked for. */
async function* foodsOf(file: string): AsyncIterable<ReadFood> {
  const reader = new ObjectsReader()
  let dataType: string | undefined
  for await (const text of textsOf(file)) {
    for (const told of reader.push(text)) {
      if (told.kind === 'fault') throw refusal(file, told, told.expected)
      dataType ??= dataTypeOf(file, reader.key ?? '')
      yield {read: fdcFoodOf(told.value, dataType), dataType, at: told}
    }
  }
  const fault: JsonFault | undefined = reader.end()
  if (fault) throw refusal(file, fault, fault.expected)
}

function dataTypeOf(file: string, key: string): string {
  const dataType = fdcLists.get(key)
  if (dataType !== undefined) return dataType
  throw new EnvironmentFailure(
    `${file} holds a list of ${key}, expected ${[...fdcLists.keys()].join(', ')}`,
    'Nothing was imported; these are the JSON downloads of FoodData Central that are read',
  )
}

function refusal(file: string, {line, number}: Place, expected: string): EnvironmentFailure {
  return new EnvironmentFailure(
    `${file}, line ${line}, food ${number}: expected ${expected}`,
    'Nothing was imported; the download may be cut off, or another than it says',
  )
}
