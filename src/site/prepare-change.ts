/**
 * I/O: everything a change of the site needs is put beside it, new content and the old files it
 * replaces, so that what is left to do takes no space and can be taken back. Files come one by one
 * and are not kept: a site is larger than memory may be.
 */

import {copyFileSync, linkSync, mkdirSync, renameSync, writeFileSync} from 'node:fs'
import path from 'node:path'
import {errorCode} from '../cookbook/environment-failure.ts'
import {type Manifest, manifestText} from './manifest.ts'
import {changeAt, goneSince, refuse, type Step} from './plan-change.ts'
import type {SiteFile} from './site-file.ts'
import {isSitePath} from './site-path.ts'
import {contentHash} from './standing.ts'
import {scrapPath, type WorkFolder} from './work-folder.ts'

/** Full paths below a prepared change. */
export function changeParts(change: string) {
  return {
    steps: path.join(change, 'steps.json'),
    manifest: path.join(change, 'manifest.json'),
    newFile: (slot: number) => path.join(change, 'new', String(slot)),
    oldFile: (slot: number) => path.join(change, 'old', String(slot)),
  }
}

/** What a change will do, or would have done. */
export interface Prepared {
  /** Nothing is to be done, and nothing was prepared. */
  readonly isSame: boolean
  readonly written: number
  readonly unchanged: number
  readonly removed: number
  /** Files of the last build that are needed no more but were changed by hand since: left alone. */
  readonly left: readonly string[]
  /** Of every file of the site. */
  readonly paths: Iterable<string>
}

/**
 * Fills a scrap folder and renames it to `ready`: the moment from which the change will happen.
 * Throws where a file of somebody else's stands in the way, before that moment.
 * @param last what the last build wrote
 * @param beforeCommit throws when the change must not happen after all
 */
export function prepareChange(
  work: WorkFolder,
  files: Iterable<SiteFile>,
  last: Manifest,
  beforeCommit: () => void,
): Prepared {
  const scrap = scrapPath(work)
  const parts = changeParts(scrap)
  makeScrap(scrap)
  const manifest = new Map<string, string>()
  const writes: Step[] = []
  const inTheWay: string[] = []
  for (const {path: where, content} of files) {
    // Content was checked long before; a path like this is a slip of a template.
    if (!isSitePath(where)) throw new Error(`The site cannot hold a file named ${where}`)
    if (manifest.has(where)) throw new Error(`Two files of the site are named ${where}`)
    const now = contentHash(content)
    manifest.set(where, now)
    const change = changeAt(work.site, where, now, last)
    if (change.kind === 'in the way') inTheWay.push(change.what)
    if (change.kind !== 'write') continue
    const slot = writes.length
    writeFileSync(parts.newFile(slot), content)
    if (change.isThere) keepCopy(path.join(work.site, where), parts.oldFile(slot))
    writes.push({path: where, ...(change.was !== undefined && {was: change.was}), now, slot})
  }
  refuse(inTheWay)
  const {removed, left} = goneSince(work.site, last, manifest)
  const removals = removed.map((one, index): Step => ({...one, slot: writes.length + index}))
  for (const {path: where, slot} of removals) {
    keepCopy(path.join(work.site, where), parts.oldFile(slot))
  }
  const steps = [...removals, ...writes]
  const text = manifestText(manifest)
  const isSame = steps.length === 0 && manifestText(last) === text
  if (!isSame) {
    // Flushed, so that a power cut after the rename leaves no change without its record.
    writeFileSync(parts.manifest, text, {flush: true})
    writeFileSync(parts.steps, JSON.stringify(steps), {flush: true})
    beforeCommit()
    renameSync(scrap, work.ready)
  }
  return {
    isSame,
    written: writes.length,
    unchanged: manifest.size - writes.length,
    removed: removals.length,
    left,
    paths: manifest.keys(),
  }
}

function makeScrap(scrap: string): void {
  const parts = changeParts(scrap)
  mkdirSync(path.dirname(parts.newFile(0)), {recursive: true})
  mkdirSync(path.dirname(parts.oldFile(0)))
}

/** A second name for a file, or a copy where the file system knows no second names. */
export function keepCopy(from: string, to: string): void {
  try {
    linkSync(from, to)
  } catch (error) {
    if (errorCode(error) === 'EEXIST') throw error
    copyFileSync(from, to)
  }
}
