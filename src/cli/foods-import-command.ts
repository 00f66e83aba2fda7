import {randomUUID} from 'node:crypto'
import {promises as disk} from 'node:fs'
import path from 'node:path'
import {diskReason, EnvironmentFailure, errorCode} from '../cookbook/environment-failure.ts'
import {readTableMapping} from '../cookbook/read-table-mapping.ts'
import type {TableMapping} from '../food/import/table-mapping.ts'
import {countText} from '../report/count-text.ts'
import {message} from '../report/message.ts'
import {textMessages} from '../report/text-report.ts'
import {paintFor} from './colour.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {importFdc} from './import-fdc.ts'
import {importRows} from './import-rows.ts'
import {print, tell} from './output.ts'
import type {SharedOptions} from './shared-options.ts'

export interface ImportOptions extends SharedOptions {
  readonly content: string
  /** First part of the foods' ids, and name of the file below tables/. */
  readonly as: string
  /** File of the mapping; the one saved beside the table where it is absent. */
  readonly map?: string
}

/**
 * Brings a published table into the cookbook: a folder of FoodData Central as it is, any other by
 * a mapping of its columns, which is kept beside it. The table that was there stays until the new one is whole.
 */
export async function foodsImportCommand(
  file: string,
  {content, as, map, color}: ImportOptions,
): Promise<ExitCode> {
  if (!/^[a-z0-9][a-z0-9-]*$/.test(as)) {
    throw new EnvironmentFailure(
      `The table cannot be called ${as}, expected small letters, digits and hyphens`,
    )
  }
  const folder = path.join(content, 'tables')
  const target = path.join(folder, `${as}.tsv`)
  if (await isFolder(file)) {
    const count = await whole(target, (out) => importFdc(file, out))
    print(`${target}: ${countText(count, 'food')}, named ${as}/<fdc_id>\n`)
    return exitCodes.fine
  }
  // Not `.yaml`: a text there that no build reads would be told at every check.
  const saved = path.join(folder, `${as}.mapping`)
  const text = await mappingText(map ?? saved)
  const {mapping, problems} = readTableMapping({path: map ?? saved, text})
  if (!mapping) {
    const messages = problems.map((problem) => message(problem, (named) => named))
    for (const line of textMessages(messages, paintFor('stderr', color))) tell(line)
    return exitCodes.errorsFound
  }
  const count = await whole(target, (out) => importRows(file, mapping, out))
  if (map !== undefined) await whole(saved, (out) => out.writeFile(text))
  print(`${target}: ${countText(count, 'food')}, named ${as}/${example(mapping)}\n`)
  return exitCodes.fine
}

function example({columns}: TableMapping): string {
  return `<${columns[0]?.from.join(' ') ?? 'id'}>`
}

async function isFolder(file: string): Promise<boolean> {
  try {
    return (await disk.stat(file)).isDirectory()
  } catch (error) {
    throw new EnvironmentFailure(`Cannot read ${file}: ${diskReason(error)}`)
  }
}

async function mappingText(file: string): Promise<string> {
  try {
    return await disk.readFile(file, 'utf8')
  } catch (error) {
    throw new EnvironmentFailure(
      `Cannot read the mapping ${file}: ${diskReason(error)}`,
      'scalepan help foods import shows what a mapping looks like; give yours with --map FILE',
    )
  }
}

/** Writes a file beside its place and moves it there when it is whole; else leaves nothing. */
async function whole<T>(target: string, write: (out: disk.FileHandle) => Promise<T>): Promise<T> {
  const beside = path.join(path.dirname(target), `.${path.basename(target)}.${randomUUID()}`)
  try {
    await disk.mkdir(path.dirname(target), {recursive: true})
    const out = await disk.open(beside, 'wx')
    let result: T
    try {
      result = await write(out)
      await out.sync()
    } finally {
      await out.close()
    }
    await disk.rename(beside, target)
    return result
  } catch (error) {
    await disk.rm(beside, {force: true})
    if (errorCode(error) === undefined) throw error
    throw new EnvironmentFailure(`Cannot write ${target}: ${diskReason(error)}`)
  }
}
