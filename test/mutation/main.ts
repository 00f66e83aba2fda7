/**
 * I/O: `npm run mutation`: changes src/nutrition and src/check in one place at a time and asks
 * whether any test notices. How to read it: docs/reliability.md.
 */

import {mkdirSync, readdirSync, writeFileSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {parseArgs} from 'node:util'
import {seededRandom} from '../seeded-random.ts'
import type {DryRun} from './asked.ts'
import {MutantProcess} from './mutant-process.ts'
import {type Mutant, mutate} from './mutants.ts'
import {report} from './report.ts'
import {bundleTests} from './tests-in-one.ts'
import {Trial, type Tried} from './trial.ts'

const {values: options} = parseArgs({
  options: {
    only: {type: 'string', default: 'src/nutrition,src/check'},
    tests: {type: 'string'},
    sample: {type: 'string', default: '1'},
    seed: {type: 'string', default: '1'},
    'on-load': {type: 'string', default: '1'},
  },
})

/** Texts and examples that are made of other files, or hold nothing that runs. */
const notMutated = /\/rule-examples?\.ts$/u

/** Tests of what depends on these sources; those of reading, units and foods never meet them. */
const run =
  /^test\/(?:(?:nutrition|check|report|shopping)\/|fixtures\.|templates\/(?:declaration|claims|cautions)\.|reference\/(?:retention|yields|poured|energy|percent))/u

const project = process.cwd()
const work = path.join(project, 'node_modules/.cache/scalepan-mutation')
mkdirSync(work, {recursive: true})

const only = options.only.split(',')
const sources = filesBelow('src').filter(
  (file) => only.some((part) => file.startsWith(part)) && !notMutated.test(file),
)
const wanted = options.tests?.split(',')
const tests = filesBelow('test').filter(
  (file) =>
    file.endsWith('.test.ts') &&
    run.test(file) &&
    (wanted === undefined || wanted.some((part) => file.startsWith(part))),
)

const {mutants, texts} = await mutate(project, sources)
const module = path.join(work, 'tests.mjs')
await bundleTests({project, tests, mutated: texts, outfile: module})
const child = new MutantProcess(module)
try {
  const dry = await dryRun()
  const chosen = sampled(mutants, new Set(dry.onLoad))
  const trial = new Trial(child, dry)
  const tried: Tried[] = []
  for (const mutant of chosen) {
    tried.push(await trial.of(mutant))
    if (tried.length % 25 === 0 || tried.length === chosen.length) {
      process.stderr.write(`${tried.length} of ${chosen.length}\n`)
      const text = report(tried, {mutants: mutants.length, tests: trial.testCount})
      writeFileSync(path.join(work, 'report.md'), text)
    }
  }
  process.stdout.write(`See ${path.join(work, 'report.md')}\n`)
} finally {
  child.end()
}

async function dryRun(): Promise<DryRun> {
  const answer = await child.ask({kind: 'dry run'})
  if (answer?.kind !== 'dry run') throw new Error('The tests do not run')
  for (const {name, reason} of answer.failed) {
    process.stderr.write(`Left out, as it fails without a mutant: ${name}: ${reason}\n`)
  }
  return answer
}

/**
 * One mutant in so many, by chance and in an order of chance, so that a run that is ended early has
 * tried a fair sample. Those met on loading, which take a process each, have their own share.
 */
function sampled(all: readonly Mutant[], onLoad: ReadonlySet<string>): readonly Mutant[] {
  const random = seededRandom(Number(options.seed))
  const [share, shareOnLoad] = [Number(options.sample), Number(options['on-load'])]
  return all
    .map((mutant) => ({mutant, share: random(), place: random()}))
    .filter(({mutant: {id}, share: part}) => part * (onLoad.has(id) ? shareOnLoad : share) < 1)
    .toSorted((left, right) => left.place - right.place)
    .map(({mutant}) => mutant)
}

function filesBelow(folder: string): readonly string[] {
  return readdirSync(path.join(project, folder), {recursive: true, encoding: 'utf8'})
    .map((name) => `${folder}/${name.replaceAll(path.sep, '/')}`)
    .filter((file) => file.endsWith('.ts'))
    .toSorted()
}
