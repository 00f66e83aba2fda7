import type {Audit, AuditFinding} from '../check/audit/audit-foods.ts'
import {countText} from './count-text.ts'
import type {FilePath} from './file-path.ts'
import type {Paint} from './paint.ts'
import {printable} from './printable.ts'

/** What an audit found, a block each, where it stands first. */
export function* findingsText(
  findings: readonly AuditFinding[],
  filePath: FilePath,
  paint: Paint,
): Iterable<string> {
  for (const {reason, note, file, place} of findings) {
    const {line, column} = place?.start ?? {line: 1, column: 1}
    const named = file === undefined ? undefined : filePath(file)
    const at =
      named === undefined
        ? paint.bold('built-in table')
        : paint.link(paint.bold(`${printable(named)}:${line}:${column}`), named)
    yield `${at}  ${printable(reason)}\n`
    for (const text of note?.split('\n') ?? []) yield `    ${printable(text)}\n`
  }
}

/** `12 labels and 34 rows in use: 2 findings`. */
export function auditSummary({labels, rows, findings}: Audit): string {
  return `${countText(labels, 'label')} and ${countText(rows, 'table row')} in use: ${countText(findings.length, 'finding')}\n`
}
