/**
 * I/O: `npm run bench:tables`: what the built-in table, a national one and a download of branded foods
 * take, each step in a process of its own. How to read it: bench/README.md.
 */

import {execFileSync} from 'node:child_process'
import {existsSync, mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import process from 'node:process'
import {parseArgs} from 'node:util'
import {tableColumns} from '../../src/food/table-columns.ts'
import {seededRandom} from '../../test/seeded-random.ts'
import {median} from '../ratios.ts'
import {writeBrandedDownload} from './branded-download.ts'

const {values: options} = parseArgs({
  options: {
    foods: {type: 'string', default: '500000'},
    runs: {type: 'string', default: '3'},
    folder: {type: 'string', default: existsSync('/dev/shm') ? '/dev/shm' : tmpdir()},
  },
})

const step = path.join(path.dirname(path.resolve(process.argv[1] ?? '')), 'step.js')

const steps = [
  'nothing',
  'open the core table',
  'all foods of the core table',
  'open 8,789 foods',
  'all of 8,789 foods',
  'import branded foods',
  'one row by id',
  '100 rows by id',
  'find: sweet oat biscuit',
  'find: swete lentl crakers',
  'the nearest macros of all',
]

interface Used {
  readonly wallMilliseconds: number
  readonly cpuMilliseconds: number
  readonly keptMegabytes: number
  readonly peakMegabytes: number
}

const folder = mkdtempSync(path.join(options.folder, 'scalepan-tables-'))
try {
  const foods = Number(options.foods)
  const download = path.join(folder, 'download')
  mkdirSync(download)
  writeBrandedDownload(download, foods)
  writeFileSync(path.join(folder, 'national.tsv'), nationalTable())
  print(`${foods} branded foods; median of ${options.runs} runs, each a process of its own\n`)
  print(
    '| step | wall ms | CPU ms | heap kept MB | process peak MiB |\n| --- | --- | --- | --- | --- |\n',
  )
  for (const name of steps) {
    const runs = Array.from({length: Number(options.runs)}, () => used(name, folder, foods))
    const of = (key: keyof Used, digits: number): string =>
      median(runs.map((run) => run[key])).toFixed(digits)
    print(
      `| ${name} | ${of('wallMilliseconds', 1)} | ${of('cpuMilliseconds', 1)} | ${of('keptMegabytes', 2)} | ${of('peakMegabytes', 0)} |\n`,
    )
  }
  const bytes = statSync(path.join(folder, 'branded.foods')).size
  const from = ['food', 'branded_food', 'food_nutrient'].map(
    (table) => statSync(path.join(download, `${table}.csv`)).size,
  )
  const sum = from.reduce((total, size) => total + size, 0)
  print(
    `\nThe download has ${(sum / 1e6).toFixed(0)} MB, the table ${(bytes / 1e6).toFixed(0)} MB\n`,
  )
} finally {
  rmSync(folder, {recursive: true})
}

function used(name: string, within: string, foods: number): Used {
  const args = ['--expose-gc', step, name, within, String(foods)]
  const {wallMilliseconds, cpuMilliseconds, keptMegabytes, peakMegabytes} = JSON.parse(
    execFileSync(process.execPath, args, {encoding: 'utf8'}),
  )
  return {wallMilliseconds, cpuMilliseconds, keptMegabytes, peakMegabytes}
}

/** As many rows as USDA SR28 has, a fifth of the figures blank; numbers invented. */
function nationalTable(): string {
  const random = seededRandom(28)
  const columns = tableColumns.filter((column) => !column.startsWith('serving'))
  const words = [
    'Barley',
    'ground',
    'cooked',
    'drained',
    'with salt',
    'Leek',
    'raw',
    'bulb and leaf',
  ]
  const rows = Array.from({length: 8_789}, (_, index) => {
    const name = Array.from({length: 5}, () => words[Math.floor(random() * words.length)])
    const cells = columns.map((column) => {
      if (column === 'group') return 'vegetables'
      return random() < 0.2 ? '' : (random() * 90).toFixed(2)
    })
    return [10_000 + index, name.join(', '), ...cells].join('\t')
  })
  return `${[['id', 'name', ...columns].join('\t'), ...rows].join('\n')}\n`
}

function print(text: string): void {
  process.stdout.write(text)
}
