/** I/O (reads only): what has to change on disk for the site to be the new one. */

import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {Manifest} from './manifest.ts'
import type {SiteFile} from './site-file.ts'
import {isSitePath} from './site-path.ts'
import {contentHash, type Standing, standing} from './standing.ts'

/** One file that changes; its place in the list of steps is its name while it waits. */
export interface Step {
  /** Below the site, with `/`. */
  readonly path: string
  /** Hash of what the last build wrote there; absent where it wrote nothing. */
  readonly was?: string
  /** Hash of what is to stand there; absent where the file goes. */
  readonly now?: string
}

export interface Plan {
  readonly steps: readonly Step[]
  /** New content by path, for the steps that write. */
  readonly contents: ReadonlyMap<string, SiteFile['content']>
  readonly manifest: Manifest
  /** Files that are as they should be already. */
  readonly unchanged: number
  /** Files of the last build that are needed no more but were changed by hand since: left alone. */
  readonly left: readonly string[]
}

/**
 * Compares the disk with the site to be. Throws where a file of somebody else's stands in the way:
 * it is never overwritten.
 */
export function planChange(site: string, files: readonly SiteFile[], last: Manifest): Plan {
  const steps: Step[] = []
  const contents = new Map<string, SiteFile['content']>()
  const manifest = new Map<string, string>()
  const inTheWay: string[] = []
  for (const {path, content} of files) {
    // Content was checked long before; a path like this is a slip of a template.
    if (!isSitePath(path)) throw new Error(`The site cannot hold a file named ${path}`)
    if (manifest.has(path)) throw new Error(`Two files of the site are named ${path}`)
    const now = contentHash(content)
    manifest.set(path, now)
    const found = standing(site, path)
    const was = last.get(path)
    if (found.kind === 'file' && found.hash === now) continue
    if (found.kind === 'obstacle') inTheWay.push(`${found.path} (${found.what})`)
    else if (found.kind === 'file' && was === undefined) inTheWay.push(path)
    else steps.push(was === undefined ? {path, now} : {path, was, now})
    contents.set(path, content)
  }
  refuse(inTheWay)
  const unchanged = manifest.size - steps.length
  const {removals, left} = gone(site, last, manifest)
  return {steps: [...removals, ...steps], contents, manifest, unchanged, left}
}

function gone(site: string, last: Manifest, next: Manifest) {
  const removals: Step[] = []
  const left: string[] = []
  for (const [path, was] of last) {
    if (next.has(path)) continue
    const found: Standing = standing(site, path)
    if (found.kind === 'file' && found.hash === was) removals.push({path, was})
    else if (found.kind !== 'absent') left.push(path)
  }
  return {removals, left}
}

function refuse(inTheWay: readonly string[]): void {
  if (inTheWay.length === 0) return
  const named = [...new Set(inTheWay)]
  const shown = named.slice(0, 5).join(', ')
  const more = named.length > 5 ? ` and ${named.length - 5} more` : ''
  throw new EnvironmentFailure(
    `In the site folder stand files that scalepan did not write: ${shown}${more}`,
    'Move them away or build into another folder with `--site DIR`; nothing was changed',
  )
}
