/**
 * I/O: a prepared change is carried out or taken back. Each step looks at the disk before it acts,
 * so both can be begun again after a crash at any point.
 */

import {existsSync, mkdirSync, renameSync, rmSync, unlinkSync} from 'node:fs'
import path from 'node:path'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {fieldOf, readJsonFile} from './json-file.ts'
import type {Step} from './plan-change.ts'
import {changeParts, keepCopy} from './prepare-change.ts'
import {removeIfEmpty} from './remove-if-empty.ts'
import {isSitePath} from './site-path.ts'
import {standing} from './standing.ts'
import {scrapPath, type WorkFolder} from './work-folder.ts'

/**
 * Makes the site the new one; takes everything back and throws when a step fails.
 * @returns files that somebody had changed by hand and that were replaced: their copies' paths
 */
export function carryOut(work: WorkFolder): string[] {
  const parts = changeParts(work.ready)
  const steps = readSteps(parts.steps)
  const setAside: string[] = []
  try {
    for (const step of steps) setAside.push(...doStep(work, step))
    if (existsSync(parts.manifest)) renameSync(parts.manifest, work.manifest)
  } catch (error) {
    renameSync(work.ready, work.undoing)
    takeBack(work)
    throw error
  }
  removeEmptyFolders(work, steps)
  discard(work, work.ready)
  return setAside
}

/** Makes the site the old one again. */
export function takeBack(work: WorkFolder): void {
  const steps = readSteps(changeParts(work.undoing).steps)
  for (const step of steps) undoStep(work, step)
  removeEmptyFolders(work, steps)
  discard(work, work.undoing)
}

function doStep(work: WorkFolder, step: Step): string[] {
  const target = path.join(work.site, step.path)
  const found = standing(work.site, step.path)
  if (found.kind === 'obstacle') throw inTheWay(found)
  if (step.now === undefined) {
    if (found.kind === 'file' && found.hash === step.was) unlinkSync(target)
    return []
  }
  const prepared = changeParts(work.ready).newFile(step.slot)
  if (!existsSync(prepared)) return []
  const isForeign = found.kind === 'file' && found.hash !== step.was && found.hash !== step.now
  const setAside = isForeign ? [copyAside(work, step.path)] : []
  mkdirSync(path.dirname(target), {recursive: true})
  renameSync(prepared, target)
  return setAside
}

function undoStep(work: WorkFolder, step: Step): void {
  const target = path.join(work.site, step.path)
  const old = changeParts(work.undoing).oldFile(step.slot)
  const found = standing(work.site, step.path)
  const isDone = found.kind === 'absent' || (found.kind === 'file' && found.hash === step.now)
  if (isDone && existsSync(old)) renameSync(old, target)
  else if (isDone && found.kind === 'file') unlinkSync(target)
}

/** Keeps what somebody made of a page under `changed/`, never over an earlier copy. */
function copyAside(work: WorkFolder, relative: string): string {
  for (let copy = 0; ; copy++) {
    const aside = path.join(work.changed, copy === 0 ? relative : `${relative}.${copy}`)
    if (existsSync(aside)) continue
    mkdirSync(path.dirname(aside), {recursive: true})
    keepCopy(path.join(work.site, relative), aside)
    return aside
  }
}

/**
 * Removes the folders that steps have left empty. Comes last: taking a step back must not need a
 * new folder, which a full disk would refuse.
 */
function removeEmptyFolders(work: WorkFolder, steps: readonly Step[]): void {
  for (const step of steps) {
    if (standing(work.site, step.path).kind !== 'absent') continue
    const above = step.path.split('/').slice(0, -1)
    for (let depth = above.length; depth > 0; depth--) {
      const folder = above.slice(0, depth).join('/')
      const found = standing(work.site, folder)
      if (found.kind === 'obstacle' && found.what === 'a folder') {
        removeIfEmpty(path.join(work.site, folder))
      }
    }
  }
}

/** Takes a change's folder out of its state in one rename, then clears it away. */
function discard(work: WorkFolder, change: string): void {
  const scrap = scrapPath(work)
  renameSync(change, scrap)
  rmSync(scrap, {recursive: true, force: true})
}

function readSteps(full: string): Step[] {
  const read = readJsonFile(full)
  if (!Array.isArray(read)) throw tampered(full)
  return read.map((step: unknown) => {
    const [where, was, now, slot] = ['path', 'was', 'now', 'slot'].map((key) => fieldOf(step, key))
    if (typeof where !== 'string' || !isSitePath(where)) throw tampered(full)
    if (typeof slot !== 'number') throw tampered(full)
    return {
      path: where,
      slot,
      ...(typeof was === 'string' && {was}),
      ...(typeof now === 'string' && {now}),
    }
  })
}

function inTheWay(found: {path: string; what: string}): EnvironmentFailure {
  return new EnvironmentFailure(
    `In the site folder stands ${found.what} where a file of the site belongs: ${found.path}`,
    'Move it away, then build again; nothing was changed',
  )
}

function tampered(full: string): EnvironmentFailure {
  return new EnvironmentFailure(
    `${full} cannot be understood, expected the change an interrupted build left`,
    'Empty the site folder but for your own files, then build again',
  )
}
