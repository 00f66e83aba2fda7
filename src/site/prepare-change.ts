/**
 * I/O: everything a change of the site needs is put beside it, new content and the old files it
 * replaces, so that what is left to do takes no space and can be taken back.
 */

import {copyFileSync, linkSync, mkdirSync, renameSync, writeFileSync} from 'node:fs'
import path from 'node:path'
import {errorCode} from '../cookbook/environment-failure.ts'
import {manifestText} from './manifest.ts'
import type {Plan} from './plan-change.ts'
import {standing} from './standing.ts'
import {scrapPath, type WorkFolder} from './work-folder.ts'

/** Full paths below a prepared change. */
export function changeParts(change: string) {
  return {
    steps: path.join(change, 'steps.json'),
    manifest: path.join(change, 'manifest.json'),
    newFile: (index: number) => path.join(change, 'new', String(index)),
    oldFile: (index: number) => path.join(change, 'old', String(index)),
  }
}

/**
 * Fills a scrap folder and renames it to `ready`: the moment from which the change will happen.
 * @param beforeCommit throws when the change must not happen after all
 */
export function prepareChange(work: WorkFolder, plan: Plan, beforeCommit: () => void): void {
  const scrap = scrapPath(work)
  const parts = changeParts(scrap)
  mkdirSync(path.dirname(parts.newFile(0)), {recursive: true})
  mkdirSync(path.dirname(parts.oldFile(0)))
  for (const [index, step] of plan.steps.entries()) {
    const content = plan.contents.get(step.path)
    // Flushed, so that a power cut after the rename does not leave a name without its content.
    if (content !== undefined) writeFileSync(parts.newFile(index), content, {flush: true})
    if (standing(work.site, step.path).kind === 'file') {
      keepCopy(path.join(work.site, step.path), parts.oldFile(index))
    }
  }
  writeFileSync(parts.manifest, manifestText(plan.manifest), {flush: true})
  writeFileSync(parts.steps, JSON.stringify(plan.steps), {flush: true})
  beforeCommit()
  renameSync(scrap, work.ready)
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
