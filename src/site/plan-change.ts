/** I/O (reads only): what has to change on disk for one path of the site to be the new one. */

import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {Manifest} from './manifest.ts'
import {standing} from './standing.ts'

/** One file that changes. */
export interface Step {
  /** Below the site, with `/`. */
  readonly path: string
  /** Hash of what the last build wrote there; absent where it wrote nothing. */
  readonly was?: string
  /** Hash of what is to stand there; absent where the file goes. */
  readonly now?: string
  /** Names the new file and the old one while they wait. */
  readonly slot: number
}

export type Change =
  /** It is right already. */
  | {readonly kind: 'none'}
  /** @property isThere a file stands there now */
  | {readonly kind: 'write'; readonly isThere: boolean; readonly was?: string}
  /** Somebody else's stands there, which is never overwritten. */
  | {readonly kind: 'in the way'; readonly what: string}

/** @param now hash of what is to stand at the path */
export function changeAt(site: string, path: string, now: string, last: Manifest): Change {
  const found = standing(site, path)
  const was = last.get(path)
  if (found.kind === 'file' && found.hash === now) return {kind: 'none'}
  if (found.kind === 'obstacle') return {kind: 'in the way', what: `${found.path} (${found.what})`}
  const isThere = found.kind === 'file'
  if (was === undefined)
    return isThere ? {kind: 'in the way', what: path} : {kind: 'write', isThere}
  return {kind: 'write', isThere, was}
}

/** Files of the last build that are needed no more. */
export interface Gone {
  readonly removed: readonly {readonly path: string; readonly was: string}[]
  /** Changed by hand since: left alone. */
  readonly left: readonly string[]
}

export function goneSince(site: string, last: Manifest, next: Manifest): Gone {
  const removed: {path: string; was: string}[] = []
  const left: string[] = []
  for (const [path, was] of last) {
    if (next.has(path)) continue
    const found = standing(site, path)
    if (found.kind === 'file' && found.hash === was) removed.push({path, was})
    else if (found.kind !== 'absent') left.push(path)
  }
  return {removed, left}
}

export function refuse(inTheWay: readonly string[]): void {
  if (inTheWay.length === 0) return
  const named = [...new Set(inTheWay)]
  const shown = named.slice(0, 5).join(', ')
  const more = named.length > 5 ? ` and ${named.length - 5} more` : ''
  throw new EnvironmentFailure(
    `In the site folder stand files that scalepan did not write: ${shown}${more}`,
    'Move them away or build into another folder with `--site DIR`; nothing was changed',
  )
}
