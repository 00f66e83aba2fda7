/**
 * I/O: one build at a time writes into a site folder.
 *
 * The lock is a folder that comes and goes by rename with its holder's name already in it, so
 * there is no moment in which it is held by nobody.
 */

import {randomUUID} from 'node:crypto'
import {
  existsSync,
  mkdirSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import {hostname} from 'node:os'
import path from 'node:path'
import process from 'node:process'
import {EnvironmentFailure, errorCode} from '../cookbook/environment-failure.ts'
import {fieldOf, readJsonFile} from './json-file.ts'
import {scrapPath, type WorkFolder} from './work-folder.ts'

/** Milliseconds to wait for a sign of life of another build before giving up. */
const patienceMilliseconds = 10_000
const pauseMilliseconds = 50

/** Milliseconds between two signs of life. */
const signMilliseconds = 1000

interface Holder {
  readonly pid: number
  readonly host: string
  readonly token: string
}

/** A lock that is held. */
export interface SiteLock {
  /** Throws when it was taken over after all; for the moment before anything is changed. */
  readonly assertHeld: () => void
  /** A sign of life for builds that wait, to be given for every page: rendering takes minutes. */
  readonly goOn: () => void
}

/**
 * Runs `use` while no other build writes into the same site folder. A lock whose process is gone
 * from this machine is taken over; any other is waited for, as long as it shows signs of life.
 */
export async function withSiteLock<T>(work: WorkFolder, use: (lock: SiteLock) => T): Promise<T> {
  const token = randomUUID()
  await take(work, token)
  try {
    return use({assertHeld: () => assertHeld(work, token), goOn: signsOfLife(work.lock)})
  } finally {
    if (holder(work.lock)?.token === token) release(work)
  }
}

function signsOfLife(lock: string): () => void {
  let nextAt = Date.now() + signMilliseconds
  return () => {
    const now = Date.now()
    if (now < nextAt) return
    nextAt = now + signMilliseconds
    try {
      utimesSync(holderFile(lock), now / 1000, now / 1000)
    } catch (error) {
      // A lock that is lost is told before the change.
      if (errorCode(error) === undefined) throw error
    }
  }
}

/** Another one with each sign of life, and with each holder. */
function lastSign(lock: string): number | undefined {
  return statSync(holderFile(lock), {throwIfNoEntry: false})?.mtimeMs
}

async function take(work: WorkFolder, token: string): Promise<void> {
  let sign: number | undefined
  let giveUpAt = Date.now() + patienceMilliseconds
  while (!taken(work, token)) {
    const latest = lastSign(work.lock)
    if (latest !== sign) giveUpAt = Date.now() + patienceMilliseconds
    sign = latest
    if (Date.now() > giveUpAt) throw busy(work)
    if (isStale(work.lock)) takeOver(work)
    else await new Promise((resolve) => setTimeout(resolve, pauseMilliseconds))
  }
}

function taken(work: WorkFolder, token: string): boolean {
  const own: Holder = {pid: process.pid, host: hostname(), token}
  const scrap = scrapPath(work)
  try {
    mkdirSync(scrap)
    writeFileSync(holderFile(scrap), JSON.stringify(own))
    renameSync(scrap, work.lock)
    return true
  } catch (error) {
    rmSync(scrap, {recursive: true, force: true})
    // The build that has the lock may also have cleared the scrap away.
    if (existsSync(work.lock) || errorCode(error) === 'ENOENT') return false
    throw error
  }
}

function isStale(lock: string): boolean {
  const held = holder(lock)
  if (held === undefined) return existsSync(lock)
  if (held.host !== hostname()) return false
  // A lock with our own number is from an earlier life of it: containers hand out the same ones.
  return held.pid === process.pid || !isRunning(held.pid)
}

/**
 * Moves a stale lock out of the way. Two builds may find the same lock stale, and the slower one
 * then moves the faster one's fresh lock: it sees so and puts it back.
 */
function takeOver(work: WorkFolder): void {
  const moved = scrapPath(work)
  try {
    renameSync(work.lock, moved)
    if (isStale(moved)) rmSync(moved, {recursive: true, force: true})
    else renameSync(moved, work.lock)
  } catch (error) {
    if (errorCode(error) !== 'ENOENT') throw error
  }
}

function release(work: WorkFolder): void {
  const scrap = scrapPath(work)
  renameSync(work.lock, scrap)
  rmSync(scrap, {recursive: true, force: true})
}

function assertHeld(work: WorkFolder, token: string): void {
  if (holder(work.lock)?.token !== token) throw busy(work)
}

function busy(work: WorkFolder): EnvironmentFailure {
  const held = holder(work.lock)
  const who = held === undefined ? '' : ` (process ${held.pid} on ${held.host})`
  return new EnvironmentFailure(
    `Another build${who} is writing the site`,
    `Wait for it to end; if none is running, delete ${work.lock}`,
  )
}

function holder(lock: string): Holder | undefined {
  const read = readJsonFile(holderFile(lock))
  const [pid, host, token] = ['pid', 'host', 'token'].map((key) => fieldOf(read, key))
  return typeof pid === 'number' && typeof host === 'string' && typeof token === 'string'
    ? {pid, host, token}
    : undefined
}

function holderFile(lock: string): string {
  return path.join(lock, 'holder.json')
}

function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0)
  } catch (error) {
    // EPERM: it runs, under another name.
    return errorCode(error) === 'EPERM'
  }
}
