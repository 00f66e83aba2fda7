/** I/O (reads the names of this program's files): when a build may say that there is nothing to do. */

import {createHash} from 'node:crypto'
import {readdirSync, readFileSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {fileURLToPath} from 'node:url'
import type {ReadCookbook} from '../cookbook/sources.ts'
import type {Message} from '../report/report.ts'
import {fieldOf} from '../site/json-file.ts'
import type {SiteFile} from '../site/site-file.ts'
import type {SummaryRows} from './build-summary.ts'

/** What a build that went well tells. */
export interface BuildOutcome {
  readonly title: string
  readonly rows: SummaryRows
  readonly warnings: readonly Message[]
}

/** What a site depends on beside the cookbook and the program. */
interface Surroundings {
  /** The cookbook's folder as the writer typed it, which messages repeat. */
  readonly content: string
  /** Labels grow old. */
  readonly day: string | undefined
}

/**
 * Names everything a site follows from, by content.
 * @returns undefined where the program cannot tell which it is, as it runs from its sources
 */
export function buildKey(
  {sources: {texts, images}, problems}: ReadCookbook,
  assets: readonly SiteFile[],
  {content, day}: Surroundings,
): string | undefined {
  const program = programName()
  if (program === undefined) return undefined
  const hash = createHash('sha256')
  const add = (part: string | Uint8Array) => {
    // Where one part ends and the next begins counts too.
    hash.update(`${part.length}\0`).update(part)
  }
  for (const part of [program, process.version, content, day ?? '', JSON.stringify(problems)]) {
    add(part)
  }
  for (const {path: asset, content: bytes} of assets) [asset, bytes].forEach(add)
  for (const {path: file, text} of texts) [file, text].forEach(add)
  for (const {path: file, bytes} of images) [file, bytes].forEach(add)
  return hash.digest('hex')
}

/** The compiled command is one file and parts named after their content. */
function programName(): string | undefined {
  const folder = path.dirname(fileURLToPath(import.meta.url))
  if (path.basename(folder) !== 'bin') return undefined
  const entry = readFileSync(path.join(folder, 'scalepan.js'), 'utf8')
  return [...readdirSync(folder).toSorted(), entry].join('\n')
}

/** An outcome as a receipt holds it; undefined for anything else. */
export function outcomeIn(read: unknown): BuildOutcome | undefined {
  const [title, rows, warnings] = ['title', 'rows', 'warnings'].map((key) => fieldOf(read, key))
  const isUsable =
    typeof title === 'string' &&
    Array.isArray(rows) &&
    rows.every(isRow) &&
    Array.isArray(warnings) &&
    warnings.every(isMessage)
  return isUsable ? {title, rows, warnings} : undefined
}

function isRow(value: unknown): value is readonly [string, string] {
  return (
    Array.isArray(value) && value.length === 2 && value.every((text) => typeof text === 'string')
  )
}

/** Of a message, what its text is made of. */
function isMessage(value: unknown): value is Message {
  const note = fieldOf(value, 'note')
  return (
    ['file', 'reason', 'rule'].every((key) => typeof fieldOf(value, key) === 'string') &&
    ['line', 'column'].every((key) => typeof fieldOf(value, key) === 'number') &&
    fieldOf(value, 'severity') === 'warning' &&
    (note === undefined || typeof note === 'string')
  )
}
