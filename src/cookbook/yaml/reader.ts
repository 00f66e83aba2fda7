import type {Position} from 'unist'
import type {Located} from '../problem.ts'
import type {Report} from '../problems.ts'
import type {JsonSchema} from './json-schema.ts'
import type {YamlNode} from './node.ts'

/**
 * The definition of one kind of value: what it takes, in words and as a schema, and how it is
 * read. Messages, the reader and the editor's completion come from this one definition.
 */
export interface Reader<T> {
  /** Goes on after "expected": "a whole number from `1` up". */
  readonly expected: string
  readonly schema: JsonSchema
  /** @returns nothing when the value was refused; the reason is reported */
  read(node: YamlNode, reading: Reading): Located<T> | undefined
}

/** What a reader knows of where it is. */
export interface Reading {
  /** Names the value in messages: "`energy` in `stated`". */
  readonly subject: string
  /** The last key on the way here, for the subject of what is inside. */
  readonly key?: string
  readonly report: Report
}

/** The reading of a whole file, from its root. */
export function rootReading(subject: string, report: Report): Reading {
  return {subject, report}
}

/** The reading of the value behind `key`. */
export function within(reading: Reading, key: string): Reading {
  const subject = reading.key === undefined ? `\`${key}\`` : `\`${key}\` in \`${reading.key}\``
  return {subject, key, report: reading.report}
}

/** The reading of an element of the list behind the current key. */
export function withinList(reading: Reading): Reading {
  return {...reading, subject: `An entry of ${reading.subject}`}
}

/** Reports that a value is not what its key asks for. */
export function refuse(node: YamlNode, expected: string, reading: Reading): undefined {
  const {subject, report} = reading
  if (isEmpty(node)) {
    report({
      ruleId: 'key-present',
      place: node.place,
      reason: `${subject} is empty, expected ${expected}`,
    })
    return
  }
  if (node.kind === 'text') return refuseText(node, {expected}, reading)
  const found = node.kind === 'list' ? 'a list' : 'a mapping of keys to values'
  report({
    ruleId: 'readable-value',
    place: beginningOf(node),
    reason: `${subject} is ${found}, expected ${expected}`,
  })
}

/** Nothing behind the key, or brackets and braces with nothing in them. */
export function isEmpty(node: YamlNode): boolean {
  if (node.kind === 'mapping') return node.entries.length === 0
  return node.kind === 'list' ? node.elements.length === 0 : node.kind === 'empty'
}

/** Reports that a text is not what its key asks for, with what would pass. */
export function refuseText(
  {text, place}: {readonly text: string; readonly place: Position},
  {expected, instead, isSure, note}: Expectation,
  {subject, report}: Reading,
): undefined {
  report({
    ruleId: 'readable-value',
    place,
    actual: text,
    reason: `${subject} is \`${shortened(text)}\`, expected ${expected}`,
    ...(instead && {expected: instead}),
    ...(note && {note}),
    ...(isSure && instead?.[0] !== undefined && {fix: {place, text: instead[0]}}),
  })
}

interface Expectation {
  readonly expected: string
  readonly instead?: readonly string[]
  readonly isSure?: true
  readonly note?: string
}

/** A message is one line; a text quoted in it must not run on for a page. */
export function shortened(text: string): string {
  const oneLine = text.replace(/\s+/g, ' ')
  return oneLine.length > 60 ? `${oneLine.slice(0, 59)}…` : oneLine
}

/** The first key or element of a collection: a narrow place for what concerns all of it. */
export function beginningOf(node: YamlNode): Position {
  if (node.kind === 'mapping') return node.entries[0]?.key.place ?? node.place
  if (node.kind === 'list') {
    const [first] = node.elements
    return first ? beginningOf(first) : node.place
  }
  return node.place
}
