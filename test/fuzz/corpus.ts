/** I/O: texts that fuzzing begins with, and those it once broke something with. */

import {existsSync, readdirSync, readFileSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import type {SourceText} from '../../src/cookbook/sources.ts'

export const corpus = path.join(process.cwd(), 'test/fuzz/corpus')

export function linesOf(file: string): readonly string[] {
  return readFileSync(path.join(corpus, file), 'utf8').trimEnd().split('\n')
}

/** A sound cookbook with a little of everything. */
export function cookbookTexts(): readonly SourceText[] {
  const folder = path.join(corpus, 'cookbook')
  return readdirSync(folder, {recursive: true, withFileTypes: true})
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name))
    .toSorted()
    .map((file) => ({
      path: path.relative(folder, file).replaceAll(path.sep, '/'),
      text: readFileSync(file, 'utf8'),
    }))
}

/** What once broke the target: `found/<target>/<what happened>.txt`. */
export function found(target: string): readonly string[] {
  const folder = path.join(corpus, 'found', target)
  if (!existsSync(folder)) return []
  return readdirSync(folder)
    .toSorted()
    .map((name) => readFileSync(path.join(folder, name), 'utf8'))
}
