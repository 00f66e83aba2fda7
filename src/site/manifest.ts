/** I/O: the list of files the last build wrote, which alone may be replaced or removed. */

import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {fieldOf, readJsonFile} from './json-file.ts'
import {isSitePath} from './site-path.ts'
import type {WorkFolder} from './work-folder.ts'

/** Hash of the content as written, by path below the site. */
export type Manifest = ReadonlyMap<string, string>

/** The manifest as its file holds it: in path order, so that the same site gives the same bytes. */
export function manifestText(manifest: Manifest): string {
  const inOrder = [...manifest].toSorted(([left], [right]) => (left < right ? -1 : 1))
  return `${JSON.stringify({version: 1, files: Object.fromEntries(inOrder)}, undefined, 2)}\n`
}

/** The manifest of the last build; empty where there was none. */
export function readManifest(work: WorkFolder): Manifest {
  const read = readJsonFile(work.manifest)
  if (read === undefined) return new Map()
  const manifest = parsedManifest(fieldOf(read, 'files'))
  if (manifest !== undefined) return manifest
  throw new EnvironmentFailure(
    `${work.manifest} cannot be understood, expected the list of files the last build wrote`,
    'Empty the site folder but for your own files, then build again',
  )
}

function parsedManifest(files: unknown): Manifest | undefined {
  if (typeof files !== 'object' || files === null) return undefined
  const manifest = new Map<string, string>()
  for (const [path, hash] of Object.entries(files)) {
    if (typeof hash !== 'string' || !isSitePath(path)) return undefined
    manifest.set(path, hash)
  }
  return manifest
}
