import {randomUUID} from 'node:crypto'
import {promises as disk} from 'node:fs'
import path from 'node:path'
import {decodeText} from '../cookbook/decode-text.ts'
import {diskReason, EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {SourceText} from '../cookbook/sources.ts'
import {keepBefore} from './keep-before.ts'
import {remark} from './output.ts'
import type {SharedOptions} from './shared-options.ts'

/** A file of the cookbook, as it was read and as it is to be. */
export interface MendedFile {
  readonly source: SourceText
  readonly text: string
}

/**
 * Writes mended files, each whole or not at all, and keeps what they were; byte order marks stay.
 */
export async function mendFiles(
  folder: string,
  files: readonly MendedFile[],
  options: Pick<SharedOptions, 'quiet'>,
): Promise<void> {
  if (files.length === 0) return
  const kept = await named(folder, () =>
    keepBefore(
      folder,
      files.map(({source}) => source.path),
    ),
  )
  for (const {source, text} of files) {
    const file = path.join(folder, source.path)
    await named(file, () => mendFile(file, source, text))
  }
  remark(`As it was before: ${kept}\n`, options)
}

/** What the disk refuses is told with the file's name. */
async function named<T>(file: string, write: () => Promise<T>): Promise<T> {
  try {
    return await write()
  } catch (error) {
    if (error instanceof EnvironmentFailure) throw error
    throw new EnvironmentFailure(`Cannot write ${file}: ${diskReason(error)}`)
  }
}

async function mendFile(file: string, source: SourceText, text: string): Promise<void> {
  // A link within the cookbook stays one: what it leads to is written.
  const full = await disk.realpath(file)
  const bytes = await disk.readFile(full)
  const decoded = decodeText(bytes)
  if (decoded.kind !== 'text' || decoded.text !== source.text) {
    throw new EnvironmentFailure(
      `${file} was changed while it was checked; it was left alone`,
      'Save it in your editor, then run the command again',
    )
  }
  const mark = bytes.length - Buffer.byteLength(source.text)
  const {mode} = await disk.stat(full)
  const beside = path.join(path.dirname(full), `.${path.basename(full)}.${randomUUID()}`)
  try {
    await disk.writeFile(beside, Buffer.concat([bytes.subarray(0, mark), Buffer.from(text)]), {
      mode,
      flush: true,
    })
    await disk.rename(beside, full)
  } catch (error) {
    await disk.rm(beside, {force: true})
    throw error
  }
}
