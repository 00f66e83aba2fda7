/** I/O: what stands at a path of the site folder, without following a link below it. */

import {createHash} from 'node:crypto'
import {lstatSync, readFileSync, type Stats} from 'node:fs'
import path from 'node:path'
import {errorCode} from '../cookbook/environment-failure.ts'

export type Standing =
  | {readonly kind: 'absent'}
  | {readonly kind: 'file'; readonly hash: string}
  /** Nothing can be written here without touching what is not ours. */
  | {
      readonly kind: 'obstacle'
      readonly path: string
      readonly what: 'a link' | 'a folder' | 'a file'
    }

/** SHA-256 of a file's content, hexadecimal. */
export function contentHash(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex')
}

/** @param relative path below `site`, with `/` */
export function standing(site: string, relative: string): Standing {
  const steps = relative.split('/')
  for (let depth = 1; depth < steps.length; depth++) {
    const parent = steps.slice(0, depth).join('/')
    const stats = lookedAt(path.join(site, parent))
    if (stats === undefined) return {kind: 'absent'}
    if (!stats.isDirectory()) return obstacle(parent, stats)
  }
  const full = path.join(site, relative)
  const stats = lookedAt(full)
  if (stats === undefined) return {kind: 'absent'}
  if (!stats.isFile()) return obstacle(relative, stats)
  return {kind: 'file', hash: contentHash(readFileSync(full))}
}

function obstacle(relative: string, stats: Stats): Standing {
  const what = stats.isSymbolicLink() ? 'a link' : stats.isDirectory() ? 'a folder' : 'a file'
  return {kind: 'obstacle', path: relative, what}
}

function lookedAt(full: string): Stats | undefined {
  try {
    return lstatSync(full)
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return undefined
    throw error
  }
}
