/** I/O: runs a program in a process of its own and measures it. */

import {spawn} from 'node:child_process'
import {readFileSync, rmSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import type {Usage} from './usage.ts'

export interface Program {
  /** Path of the module to run. */
  readonly module: string
  readonly args: readonly string[]
}

/** Where a program runs: nothing that an earlier run kept elsewhere is there. */
export interface Place {
  /** Compiled `programs/measured.ts`. */
  readonly measuring: string
  /** Working folder; home and caches lie in it. */
  readonly folder: string
}

/** Runs a program to its end; throws where it fails, with the last it said. */
export async function runProgram(
  {module, args}: Program,
  {measuring, folder}: Place,
): Promise<Usage> {
  const usageFile = path.join(folder, 'usage.json')
  const began = performance.now()
  const child = spawn(process.execPath, [measuring, usageFile, module, ...args], {
    cwd: folder,
    env: {PATH: process.env.PATH, HOME: folder, XDG_CACHE_HOME: path.join(folder, 'cache')},
    stdio: ['ignore', 'ignore', 'pipe'],
  })
  let said = ''
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    said = (said + text).slice(-2_000)
  })
  const end = await new Promise<number | NodeJS.Signals | null>((resolve, reject) => {
    child.once('error', reject)
    child.once('close', (code, signal) => resolve(code ?? signal))
  })
  const wallSeconds = (performance.now() - began) / 1000
  if (end !== 0) throw new Error(`${path.basename(module)} ended with ${end}: ${said}`)
  const {cpuSeconds, peakMegabytes} = JSON.parse(readFileSync(usageFile, 'utf8'))
  rmSync(usageFile)
  return {wallSeconds, cpuSeconds, peakMegabytes}
}
