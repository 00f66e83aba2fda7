/**
 * I/O: `npm run bench`: measures the command beside simpler programs and prints the ratios. What is
 * measured, and how to read it: bench/README.md.
 */

import {execFileSync} from 'node:child_process'
import {existsSync, mkdtempSync, rmSync} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import process from 'node:process'
import {parseArgs} from 'node:util'
import {bundleCommand} from '../test/cli/bundle-command.ts'
import {eleventy} from './generator.ts'
import {count} from './ratios.ts'
import {type Bench, runRound} from './run-round.ts'
import {surroundings} from './surroundings.ts'
import {tables} from './tables.ts'
import type {Round, Rounds} from './usage.ts'

const {values: options} = parseArgs({
  options: {
    sizes: {type: 'string', default: '100,1000,10000'},
    runs: {type: 'string', default: '3'},
    folder: {type: 'string', default: existsSync('/dev/shm') ? '/dev/shm' : tmpdir()},
    generator: {type: 'string'},
  },
})

const project = process.cwd()
const programs = path.dirname(path.resolve(process.argv[1] ?? ''))
const sizes = wholeNumbers('sizes', options.sizes, 20)
const [runs = 1] = wholeNumbers('runs', options.runs, 1)

const work = mkdtempSync(path.join(options.folder, 'scalepan-bench-'))
try {
  const bench: Bench = {
    programs: path.join(programs, 'programs'),
    command: bundleCommand(project, path.join(work, 'command')),
    work,
    onFailure(reason) {
      tell(reason)
      process.exitCode = 1
    },
    ...(options.generator !== undefined && {generator: eleventy(options.generator, work)}),
  }
  process.stdout.write(`${surroundings(project)}\n\n${tables(await measured(bench))}`)
} finally {
  rmSync(work, {recursive: true, force: true})
}

/** Every size in every round, so that what the machine does meanwhile meets all of them. */
async function measured(bench: Bench): Promise<Rounds> {
  for (const size of sizes) {
    tell(`writing a cookbook of ${count(size)} recipes`)
    execFileSync(process.execPath, [
      path.join(bench.programs, 'generate.js'),
      String(size),
      cookbookFolder(size),
    ])
  }
  const rounds = new Map<number, Round[]>(sizes.map((size) => [size, []]))
  for (let index = 0; index < runs; index++) {
    for (const [size, those] of rounds) {
      tell(`run ${index + 1} of ${runs}, ${count(size)} recipes`)
      those.push(await runRound(bench, cookbookFolder(size), index))
    }
  }
  return rounds
}

function cookbookFolder(size: number): string {
  return path.join(work, `cookbook-${size}`)
}

/** @param step every number has to be a multiple of it */
function wholeNumbers(name: string, text: string, step: number): readonly number[] {
  const numbers = text.split(',').map(Number)
  const wrong = numbers.find(
    (value) => !Number.isInteger(value) || value < step || value % step > 0,
  )
  if (wrong !== undefined) {
    throw new Error(`--${name} ${text}, expected multiples of ${step} with commas between them`)
  }
  return numbers
}

function tell(text: string): void {
  process.stderr.write(`${text}\n`)
}
