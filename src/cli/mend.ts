import {mendedText} from '../check/mended-text.ts'
import type {Fix, Problem} from '../cookbook/problem.ts'
import type {SourceText} from '../cookbook/sources.ts'
import {countText} from '../report/count-text.ts'
import {unifiedDiff} from '../report/unified-diff.ts'
import {type ExaminedFolder, examinedAgain} from './examined-folder.ts'
import {type MendedFile, mendFiles} from './mend-files.ts'
import {print, remark} from './output.ts'
import type {SharedOptions} from './shared-options.ts'

/**
 * Writes what has one right answer into the files, and examines the cookbook again.
 * @param isWanted whether a file, as the writer names it, may be changed
 */
export async function mend(
  content: string,
  folder: ExaminedFolder,
  isWanted: (file: string) => boolean,
  options: Pick<SharedOptions, 'quiet'>,
): Promise<ExaminedFolder> {
  const files = mendedFiles(folder, isWanted)
  await mendFiles(content, files, options)
  for (const {source} of files) {
    const count = fixesOf(source, folder).length
    remark(`${folder.filePath(source.path)}: ${countText(count, 'finding')} mended\n`, options)
  }
  if (files.length === 0) remark('Nothing to mend that has one right answer.\n', options)
  return withTexts(folder, files)
}

/** Prints what `mend` would change, and writes nothing. */
export function printMends(folder: ExaminedFolder, isWanted: (file: string) => boolean): void {
  for (const {source, text} of mendedFiles(folder, isWanted)) {
    print(unifiedDiff(folder.filePath(source.path), source.text, text))
  }
}

/** Files that change, less those in which a mend would bring up something new. */
function mendedFiles(
  folder: ExaminedFolder,
  isWanted: (file: string) => boolean,
): readonly MendedFile[] {
  const files = folder.read.sources.texts
    .filter(({path}) => isWanted(folder.filePath(path)))
    .map((source) => ({source, text: mendedText(source.text, fixesOf(source, folder))}))
    .filter(({source, text}) => text !== source.text)
  if (files.length === 0) return files
  const before = errorCounts(folder.examined.problems)
  const after = errorCounts(withTexts(folder, files).examined.problems)
  return files.filter(({source: {path}}) => (after.get(path) ?? 0) <= (before.get(path) ?? 0))
}

/** A finding that the writer accepts stays as it is. */
function fixesOf({path}: SourceText, {examined}: ExaminedFolder): readonly Fix[] {
  return examined.problems.flatMap(({file, fix, accepted}) =>
    fix && file === path && accepted === undefined ? [fix] : [],
  )
}

function errorCounts(problems: readonly Problem[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const {file, severity} of problems) {
    if (severity === 'error') counts.set(file, (counts.get(file) ?? 0) + 1)
  }
  return counts
}

function withTexts(folder: ExaminedFolder, files: readonly MendedFile[]): ExaminedFolder {
  const mended = new Map(files.map(({source, text}) => [source.path, text] as const))
  const {sources, problems} = folder.read
  const texts = sources.texts.map(({path, text}) => ({path, text: mended.get(path) ?? text}))
  return examinedAgain(folder, {sources: {...sources, texts}, problems})
}
