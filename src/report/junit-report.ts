import {type XmlElement, xml, xmlText} from '../site/xml.ts'
import type {Message, Report} from './report.ts'

/**
 * A report as JUnit XML, which most build servers list as tests: a suite a file, and in it a case
 * a finding, or one that passes. Errors are failures; what lets a build pass is a case that passes
 * and says so. The form has no standard of its own: this is the structure of `junit-10.xsd` of the
 * Jenkins xUnit plugin.
 */
export function junitReport({recipes, messages}: Report): string {
  const byFile = new Map<string, Message[]>()
  for (const {file} of recipes) byFile.set(file, [])
  for (const message of messages) {
    byFile.set(message.file, [...(byFile.get(message.file) ?? []), message])
  }
  const files = [...byFile].toSorted(([left], [right]) => (left < right ? -1 : 1))
  const suites = files.map(([file, found]) => suite(file, found))
  const total = (name: 'tests' | 'failures') =>
    String(suites.reduce((sum, {attributes}) => sum + Number(attributes?.[name] ?? 0), 0))
  return xmlText(
    xml('testsuites', suites, {
      name: 'scalepan',
      tests: total('tests'),
      failures: total('failures'),
      errors: '0',
    }),
  )
}

function suite(file: string, found: readonly Message[]): XmlElement {
  const cases =
    found.length > 0
      ? found.map(findingCase)
      : [xml('testcase', [], {classname: file, name: 'every rule'})]
  const failures = found.filter(({severity}) => severity === 'error').length
  return xml('testsuite', cases, {
    name: file,
    tests: String(cases.length),
    failures: String(failures),
    errors: '0',
    skipped: '0',
  })
}

function findingCase(message: Message): XmlElement {
  const {file, line, column, rule, severity, reason, note} = message
  const place = `${file}:${line}:${column}`
  const text = [`${place}  ${severity}  ${reason}`, ...(note === undefined ? [] : [note])].join(
    '\n',
  )
  const outcome =
    severity === 'error'
      ? xml('failure', [text], {message: reason, type: rule})
      : xml('system-out', [text])
  return xml('testcase', [outcome], {classname: file, name: `${rule} ${line}:${column}`})
}
