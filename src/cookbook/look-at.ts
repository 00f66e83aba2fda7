/** I/O: what a path in the cookbook folder is, without ever following a link out of it. */

import {lstatSync, realpathSync, type Stats, statSync} from 'node:fs'
import path from 'node:path'
import {errorCode} from './environment-failure.ts'

export type Looked =
  | {readonly kind: 'file'; readonly bytes: number}
  | {readonly kind: 'folder'}
  | {readonly kind: 'absent'}
  | {readonly kind: 'refused'; readonly why: string}

/**
 * @param root the cookbook folder with its own links resolved
 * @param relative path below it, with `/`
 * @returns what stands there; a link to a file inside the folder counts as that file, every other
 *   link is refused, and so is what is neither file nor folder (reading a pipe would never end)
 */
export function lookAt(root: string, relative: string): Looked {
  const full = path.join(root, relative)
  try {
    const own = lstatSync(full)
    if (!own.isSymbolicLink()) return looked(own)
    const target = path.relative(root, realpathSync(full))
    const leavesRoot = target.split(path.sep)[0] === '..' || path.isAbsolute(target)
    if (leavesRoot) return {kind: 'refused', why: 'a link that leads out of the cookbook folder'}
    const behind = statSync(full)
    return behind.isFile() ? looked(behind) : {kind: 'refused', why: 'a link to a folder'}
  } catch (error) {
    const code = errorCode(error)
    if (code === 'ELOOP') return {kind: 'refused', why: 'a link that leads in a circle'}
    if (code !== 'ENOENT') throw error
    return isLink(full) ? {kind: 'refused', why: 'a link that leads nowhere'} : {kind: 'absent'}
  }
}

function looked(stats: Stats): Looked {
  if (stats.isFile()) return {kind: 'file', bytes: stats.size}
  return stats.isDirectory()
    ? {kind: 'folder'}
    : {kind: 'refused', why: 'neither a file nor a folder'}
}

function isLink(full: string): boolean {
  try {
    return lstatSync(full).isSymbolicLink()
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return false
    throw error
  }
}
