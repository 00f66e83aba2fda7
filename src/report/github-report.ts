import type {Severity} from '../cookbook/problem.ts'
import type {Message} from './report.ts'

/** How a workflow names what a message is. */
const commands: Readonly<Record<Severity, string>> = {
  error: 'error',
  warning: 'warning',
  note: 'notice',
}

/**
 * Findings as workflow commands, one a line: a GitHub workflow that prints them shows each at its
 * line of a pull request. Source: GitHub Docs, "Workflow commands for GitHub Actions", setting a
 * notice, warning or error message.
 */
export function* githubReport(messages: Iterable<Message>): Iterable<string> {
  for (const message of messages) {
    const {file, line, column, endLine, endColumn, rule, severity, reason, note} = message
    const properties = {
      file,
      line,
      endLine,
      // A range of columns is only taken within one line.
      ...(line === endLine && {col: column, endColumn}),
      title: rule,
    }
    const written = Object.entries(properties).map(
      ([name, value]) => `${name}=${escapedProperty(String(value))}`,
    )
    const text = note === undefined ? reason : `${reason}\n${note}`
    yield `::${commands[severity]} ${written.join(',')}::${escaped(text)}\n`
  }
}

/** A command is one line: `%`, and what ends a line, are written as escapes. */
function escaped(text: string): string {
  return text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A')
}

/** Properties stand between `:` and `,`. */
function escapedProperty(text: string): string {
  return escaped(text).replaceAll(':', '%3A').replaceAll(',', '%2C')
}
