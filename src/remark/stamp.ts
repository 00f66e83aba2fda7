import type {VFile} from 'vfile'
import {ruleUrl} from '../check/rule-url.ts'
import type {Problem, Severity} from '../cookbook/problem.ts'

/** Who says it: `source` of every message. */
const source = 'scalepan'

/** A stop, a warning or a note, as vfile has them. */
const fatal: Readonly<Record<Severity, boolean | undefined>> = {
  error: true,
  warning: false,
  note: undefined,
}

/**
 * Puts a problem on the file it is about, as a vfile message: the only place that does.
 * @param address of the published site, where rules are explained; messages have no URL without
 */
export function stamp(file: VFile, problem: Problem, address: string | undefined): void {
  const {ruleId, severity, place, reason, actual, expected, note} = problem
  const message = file.message(reason, {ruleId, source, ...(place && {place})})
  message.fatal = fatal[severity]
  message.actual = actual
  message.expected = expected && [...expected]
  message.note = note
  if (address !== undefined) message.url = ruleUrl(ruleId, address)
}
