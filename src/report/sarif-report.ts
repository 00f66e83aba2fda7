import {type RuleText, ruleTexts} from '../check/rule-texts.ts'
import {ruleUrl} from '../check/rule-url.ts'
import type {FixReport, Message} from './report.ts'

interface SarifContext {
  /** Of this package. */
  readonly version: string
  /** Of the published site, where rules are explained. */
  readonly address: string | undefined
}

/**
 * Findings as a SARIF log, which code-scanning services and editors read. Source: OASIS, Static
 * Analysis Results Interchange Format (SARIF) Version 2.1.0 (2020), sections 3.13 (log), 3.14
 * (run), 3.27 (result), 3.30 (region), 3.35 (suppression), 3.49 (reporting descriptor), 3.55 (fix).
 */
export function sarifReport(messages: readonly Message[], context: SarifContext): string {
  const ruleIndex = new Map(ruleTexts.map(({id}, index) => [id, index] as const))
  const log = {
    $schema:
      'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: {
          driver: {
            name: 'scalepan',
            semanticVersion: context.version,
            rules: ruleTexts.map((rule) => descriptor(rule, context)),
          },
        },
        // Columns count as JavaScript does (3.14.17).
        columnKind: 'utf16CodeUnits',
        results: messages.map((message) => result(message, ruleIndex.get(message.rule))),
      },
    ],
  }
  return `${JSON.stringify(log, undefined, 2)}\n`
}

function descriptor({id, severity, summary, why, source}: RuleText, {address}: SarifContext) {
  return {
    id,
    shortDescription: {text: summary},
    fullDescription: {text: why},
    help: {text: source === undefined ? why : `${why}\n\nSource: ${source}`},
    // A path within the site is no URI that a service could follow.
    ...(address !== undefined && {helpUri: ruleUrl(id, address)}),
    defaultConfiguration: {level: severity},
  }
}

function result(message: Message, ruleIndex: number | undefined) {
  const {file, rule, severity, reason, note, accepted, fix} = message
  const {line, column, endLine, endColumn} = message
  return {
    ruleId: rule,
    ...(ruleIndex !== undefined && {ruleIndex}),
    level: severity,
    message: {text: note === undefined ? reason : `${reason}\n${note}`},
    locations: [
      {
        physicalLocation: {
          artifactLocation: artifact(file),
          region: {startLine: line, startColumn: column, endLine, endColumn},
        },
      },
    ],
    ...(accepted !== undefined && {
      suppressions: [{kind: 'inSource', justification: accepted}],
    }),
    ...(fix && {fixes: [sarifFix(file, fix)]}),
  }
}

function sarifFix(file: string, {line, column, endLine, endColumn, text}: FixReport) {
  const deletedRegion = {startLine: line, startColumn: column, endLine, endColumn}
  return {
    artifactChanges: [
      {
        artifactLocation: artifact(file),
        replacements: [{deletedRegion, insertedContent: {text}}],
      },
    ],
  }
}

function artifact(file: string) {
  return {uri: file.split('/').map(encodeURIComponent).join('/')}
}
