import path from 'node:path'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {readTableMapping} from '../cookbook/read-table-mapping.ts'
import {largeTableEnding} from '../food/large/layout.ts'
import {countText} from '../report/count-text.ts'
import {message} from '../report/message.ts'
import {textMessages} from '../report/text-report.ts'
import {paintFor} from './colour.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {importBranded} from './import-branded.ts'
import {importFdc} from './import-fdc.ts'
import {importBrandedJson, importFdcJson} from './import-fdc-json.ts'
import {mappingText, refuseSecond, wholeFile, withWorkFolder} from './import-files.ts'
import {importRows} from './import-rows.ts'
import type {ImportedFoods, LargeOut} from './imported-foods.ts'
import {kindOfDownload} from './kind-of-download.ts'
import {print, remark, tell} from './output.ts'
import {Progress} from './progress.ts'
import type {SharedOptions} from './shared-options.ts'

export interface ImportOptions extends SharedOptions {
  readonly content: string
  /** First part of the foods' ids, and name of the file below tables/. */
  readonly as: string
  /** File of the mapping; the one saved beside the table where it is absent. */
  readonly map?: string
}

/**
 * Brings a published table into the cookbook: downloads of FoodData Central as they are, any other
 * by a mapping of its columns, which is kept beside it. The table that was there stays until the
 * new one is whole.
 */
export async function foodsImportCommand(file: string, options: ImportOptions): Promise<ExitCode> {
  const {content, as} = options
  if (!/^[a-z0-9][a-z0-9-]*$/.test(as)) {
    throw new EnvironmentFailure(
      `The table cannot be called ${as}, expected small letters, digits and hyphens`,
    )
  }
  const small = path.join(content, 'tables', `${as}.tsv`)
  const large = path.join(content, 'tables', `${as}${largeTableEnding}`)
  const named = {...options, id: `${as}/<fdc_id>`}
  switch (await kindOfDownload(file)) {
    case 'folder':
      refuseSecond(large)
      return told(small, await wholeFile(small, (out) => importFdc(file, out)), named)
    case 'json':
      refuseSecond(large)
      return told(small, await wholeFile(small, (out) => importFdcJson(file, out)), named)
    case 'branded folder':
      refuseSecond(small)
      return told(large, await largeFile(large, options, (out) => importBranded(file, out)), named)
    case 'branded json':
      refuseSecond(small)
      return told(
        large,
        await largeFile(large, options, (out) => importBrandedJson(file, out)),
        named,
      )
    case 'text':
      refuseSecond(large)
      return await importText(file, small, options)
  }
}

/** Writes a large table, and says on a terminal how far it is. */
async function largeFile(
  target: string,
  options: ImportOptions,
  write: (out: LargeOut) => Promise<ImportedFoods>,
): Promise<ImportedFoods> {
  const progress = new Progress(options)
  const begin = (what: string): void => progress.begin(what)
  try {
    return await withWorkFolder(target, (file, work) => write({file, work, begin}))
  } finally {
    progress.end()
  }
}

async function importText(
  file: string,
  target: string,
  {as, map, color, quiet}: ImportOptions,
): Promise<ExitCode> {
  // Not `.yaml`: a text there that no build reads would be told at every check.
  const saved = path.join(path.dirname(target), `${as}.mapping`)
  const text = await mappingText(map ?? saved)
  const {mapping, problems} = readTableMapping({path: map ?? saved, text})
  if (!mapping) {
    const messages = problems.map((problem) => message(problem, (named) => named))
    for (const line of textMessages(messages, paintFor('stderr', color))) tell(line)
    return exitCodes.errorsFound
  }
  const count = await wholeFile(target, (out) => importRows(file, mapping, out))
  if (map !== undefined) await wholeFile(saved, (out) => out.writeFile(text))
  const heading = mapping.columns[0]?.from.join(' ') ?? 'id'
  return told(target, {count}, {id: `${as}/<${heading}>`, quiet})
}

function told(
  target: string,
  {count, leftOut}: ImportedFoods,
  {id, quiet}: {readonly id: string; readonly quiet: boolean},
): ExitCode {
  print(`${target}: ${countText(count, 'food')}, named ${id}\n`)
  if (leftOut) {
    const left = `${countText(leftOut.count, 'food')} left out as unusable`
    remark(`${left}, the first: ${leftOut.first}\n`, {quiet})
  }
  return exitCodes.fine
}
