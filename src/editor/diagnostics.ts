import type {Position} from 'unist'
import {type Diagnostic, DiagnosticSeverity, type Range} from 'vscode-languageserver/node'
import {ruleUrl} from '../check/rule-url.ts'
import type {Problem} from '../cookbook/problem.ts'

const severities = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  note: DiagnosticSeverity.Information,
} as const

/** A problem as editors show it. @param address of the site, whose rules page is linked */
export function diagnostic(problem: Problem, address: string | undefined): Diagnostic {
  const {ruleId, severity, place, reason, note} = problem
  return {
    range: rangeOf(place),
    message: note === undefined ? reason : `${reason}\n${note}`,
    severity: severities[severity],
    code: ruleId,
    source: 'scalepan',
    // A path within the site leads nowhere from an editor.
    ...(address !== undefined && {codeDescription: {href: ruleUrl(ruleId, address)}}),
  }
}

/** Lines and characters from 0; a problem of the whole file stands at its first character. */
export function rangeOf(place: Position | undefined): Range {
  const {line, column} = place?.start ?? {line: 1, column: 1}
  const end = place?.end ?? {line, column}
  return {
    start: {line: line - 1, character: column - 1},
    end: {line: end.line - 1, character: end.column - 1},
  }
}
