import {
  type CodeAction,
  CodeActionKind,
  type Range,
  type TextEdit,
} from 'vscode-languageserver/node'
import {mendedText} from '../check/mended-text.ts'
import type {Fix, Problem} from '../cookbook/problem.ts'
import {diagnostic, rangeOf} from './diagnostics.ts'
import {yamlOf} from './yaml-of.ts'

/** A file with what was found in it. */
export interface FoundFile {
  readonly uri: string
  /** Relative to the cookbook folder, with `/`. */
  readonly path: string
  readonly text: string
  readonly problems: readonly Problem[]
  /** Of the site, whose rules page is linked. */
  readonly address: string | undefined
}

/** What would mend the problems that touch a range. */
export function quickFixes(file: FoundFile, range: Range): readonly CodeAction[] {
  const near = file.problems.filter(({place}) => touches(rangeOf(place), range))
  const single = near.flatMap((problem) =>
    fixesOf(problem, file).map((fix) => action(titleOf(fix), [[problem, fix]], file)),
  )
  return [...single, ...(near.some(isSure) ? together(file) : [])]
}

/** Everything with one right answer in one go, where that is more than one thing. */
function together(file: FoundFile): readonly CodeAction[] {
  const sure = file.problems.filter(isSure)
  if (sure.length < 2) return []
  const title = `Mend all ${sure.length} findings that have one right answer`
  const pairs = sure.map((problem) => [problem, problem.fix] as const)
  return [action(title, pairs, file)]
}

type Sure = Problem & {readonly fix: Fix}

/** A finding that the writer accepts stays as it is. */
function isSure(problem: Problem): problem is Sure {
  return problem.fix !== undefined && problem.accepted === undefined
}

function fixesOf(problem: Problem, {path, text}: FoundFile): readonly Fix[] {
  if (problem.accepted !== undefined) return []
  if (problem.fix) return [problem.fix]
  const {place, actual, expected = []} = problem
  const yaml = yamlOf(path, text)
  // What a method says is what the cook does: other words alone would not mend it.
  if (!place || !yaml || (place.end.offset ?? 0) > yaml.to) return []
  // Only where the place holds what was found does something else fit into it.
  if (actual === undefined || unquoted(written(text, place)) !== actual) return []
  return expected.filter((each) => each !== actual).map((each) => ({place, text: each}))
}

function titleOf({place, text}: Fix): string {
  const isPut = place.start.offset === place.end.offset
  return isPut ? `Put \`${text.trim()}\` in` : `Write \`${text}\``
}

function action(
  title: string,
  pairs: readonly (readonly [Problem, Fix])[],
  file: FoundFile,
): CodeAction {
  return {
    title,
    kind: CodeActionKind.QuickFix,
    diagnostics: pairs.map(([problem]) => diagnostic(problem, file.address)),
    isPreferred: pairs.length === 1 && pairs.every(([problem]) => isSure(problem)),
    edit: {changes: {[file.uri]: pairs.map(([, fix]) => edit(fix, file.text))}},
  }
}

/** The edit of a fix, with the quotation marks and line ends that `check --fix` would write. */
function edit(fix: Fix, text: string): TextEdit {
  const start = fix.place.start.offset ?? 0
  const behind = text.length - (fix.place.end.offset ?? start)
  const mended = mendedText(text, [fix])
  return {range: rangeOf(fix.place), newText: mended.slice(start, mended.length - behind)}
}

function written(text: string, {start, end}: Fix['place']): string {
  return text.slice(start.offset, end.offset)
}

function unquoted(value: string): string {
  return /^(["'])(?<inside>.*)\1$/su.exec(value)?.groups?.inside ?? value
}

function touches(found: Range, asked: Range): boolean {
  return !isBefore(found.end, asked.start) && !isBefore(asked.end, found.start)
}

function isBefore(left: Range['start'], right: Range['start']): boolean {
  return left.line < right.line || (left.line === right.line && left.character < right.character)
}
