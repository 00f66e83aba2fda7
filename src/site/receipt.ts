/**
 * I/O: what a site was made from, so that a build from the same can see at a glance that there is
 * nothing to do. A receipt is believed only when it names the same sources and every file of the
 * site stands as it was left; whenever anything is in doubt there is none. It may be deleted at
 * any time.
 */

import {lstatSync, renameSync, writeFileSync} from 'node:fs'
import path from 'node:path'
import {fieldOf, readJsonFile} from './json-file.ts'
import {scrapPath, type WorkFolder} from './work-folder.ts'

export interface Receipt {
  /** Names everything that the site follows from. */
  readonly key: string
  /** What the build told, to be told again; JSON. */
  readonly outcome: unknown
}

/** Path below the site, size in bytes, time of the last change in milliseconds. */
type Stamp = readonly [path: string, bytes: number, changedMs: number]

/** @param paths of the files that the build left, with `/` */
export function writeReceipt(work: WorkFolder, receipt: Receipt, paths: Iterable<string>): void {
  const stamps = Array.from(paths, (file) => stampOf(work.site, file))
  if (!stamps.every((stamp) => stamp !== undefined)) return
  const scrap = scrapPath(work)
  writeFileSync(scrap, JSON.stringify({...receipt, stamps}))
  renameSync(scrap, work.receipt)
}

/**
 * What the last build told, where it was made from the same and its files stand as it left them.
 * @returns how many files there are, too; undefined where all has to be done again
 */
export function standingReceipt(
  work: WorkFolder,
  key: string,
): {readonly outcome: unknown; readonly files: number} | undefined {
  const read = readJsonFile(work.receipt)
  const stamps = fieldOf(read, 'stamps')
  if (fieldOf(read, 'key') !== key || !Array.isArray(stamps)) return undefined
  if (!stamps.every((stamp: unknown) => isStanding(work.site, stamp))) return undefined
  return {outcome: fieldOf(read, 'outcome'), files: stamps.length}
}

function isStanding(site: string, stamp: unknown): boolean {
  if (!Array.isArray(stamp)) return false
  const [file, bytes, changedMs]: readonly unknown[] = stamp
  if (typeof file !== 'string') return false
  const now = stampOf(site, file)
  return now !== undefined && now[1] === bytes && now[2] === changedMs
}

function stampOf(site: string, file: string): Stamp | undefined {
  const stats = lstatSync(path.join(site, file), {throwIfNoEntry: false})
  return stats?.isFile() ? [file, stats.size, stats.mtimeMs] : undefined
}
