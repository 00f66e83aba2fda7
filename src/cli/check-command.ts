import path from 'node:path'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {CheckFormat} from '../report/check-formats.ts'
import {githubReport} from '../report/github-report.ts'
import {jsonReport} from '../report/json-report.ts'
import {junitReport} from '../report/junit-report.ts'
import {recipeReport} from '../report/recipe-report.ts'
import type {Message, RecipeReport, Report} from '../report/report.ts'
import {sarifReport} from '../report/sarif-report.ts'
import {textMessages} from '../report/text-report.ts'
import {nearest} from '../units/nearest.ts'
import {checkedText, type IsWanted} from './checked-text.ts'
import {paintFor} from './colour.ts'
import {type ExaminedFolder, examinedFolder} from './examined-folder.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {mend, printMends} from './mend.ts'
import {print} from './output.ts'
import type {SharedOptions} from './shared-options.ts'
import {version} from './version.ts'

interface CheckOptions extends SharedOptions {
  readonly content: string
  readonly format: CheckFormat
  /** Write what has one right answer into the files. */
  readonly fix?: boolean
  /** Print what `fix` would change, and nothing else. */
  readonly fixDryRun?: boolean
}

/**
 * Checks a cookbook and prints what it finds.
 * @param files report on these only; the whole cookbook is read and computed all the same
 */
export async function checkCommand(
  files: readonly string[],
  {content, format, fix = false, fixDryRun = false, color, quiet}: CheckOptions,
): Promise<ExitCode> {
  const found = await examinedFolder(content, {quiet})
  const isWanted = wantedFiles(files, found)
  if (fixDryRun) {
    printMends(found, isWanted)
    return exitCodes.fine
  }
  const folder = fix ? await mend(content, found, isWanted, {quiet}) : found
  const messages = folder.messages.filter(({file}) => isWanted(file))
  const report = {recipes: recipes(folder, isWanted), messages}
  for (const text of printed(report, {folder, isWanted}, {format, color, quiet})) print(text)
  return errorsOf(messages).length > 0 ? exitCodes.errorsFound : exitCodes.fine
}

function* printed(
  report: Report,
  {folder, isWanted}: {readonly folder: ExaminedFolder; readonly isWanted: IsWanted},
  {format, color, quiet}: Pick<CheckOptions, 'format' | 'color' | 'quiet'>,
): Iterable<string> {
  const {messages} = report
  const {address} = folder.examined.cookbook.settings
  switch (format) {
    case 'json':
      return yield* jsonReport(report)
    case 'github':
      return yield* githubReport(messages)
    case 'sarif':
      return yield sarifReport(messages, {version: version(), address})
    case 'junit':
      return yield junitReport(report)
    case 'text':
      yield* textMessages(quiet ? errorsOf(messages) : messages, paintFor('stdout', color))
      if (quiet) return
      yield `${messages.length > 0 ? '\n' : ''}${checkedText(folder, isWanted)}\n`
  }
}

function errorsOf(messages: readonly Message[]): readonly Message[] {
  return messages.filter(({severity}) => severity === 'error')
}

function* recipes(
  {examined, filePath}: ExaminedFolder,
  isWanted: IsWanted,
): Iterable<RecipeReport> {
  for (const computed of examined.computed.values()) {
    if (!isWanted(filePath(computed.recipe.path))) continue
    yield recipeReport(computed, examined.cookbook.settings, filePath)
  }
}

/** Which files the report is about; a name that is none of the cookbook's is a slip. */
function wantedFiles(
  files: readonly string[],
  {read, filePath, messages}: ExaminedFolder,
): IsWanted {
  if (files.length === 0) return () => true
  const known = new Set([
    ...read.sources.texts.map((source) => filePath(source.path)),
    ...messages.map(({file}) => file),
  ])
  const byFullPath = new Map([...known].map((file) => [path.resolve(file), file] as const))
  const wanted = new Set(
    files.map((file) => {
      const found = byFullPath.get(path.resolve(file))
      if (found !== undefined) return found
      const isNamed = (one: string) => path.basename(one, '.md') === path.basename(file, '.md')
      const meant = [...known].find(isNamed) ?? nearest(file, known)
      throw new EnvironmentFailure(
        `${file} is no file of the cookbook`,
        meant === undefined
          ? 'Files are named from the folder you are in'
          : `Did you mean ${meant}?`,
      )
    }),
  )
  return (file) => wanted.has(file)
}
