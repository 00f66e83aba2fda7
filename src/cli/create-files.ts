import {existsSync, mkdirSync, writeFileSync} from 'node:fs'
import path from 'node:path'
import {diskReason, EnvironmentFailure, errorCode} from '../cookbook/environment-failure.ts'

/**
 * Writes new files below a folder, none of them over one that is there.
 * @param files content by path, with `/`
 */
export function createFiles(folder: string, files: ReadonlyMap<string, string>): void {
  const existing = [...files.keys()].map((file) => path.join(folder, file)).filter(existsSync)
  if (existing.length > 0) throw taken(existing)
  for (const [file, content] of files) createFile(path.join(folder, file), content)
}

function createFile(full: string, content: string): void {
  try {
    mkdirSync(path.dirname(full), {recursive: true})
    writeFileSync(full, content, {flag: 'wx'})
  } catch (error) {
    if (errorCode(error) === 'EEXIST') throw taken([full])
    throw new EnvironmentFailure(`Cannot write ${full}: ${diskReason(error)}`)
  }
}

function taken(files: readonly string[]): EnvironmentFailure {
  return new EnvironmentFailure(
    `There is already ${files.join(', ')}`,
    'Nothing was written; choose another name',
  )
}
