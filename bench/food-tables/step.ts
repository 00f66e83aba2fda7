/** I/O: one measured step of bench/food-tables in a process of its own; prints what it used. */

import {readFileSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {importBranded} from '../../src/cli/import-branded.ts'
import {withWorkFolder} from '../../src/cli/import-files.ts'
import {LargeTable} from '../../src/cookbook/read-table-large.ts'
import {coreTable} from '../../src/food/core-table.ts'
import {importTable} from '../../src/food/import-table.ts'
import {NearestFoods} from '../../src/food/nearest-foods.ts'
import {peakMegabytes} from '../peak-memory.ts'
import {idOf} from './branded-download.ts'

const [step = '', folder = '', foods = '0'] = process.argv.slice(2)
const table = path.join(folder, 'branded.foods')

/** What a step makes is returned, so that its memory is counted. */
const steps: Readonly<Record<string, () => unknown>> = {
  nothing: () => undefined,
  'open the core table': () => coreTable('us'),
  'all foods of the core table': () => coreTable('us').foods(),
  'open 8,789 foods': () => importTable(national, 'national'),
  'all of 8,789 foods': () => [...importTable(national, 'national').table.foods()],
  'import branded foods': () =>
    withWorkFolder(table, (file, work) =>
      importBranded(path.join(folder, 'download'), {file, work, begin: () => undefined}),
    ),
  '100 rows by id': () =>
    withTable(async (open) => {
      for (let index = 0; index < 100; index++) {
        const id = String(idOf((index * 7_561) % Number(foods)))
        if ((await open.row(id)) === undefined) throw new Error(`No row ${id}`)
      }
    }),
  'one row by id': () => withTable((open) => open.row(String(idOf(Number(foods) - 1)))),
  'find: sweet oat biscuit': () => withTable((open) => found(open, 'sweet oat biscuit')),
  'find: swete lentl crakers': () => withTable((open) => found(open, 'swete lentl crakers')),
  'the nearest macros of all': () =>
    withTable(async (open) => {
      const wanted = coreTable('us').lookUp('peanut butter')
      if (!wanted) throw new Error('No peanut butter')
      const nearest = new NearestFoods(wanted.per100g, 5)
      for await (const {macros, food} of open.rowsByWeight()) nearest.addRow(macros, food)
      return nearest.nearest
    }),
}

const nationalFile = path.join(folder, 'national.tsv')
const national = step.includes('8,789') ? readFileSync(nationalFile, 'utf8') : ''

async function withTable<T>(ask: (open: LargeTable) => Promise<T>): Promise<T> {
  const open = await LargeTable.open(table)
  const answer = await ask(open)
  await open.close()
  return answer
}

async function found(open: LargeTable, written: string) {
  const foods = await open.find(written, 10)
  if (foods.length === 0) throw new Error(`Nothing found for ${written}`)
  return foods
}

const collect = globalThis.gc
collect?.()
const heapBefore = process.memoryUsage().heapUsed
const cpuBefore = process.cpuUsage()
const began = performance.now()
const kept = await steps[step]?.()
const wall = performance.now() - began
const {user, system} = process.cpuUsage(cpuBefore)
collect?.()
const heap = process.memoryUsage().heapUsed - heapBefore
const used = {
  wallMilliseconds: wall,
  cpuMilliseconds: (user + system) / 1000,
  keptMegabytes: heap / 1e6,
  peakMegabytes: peakMegabytes(),
  hasResult: kept !== undefined,
}
process.stdout.write(JSON.stringify(used))
