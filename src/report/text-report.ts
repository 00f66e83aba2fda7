import {type Paint, paintedSeverity} from './paint.ts'
import {printable} from './printable.ts'
import type {Message} from './report.ts'

/**
 * Findings for people, a block each: place, severity, reason and rule on one line, which editors
 * and terminals turn into a link, then how to mend it.
 */
export function* textMessages(messages: Iterable<Message>, paint: Paint): Iterable<string> {
  for (const message of messages) {
    const {file, line, column, severity, reason, rule, note} = message
    const place = paint.link(paint.bold(`${printable(file)}:${line}:${column}`), file)
    const head = [place, paintedSeverity(severity, paint), printable(reason), paint.dim(rule)]
    yield `${head.join('  ')}\n`
    for (const text of note?.split('\n') ?? []) yield `    ${printable(text)}\n`
  }
}
