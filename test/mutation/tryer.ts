/** I/O: runs in a process of its own, beside the tests; the process that started it says what to try. */

import process from 'node:process'
import type {Answer, Asked, DryRun} from './asked.ts'
import {registered} from './test-stand-in.ts'

/** What mutated sources look at and write into; its names are the instrumenter's. */
interface Switches {
  activeMutant?: string | undefined
  currentTestId?: string | undefined
  hitCount?: number | undefined
  hitLimit?: number | undefined
  mutantCoverage?: {
    readonly static: Readonly<Record<string, number>>
    readonly perTest: Readonly<Record<string, Readonly<Record<string, number>>>>
  }
}

declare global {
  var __stryker__: Switches
}

globalThis.__stryker__ ??= {}
const switches = globalThis.__stryker__

process.on('message', (asked: Asked) => {
  answer(asked).then(
    (said) => process.send?.(said),
    (error: unknown) => {
      throw error
    },
  )
})
process.send?.({kind: 'ready'} satisfies Answer)

async function answer(asked: Asked): Promise<Answer> {
  return asked.kind === 'dry run' ? dryRun() : tried(asked)
}

async function dryRun(): Promise<DryRun> {
  const milliseconds: number[] = []
  const failed: {readonly name: string; readonly reason: string}[] = []
  for (const [index, {name}] of registered.entries()) {
    switches.currentTestId = String(index)
    const began = process.cpuUsage()
    const reason = await failure(index)
    const {user, system} = process.cpuUsage(began)
    milliseconds.push((user + system) / 1e3)
    if (reason !== undefined) failed.push({name, reason})
  }
  switches.currentTestId = undefined
  const coverage = switches.mutantCoverage
  return {
    kind: 'dry run',
    milliseconds,
    failed,
    names: registered.map(({name}) => name),
    onLoad: Object.keys(coverage?.static ?? {}),
    hits: Object.values(coverage?.perTest ?? {}).length === 0 ? {} : (coverage?.perTest ?? {}),
  }
}

/** Tests one after the other until one fails, which must be the mutant's doing. */
async function tried({mutant, tests, hitLimit}: Asked & {kind: 'mutant'}): Promise<Answer> {
  const isLoaded = switches.activeMutant === mutant
  for (const index of tests) {
    Object.assign(switches, {activeMutant: mutant, hitCount: 0, hitLimit})
    const reason = await failure(index)
    if (reason === undefined) continue
    if (isLoaded) return {kind: 'killed', by: index, reason}
    Object.assign(switches, {activeMutant: undefined, hitCount: undefined})
    // A test that goes on failing has kept something of the mutant: the process is spoilt.
    const isSpoilt = (await failure(index)) !== undefined
    return {kind: isSpoilt ? 'spoilt' : 'killed', by: index, reason}
  }
  switches.activeMutant = undefined
  return {kind: 'survived'}
}

async function failure(index: number): Promise<string | undefined> {
  try {
    await registered[index]?.run()
    return undefined
  } catch (error) {
    return error instanceof Error ? error.message : String(error)
  }
}
