import {mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import {afterEach} from 'vitest'

const made: string[] = []

afterEach(() => {
  for (const folder of made.splice(0)) rmSync(folder, {recursive: true, force: true})
})

/** A folder of its own for one test, holding the files given, gone afterwards. */
export function temporaryFolder(files: Readonly<Record<string, string | Uint8Array>> = {}): string {
  const folder = realpathSync(mkdtempSync(path.join(tmpdir(), 'scalepan-')))
  made.push(folder)
  putFiles(folder, files)
  return folder
}

/** Writes files below a folder, making the folders between. */
export function putFiles(
  folder: string,
  files: Readonly<Record<string, string | Uint8Array>>,
): void {
  for (const [name, content] of Object.entries(files)) {
    const full = path.join(folder, name)
    mkdirSync(path.dirname(full), {recursive: true})
    writeFileSync(full, content)
  }
}
