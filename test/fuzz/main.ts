/**
 * I/O: `npm run fuzz -- --minutes 10`: slips of all kinds for as long as is said. What breaks
 * something is printed as small as it can be made; put it into corpus/found/<target>/.
 */

import process from 'node:process'
import {parseArgs} from 'node:util'
import fc from 'fast-check'
import {slipped} from './slips.ts'
import {targets} from './targets.ts'

const {values: options} = parseArgs({
  options: {
    minutes: {type: 'string', default: '1'},
    seed: {type: 'string', default: '1'},
    only: {type: 'string', default: ''},
  },
})

const end = performance.now() + Number(options.minutes) * 60_000
const chosen = targets.filter(({name}) => name.startsWith(options.only))
const runs = new Map<string, number>()
const broken = new Map<string, string>()

for (let seed = Number(options.seed); performance.now() < end; seed++) {
  for (const {name, texts, holds} of chosen) {
    const details = fc.check(fc.property(slipped(texts, 8), holds), {seed, numRuns: 50})
    runs.set(name, (runs.get(name) ?? 0) + details.numRuns)
    if (!details.failed) continue
    const reason = String(details.errorInstance).split('\n')[0] ?? ''
    // The same fault is found again and again; its first words tell it from others.
    const kind = `${name}: ${reason.slice(0, 60)}`
    if (broken.has(kind)) continue
    broken.set(kind, JSON.stringify(details.counterexample))
    process.stdout.write(`${kind}\n  seed ${seed}: ${JSON.stringify(details.counterexample)}\n`)
    process.stdout.write(`  ${String(details.errorInstance).slice(0, 1000)}\n`)
  }
}

for (const [name, count] of runs) process.stdout.write(`${name}: ${count}\n`)
process.exitCode = broken.size > 0 ? 1 : 0
