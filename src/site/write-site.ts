/**
 * I/O: the site folder becomes the new site, or stays the old one.
 *
 * What is guaranteed, with every command that writes going through here:
 * - A build that ends with an error leaves every file of the site as it was.
 * - A build that is killed at any moment leaves, after the next `scalepan build` (even one that
 *   finds errors in the cookbook), either the whole old site or the whole new one. All content is
 *   written beside the site first; one rename commits the change; what follows are renames and
 *   removals that take no space, in one go, and are finished or taken back from the same record.
 *   Between the commit and the last rename, milliseconds, a reader may see pages of both.
 * - A file scalepan did not write is never replaced or removed. A file it did write and somebody
 *   changed since is kept: under `.scalepan/changed/` where a page takes its place, where it is
 *   otherwise.
 * - Files that are right already are not touched.
 * - Two builds at once follow each other, however long the first takes to make its pages; the later
 *   writer's site stays.
 * - No link below the site folder is followed. The site folder itself may be a link.
 *
 * After a power cut a page may be empty that had not reached the disk. The next build sees that it
 * is not what was written, and writes it again.
 */

import {existsSync, mkdirSync, readdirSync, realpathSync, rmSync} from 'node:fs'
import path from 'node:path'
import {diskReason, EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {carryOut, takeBack} from './carry-out.ts'
import {readManifest} from './manifest.ts'
import {type Prepared, prepareChange} from './prepare-change.ts'
import {type Receipt, standingReceipt, writeReceipt} from './receipt.ts'
import {removeIfEmpty} from './remove-if-empty.ts'
import type {SiteFile} from './site-file.ts'
import {type SiteLock, withSiteLock} from './site-lock.ts'
import {standing} from './standing.ts'
import {scrapPrefix, type WorkFolder, workFolder, workFolderName} from './work-folder.ts'

/** What a build did to the site folder. */
export interface SiteWritten {
  readonly written: number
  readonly unchanged: number
  readonly removed: number
  /** Files of earlier builds that are needed no more but were changed by hand: left in place. */
  readonly left: readonly string[]
  /** Copies of files that were changed by hand and have been replaced. */
  readonly setAside: readonly string[]
}

/** What an interrupted build had left behind: nothing, or a change now finished or taken back. */
export type Recovered = 'nothing' | 'finished' | 'taken back'

/**
 * Finishes or takes back what an interrupted build left; touches nothing where there is nothing.
 * Comes first in every build, so that the site is whole even when the build then finds errors.
 */
export async function recoverSite(folder: string): Promise<Recovered> {
  return onDisk(folder, async () => {
    if (!existsSync(folder)) return 'nothing'
    const work = workFolder(realpathSync(folder))
    if (!existsSync(work.ready) && !existsSync(work.undoing)) return 'nothing'
    return withSiteLock(work, () => recover(work).recovered)
  })
}

/** What a build from the same left here, where nothing was touched since; see `standingReceipt`. */
export function siteStanding(folder: string, key: string): ReturnType<typeof standingReceipt> {
  return existsSync(folder) ? standingReceipt(workFolder(realpathSync(folder)), key) : undefined
}

/**
 * Makes the site in `folder` consist of `files`, and of whatever else the writer keeps there.
 * @param files in any order; each is written and forgotten as it comes
 * @param receipt to be left with the site
 */
export async function writeSite(
  folder: string,
  files: Iterable<SiteFile>,
  receipt?: Receipt,
): Promise<SiteWritten> {
  return onDisk(folder, async () => {
    const isNew = !existsSync(folder)
    mkdirSync(folder, {recursive: true})
    const work = workFolder(realpathSync(folder))
    try {
      makeWorkFolder(work)
      return await withSiteLock(work, (lock) => write(work, files, receipt, lock))
    } finally {
      removeIfEmpty(work.folder)
      if (isNew) removeIfEmpty(work.site)
    }
  })
}

function write(
  work: WorkFolder,
  files: Iterable<SiteFile>,
  receipt: Receipt | undefined,
  lock: SiteLock,
): SiteWritten {
  const {setAside} = recover(work)
  const {isSame, paths, ...prepared} = preparedOrCleared(work, files, lock)
  if (!isSame) setAside.push(...carryOut(work))
  if (receipt) writeReceipt(work, receipt, paths)
  return {...prepared, setAside: setAside.map((copy) => path.relative(work.site, copy))}
}

/** Leaves no scraps where there is nothing to do or it cannot be done. */
function preparedOrCleared(
  work: WorkFolder,
  files: Iterable<SiteFile>,
  {assertHeld, goOn}: SiteLock,
): Prepared {
  let isReady = false
  try {
    const prepared = prepareChange(work, oneByOne(files, goOn), readManifest(work), assertHeld)
    isReady = !prepared.isSame
    return prepared
  } finally {
    if (!isReady) clearScraps(work)
  }
}

function* oneByOne(files: Iterable<SiteFile>, goOn: () => void): Iterable<SiteFile> {
  for (const file of files) {
    goOn()
    yield file
  }
}

function recover(work: WorkFolder): {recovered: Recovered; setAside: string[]} {
  clearScraps(work)
  if (existsSync(work.undoing)) {
    takeBack(work)
    return {recovered: 'taken back', setAside: []}
  }
  if (!existsSync(work.ready)) return {recovered: 'nothing', setAside: []}
  return {recovered: 'finished', setAside: carryOut(work)}
}

function clearScraps(work: WorkFolder): void {
  for (const name of readdirSync(work.folder)) {
    if (name.startsWith(scrapPrefix)) {
      rmSync(path.join(work.folder, name), {recursive: true, force: true})
    }
  }
}

function makeWorkFolder(work: WorkFolder): void {
  const found = standing(work.site, workFolderName)
  if (found.kind === 'absent') mkdirSync(work.folder)
  else if (found.kind === 'file' || found.what !== 'a folder') {
    throw new EnvironmentFailure(
      `${work.folder} is not a folder, expected the one scalepan keeps its notes in`,
      'Move it away, then build again',
    )
  }
}

async function onDisk<T>(folder: string, use: () => Promise<T>): Promise<T> {
  try {
    return await use()
  } catch (error) {
    if (error instanceof EnvironmentFailure) throw error
    const {ready, undoing} = workFolder(folder)
    const isUnfinished = existsSync(ready) || existsSync(undoing)
    throw new EnvironmentFailure(
      `Cannot write the site into ${folder}: ${diskReason(error)}`,
      isUnfinished
        ? 'The change stopped half way; mend the cause, then build again to finish it'
        : 'The last site is as it was; mend the cause, then build again',
    )
  }
}
