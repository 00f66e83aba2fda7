/**
 * I/O: what a site was made from, so that a build from the same can see at a glance that there is
 * nothing to do. A receipt is believed only when it names the same sources and every file of the
 * site stands as it was left, the manifest too, which every change of the site replaces; whenever
 * anything is in doubt there is none. It may be deleted at any time.
 */

import {lstatSync, renameSync, writeFileSync} from 'node:fs'
import path from 'node:path'
import {errorCode} from '../cookbook/environment-failure.ts'
import {fieldOf, readJsonFile} from './json-file.ts'
import {scrapPath, type WorkFolder} from './work-folder.ts'

export interface Receipt {
  /** Names everything that the site follows from. */
  readonly key: string
  /** What the build told, to be told again; JSON. */
  readonly outcome: unknown
}

/**
 * Path below its folder, size in bytes, and when its content and anything about it last changed, in
 * milliseconds: the first can be set to whatever somebody likes, the second cannot.
 */
type Stamp = readonly [path: string, bytes: number, changedMs: number, touchedMs: number]

/**
 * Leaves a receipt where its stamps can be relied on. A disk that refuses it does no harm: the site
 * stands, and the next build does all again.
 * @param paths of the files that the build left, with `/`
 */
export function writeReceipt(work: WorkFolder, receipt: Receipt, paths: Iterable<string>): void {
  const files = [...paths].map((file) => stampOf(work.site, file))
  const manifest = stampOf(work.folder, path.basename(work.manifest))
  if (!manifest || !files.every((stamp) => stamp !== undefined)) return
  if (![manifest, ...files].some(isFine)) return
  const scrap = scrapPath(work)
  try {
    writeFileSync(scrap, JSON.stringify({...receipt, manifest, stamps: files}))
    renameSync(scrap, work.receipt)
  } catch (error) {
    if (errorCode(error) === undefined) throw error
  }
}

/**
 * Whether the clock of the disk tells less than a second. On one that does not, such as FAT's of
 * two seconds, a file that is changed right after the build looks as it did.
 */
function isFine([, , changedMs]: Stamp): boolean {
  return changedMs % 1000 !== 0
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
  if (!isStanding(work.folder, fieldOf(read, 'manifest'))) return undefined
  if (!stamps.every((stamp: unknown) => isStanding(work.site, stamp))) return undefined
  return {outcome: fieldOf(read, 'outcome'), files: stamps.length}
}

function isStanding(folder: string, stamp: unknown): boolean {
  if (!Array.isArray(stamp)) return false
  const [file, ...marks]: readonly unknown[] = stamp
  if (typeof file !== 'string') return false
  const [, ...now] = stampOf(folder, file) ?? []
  return now.length > 0 && now.every((mark, index) => mark === marks[index])
}

function stampOf(folder: string, file: string): Stamp | undefined {
  const stats = lstatSync(path.join(folder, file), {throwIfNoEntry: false})
  return stats?.isFile() ? [file, stats.size, stats.mtimeMs, stats.ctimeMs] : undefined
}
