import {ruleUrl} from '../check/rule-url.ts'
import type {Fix, Problem} from '../cookbook/problem.ts'
import type {FilePath} from './file-path.ts'
import type {FixReport, Message} from './report.ts'

/** A problem as reports print it; one of a whole file points at its first character. */
export function message(problem: Problem, filePath: FilePath, address?: string): Message {
  const {
    ruleId,
    severity,
    file,
    place,
    reason,
    actual,
    expected = [],
    note,
    accepted,
    fix,
  } = problem
  const start = place?.start ?? {line: 1, column: 1}
  const end = place?.end ?? start
  return {
    file: filePath(file),
    line: start.line,
    column: start.column,
    endLine: end.line,
    endColumn: end.column,
    rule: ruleId,
    severity,
    reason,
    ...(actual !== undefined && {actual}),
    expected,
    ...(note !== undefined && {note}),
    ...(accepted !== undefined && {accepted}),
    ...(fix && {fix: fixReport(fix)}),
    url: ruleUrl(ruleId, address),
  }
}

function fixReport({place: {start, end}, text}: Fix): FixReport {
  return {
    line: start.line,
    column: start.column,
    endLine: end.line,
    endColumn: end.column,
    text,
  }
}
