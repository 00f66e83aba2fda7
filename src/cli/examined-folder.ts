import {type Examined, examine} from '../build.ts'
import {readCookbook} from '../cookbook/read-folder.ts'
import type {ReadCookbook} from '../cookbook/sources.ts'
import {type FilePath, filePathBelow} from '../report/file-path.ts'
import {message} from '../report/message.ts'
import type {Message} from '../report/report.ts'
import {Progress} from './progress.ts'
import type {SharedOptions} from './shared-options.ts'
import {today} from './today.ts'

/** A cookbook folder, read and examined, with its findings as the writer's paths name them. */
export interface ExaminedFolder {
  readonly read: ReadCookbook
  readonly examined: Examined
  readonly messages: readonly Message[]
  readonly filePath: FilePath
}

/** @param reader reads the folder; without it, one that has recipes is expected */
export async function examinedFolder(
  content: string,
  {quiet}: Pick<SharedOptions, 'quiet'>,
  reader: (folder: string) => Promise<ReadCookbook> = readCookbook,
): Promise<ExaminedFolder> {
  const progress = new Progress({quiet})
  progress.begin('reading files')
  const read = await reader(content)
  progress.expect(read.sources.texts.length)
  const examined = examine(read, {
    begin: (stage) => progress.beginStage(stage),
    today: today(),
  })
  progress.end()
  return withMessages(read, examined, filePathBelow(content))
}

/** The same folder with other texts in it. */
export function examinedAgain({filePath}: ExaminedFolder, read: ReadCookbook): ExaminedFolder {
  return withMessages(read, examine(read, {today: today()}), filePath)
}

function withMessages(read: ReadCookbook, examined: Examined, filePath: FilePath): ExaminedFolder {
  const {address} = examined.cookbook.settings
  return {
    read,
    examined,
    filePath,
    messages: examined.problems.map((problem) => message(problem, filePath, address)),
  }
}
