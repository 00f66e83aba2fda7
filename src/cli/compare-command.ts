import {existsSync} from 'node:fs'
import {examine} from '../build.ts'
import {readCookbook} from '../cookbook/read-folder.ts'
import type {ChangeReport, CompareFormat} from '../report/change-report.ts'
import {changes} from '../report/changes.ts'
import {markdownChanges} from '../report/markdown-changes.ts'
import {textChanges} from '../report/text-changes.ts'
import {paintFor} from './colour.ts'
import {examinedFolder} from './examined-folder.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {cookbookAt} from './git-revision.ts'
import {print} from './output.ts'
import type {SharedOptions} from './shared-options.ts'
import {today} from './today.ts'

interface CompareOptions extends SharedOptions {
  readonly content: string
  readonly format: CompareFormat
}

/**
 * Prints which computed figures moved since an earlier state of the cookbook, and what did it.
 * @param earlier a folder, or a revision of the git repository the cookbook is in
 */
export async function compareCommand(
  earlier: string,
  {content, format, color, quiet}: CompareOptions,
): Promise<ExitCode> {
  const {examined, filePath} = await examinedFolder(content, {quiet})
  const read = existsSync(earlier)
    ? await readCookbook(earlier)
    : await cookbookAt(content, earlier)
  const report = changes(examine(read, {today: today()}), examined, filePath)
  for (const text of printed(report, {format, color})) print(text)
  return exitCodes.fine
}

function printed(
  report: ChangeReport,
  {format, color}: Pick<CompareOptions, 'format' | 'color'>,
): Iterable<string> {
  switch (format) {
    case 'json':
      return [`${JSON.stringify(report, undefined, 2)}\n`]
    case 'markdown':
      return markdownChanges(report)
    case 'text':
      return textChanges(report, paintFor('stdout', color))
  }
}
