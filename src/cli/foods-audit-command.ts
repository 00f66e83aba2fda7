import {auditFoods} from '../check/audit/audit-foods.ts'
import {auditSummary, findingsText} from '../report/audit-text.ts'
import {paintFor} from './colour.ts'
import {examinedFolder} from './examined-folder.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print, remark} from './output.ts'
import type {SharedOptions} from './shared-options.ts'
import {today} from './today.ts'

interface AuditOptions extends SharedOptions {
  readonly content: string
  /** `2026-11-25`; the day of the call where it is absent. */
  readonly today?: string
}

/** Prints what looks odd about the labels of a cookbook and the table rows it uses. */
export async function foodsAuditCommand({content, ...options}: AuditOptions): Promise<ExitCode> {
  const {read, examined, filePath} = await examinedFolder(content, options)
  const audit = auditFoods({
    cookbook: examined.cookbook,
    all: examined.computed,
    texts: read.sources.texts,
    today: options.today ?? today(),
  })
  const paint = paintFor('stdout', options.color)
  for (const text of findingsText(audit.findings, filePath, paint)) print(text)
  remark(auditSummary(audit), options)
  return exitCodes.fine
}
