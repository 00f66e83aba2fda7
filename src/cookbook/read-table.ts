import type {BroughtTable} from '../food/brought-table.ts'
import {importTable} from '../food/import-table.ts'
import {largeTableEnding} from '../food/large/layout.ts'
import type {TableFault} from '../food/table-fault.ts'
import {limits} from './limits.ts'
import {placeBetween, pointsOf} from './points.ts'
import type {Problem} from './problem.ts'
import {type ReadingProblem, type ReadingRuleId, reportInto} from './problems.ts'
import type {SourceText} from './sources.ts'

const ruleOfFault: Readonly<Record<TableFault['kind'], ReadingRuleId>> = {
  missing: 'key-present',
  duplicate: 'no-duplicate-key',
  'unknown column': 'known-key',
  unreadable: 'readable-value',
}

/**
 * Reads tables/<name>.tsv, or the rows of tables/<name>.foods that the cookbook names; rows that
 * cannot be used, and all behind the most that a table may hold, are left out and told.
 */
export function readTable({path, text}: SourceText): {
  readonly table: BroughtTable
  readonly problems: readonly Problem[]
} {
  const problems: Problem[] = []
  const report = reportInto(problems, path)
  const end = endOfRows(text)
  if (end < text.length) report(tooManyRows(text, end))
  const {table, faults} = importTable(text.slice(0, end), tableName(path))
  // The rows read of a large table are no lines of its file.
  const hasLines = !path.endsWith(largeTableEnding)
  const pointAt = pointsOf(text)
  for (const {kind, place, reason, ...fault} of faults) {
    // A lone carriage return ends a line for an editor and in a message, and none for a table.
    const [first, last] = [place.start.offset ?? 0, place.end.offset ?? 0]
    const shown = hasLines && {place: placeBetween(pointAt, first, last)}
    const oneLine = reason.replaceAll('\r', '␍')
    report({ruleId: ruleOfFault[kind], reason: oneLine, ...fault, ...shown})
  }
  return {table, problems}
}

/** Offset behind the header and as many rows as a table may hold. */
function endOfRows(text: string): number {
  let end = 0
  for (let line = 0; line <= limits.tableRows; line++) {
    const newline = text.indexOf('\n', end)
    if (newline === -1) return text.length
    end = newline + 1
  }
  return end
}

function tooManyRows(text: string, start: number): ReadingProblem {
  const newline = text.indexOf('\n', start)
  const end = newline === -1 ? text.length : newline
  return {
    ruleId: 'table-rows',
    place: placeBetween(pointsOf(text), start, end),
    reason: `The table goes on behind \`${limits.tableRows}\` rows, expected no more`,
    note: 'Keep the rows that recipes name. Branded foods come as an indexed file: scalepan foods import.',
  }
}

/** `tables/national.tsv` is the table `national`. */
function tableName(path: string): string {
  return path.slice(path.lastIndexOf('/') + 1).replace(/\.(?:tsv|foods)$/i, '')
}
