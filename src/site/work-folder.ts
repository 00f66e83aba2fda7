/**
 * For the I/O of the site folder: names inside `.scalepan/`, the one folder in it that is not
 * published. It holds the manifest of what the last build wrote, and a change of the site on its
 * way. The state of a change is the name of its folder, so that one rename moves it on and no
 * moment lies between two states.
 */

import {randomUUID} from 'node:crypto'
import path from 'node:path'

export const workFolderName = '.scalepan'

/** Beginning of the names of what nobody needs any more, or not yet. */
export const scrapPrefix = 'scrap-'

/** Full paths below the work folder of one site. */
export interface WorkFolder {
  /** The site folder, its own links resolved. */
  readonly site: string
  readonly folder: string
  readonly manifest: string
  /** What the site was made from; see receipt.ts. */
  readonly receipt: string
  readonly lock: string
  /** A change that is complete and is being carried out: rolled forward after a crash. */
  readonly ready: string
  /** A change that failed and is being taken back: rolled back after a crash. */
  readonly undoing: string
  /** Copies of pages that somebody had changed by hand when a build replaced them. */
  readonly changed: string
}

export function workFolder(site: string): WorkFolder {
  const folder = path.join(site, workFolderName)
  return {
    site,
    folder,
    manifest: path.join(folder, 'manifest.json'),
    receipt: path.join(folder, 'receipt.json'),
    lock: path.join(folder, 'lock'),
    ready: path.join(folder, 'ready'),
    undoing: path.join(folder, 'undoing'),
    changed: path.join(folder, 'changed'),
  }
}

/** A fresh name for what is being filled or emptied; the next build clears it away if left. */
export function scrapPath(work: WorkFolder): string {
  return path.join(work.folder, `${scrapPrefix}${randomUUID()}`)
}
