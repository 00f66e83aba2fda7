/** I/O: one run of every program on one cookbook. */

import {appendFileSync, cpSync, mkdirSync, mkdtempSync, rmSync} from 'node:fs'
import path from 'node:path'
import {type Program, runProgram} from './run-program.ts'
import {type ProgramName, programNames, type Round, type Usage} from './usage.ts'

/** Where things lie. */
export interface Bench {
  /** Folder of the compiled programs. */
  readonly programs: string
  /** Entry of the bundled command. */
  readonly command: string
  /** Folder that the runs have their own folders in: a memory file system, if there is one. */
  readonly work: string
  /** Is told why a program did not run to its end; the others run all the same. */
  readonly onFailure: (reason: string) => void
  /** Entry and configuration of a general-purpose site generator, where one is measured. */
  readonly generator?: {readonly entry: string; readonly config: string}
}

/**
 * Runs every program once, in folders that are fresh: the cookbook is copied, the site is new, and
 * so is the home folder. A build without a change and one after an edit follow the cold one, into
 * its site.
 * @param cookbook folder of the generated cookbook; not touched
 * @param index turns the order of the programs, so that none is always the first
 */
export async function runRound(bench: Bench, cookbook: string, index: number): Promise<Round> {
  const folder = mkdtempSync(path.join(bench.work, 'round-'))
  const content = path.join(folder, 'content')
  const usages = new Map<ProgramName, Usage>()
  async function measure(name: ProgramName, program: Program | undefined): Promise<void> {
    const place = {measuring: path.join(bench.programs, 'measured.js'), folder}
    if (program === undefined) return
    try {
      usages.set(name, await runProgram(program, place))
    } catch (error) {
      bench.onFailure(`${name}: ${error instanceof Error ? error.message : String(error)}`)
    }
  }
  try {
    cpSync(cookbook, content, {recursive: true})
    const programs = programsFor(bench, folder)
    for (const name of turned(independent, index)) {
      await measure(name, programs[name])
      if (name !== 'cold') continue
      await measure('unchanged', programs.cold)
      appendFileSync(path.join(content, `recipes/dish-${index}.md`), oneMoreSentence)
      await measure('one edit', programs.cold)
    }
  } finally {
    rmSync(folder, {recursive: true, force: true})
  }
  return new Map(
    programNames.flatMap((name) => {
      const usage = usages.get(name)
      return usage ? [[name, usage]] : []
    }),
  )
}

/** Programs that need no other one before them. */
const independent = [
  'E',
  'R',
  'B',
  'G',
  'version',
  'cold',
  'check',
] as const satisfies readonly ProgramName[]
type Independent = (typeof independent)[number]

const oneMoreSentence = '\nIt keeps its colour better under a lid.\n'

function programsFor(
  {programs, command, generator}: Bench,
  folder: string,
): Readonly<Record<Independent, Program | undefined>> {
  const content = path.join(folder, 'content')
  const own = (name: string, ...args: readonly string[]) => ({
    module: path.join(programs, `${name}.js`),
    args,
  })
  const scalepan = (...args: readonly string[]) => ({module: command, args})
  const site = (name: string) => {
    const into = path.join(folder, name)
    mkdirSync(into)
    return into
  }
  return {
    E: own('empty'),
    R: own('read-only', content),
    B: own('bare-pipeline', content, site('bare-site')),
    G: generator && {
      module: generator.entry,
      args: [`--config=${generator.config}`, '--input=content', '--output=other-site', '--quiet'],
    },
    version: scalepan('--version'),
    check: scalepan('check', '--content', content),
    cold: scalepan('build', '--content', content, '--site', site('site')),
  }
}

function turned<Value>(values: readonly Value[], by: number): readonly Value[] {
  const at = by % values.length
  return [...values.slice(at), ...values.slice(0, at)]
}
