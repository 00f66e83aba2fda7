import {nearest} from '../../units/nearest.ts'
import type {Located} from '../problem.ts'
import type {YamlMapping, YamlNode} from './node.ts'
import {oneOf} from './one-of.ts'
import {keyMeantBy} from './other-words.ts'
import {
  beginningOf,
  isEmpty,
  type Reader,
  type Reading,
  refuse,
  within,
  withinList,
} from './reader.ts'

/** A key that must be there: `missing` is the question asked when it is not. */
export interface RequiredField<T> {
  readonly kind: 'required'
  readonly reader: Reader<T>
  readonly description: string
  readonly missing: string
}

export interface OptionalField<T> {
  readonly kind: 'optional'
  readonly reader: Reader<T>
  readonly description: string
}

type Field = RequiredField<unknown> | OptionalField<unknown>

/** The keys of a mapping, by their name in the file. */
export type Fields = Readonly<Record<string, Field>>

/** What a mapping with these fields holds: required keys always, the others where written. */
export type Values<F extends Fields> = {
  readonly [K in keyof F as F[K] extends RequiredField<unknown> ? K : never]: ValueOf<F[K]>
} & {
  readonly [K in keyof F as F[K] extends OptionalField<unknown> ? K : never]?: ValueOf<F[K]>
}

type ValueOf<F extends Field> =
  F extends RequiredField<infer T>
    ? Located<T>
    : F extends OptionalField<infer T>
      ? Located<T>
      : never

/** @param missing a question, such as "how many portions does the batch give?" */
export function required<T>(
  reader: Reader<T>,
  description: string,
  missing: string,
): RequiredField<T> {
  return {kind: 'required', reader, description, missing}
}

export function optional<T>(reader: Reader<T>, description: string): OptionalField<T> {
  return {kind: 'optional', reader, description}
}

/** A mapping with known keys; an unknown one is refused with the nearest known one. */
export function mapping<F extends Fields>(expected: string, fields: F): Reader<Values<F>> {
  const needed = Object.keys(fields).filter((name) => fields[name]?.kind === 'required')
  return {
    expected,
    schema: {
      type: 'object',
      properties: Object.fromEntries(
        Object.entries(fields).map(([name, {reader, description}]) => [
          name,
          {...reader.schema, description},
        ]),
      ),
      required: needed,
      additionalProperties: false,
      ...(needed.length === 0 && {minProperties: 1}),
    },
    read(node, reading) {
      if (node.kind !== 'mapping') return refuse(node, expected, reading)
      if (isEmpty(node) && needed.length === 0) return refuse(node, expected, reading)
      const values = readFields(node, {fields, needed}, reading)
      // The object was built key by key from the fields the type is made of.
      return values && {value: values as Values<F>, place: node.place}
    },
  }
}

function readFields(
  node: YamlMapping,
  {fields, needed}: {readonly fields: Fields; readonly needed: readonly string[]},
  reading: Reading,
): Readonly<Record<string, Located<unknown>>> | undefined {
  const values: Record<string, Located<unknown>> = {}
  for (const {key, value} of node.entries) {
    const field = Object.hasOwn(fields, key.value) ? fields[key.value] : undefined
    if (!field) {
      reportUnknownKey(key, Object.keys(fields), reading)
      continue
    }
    const read = field.reader.read(value, within(reading, key.value))
    if (read) values[key.value] = read
  }
  const absent = needed.filter((name) => !Object.hasOwn(values, name))
  for (const name of absent) {
    const field = fields[name]
    const isWritten = node.entries.some(({key}) => key.value === name)
    if (isWritten || field?.kind !== 'required') continue
    reportMissing(name, field.missing, {place: beginningOf(node), reading})
  }
  return absent.length === 0 ? values : undefined
}

/** Says that a key is not there, with the question it would answer. */
export function reportMissing(
  name: string,
  question: string,
  {place, reading}: {readonly place: YamlNode['place']; readonly reading: Reading},
): void {
  reading.report({
    ruleId: 'key-present',
    place,
    reason: `${within(reading, name).subject} is missing: ${question}`,
  })
}

/** Says that a key is none of the known ones, and which one was probably meant. */
export function reportUnknownKey(
  {value, place}: Located<string>,
  known: readonly string[],
  reading: Reading,
): void {
  const meant = keyMeantBy(value, known) ?? nearest(value, known)
  const where = reading.key === undefined ? '' : ` in \`${reading.key}\``
  reading.report({
    ruleId: 'known-key',
    place,
    actual: value,
    reason: meant
      ? `Unknown key \`${value}\`${where}, expected \`${meant}\``
      : `Unknown key \`${value}\`${where}, expected ${oneOf(known)}`,
    ...(meant && {expected: [meant]}),
  })
}

/** One entry of a mapping whose keys the writer chooses. */
export interface OpenEntry<T> {
  readonly key: Located<string>
  readonly value: Located<T>
}

/** A mapping whose keys the writer chooses, in writing order; entries that are refused are left out. */
export function openMapping<T>(
  expected: string,
  reader: Reader<T>,
): Reader<readonly OpenEntry<T>[]> {
  return {
    expected,
    schema: {type: 'object', additionalProperties: reader.schema, minProperties: 1},
    read(node, reading) {
      if (node.kind !== 'mapping' || isEmpty(node)) return refuse(node, expected, reading)
      const entries: OpenEntry<T>[] = []
      for (const {key, value} of node.entries) {
        const read = reader.read(value, within(reading, key.value))
        if (read) entries.push({key, value: read})
      }
      return {value: entries, place: node.place}
    },
  }
}

/** A list, each element read alike; elements that are refused are left out. */
export function list<T>(expected: string, reader: Reader<T>): Reader<readonly Located<T>[]> {
  return {
    expected,
    schema: {type: 'array', items: reader.schema},
    read(node, reading) {
      if (node.kind !== 'list') return refuse(node, expected, reading)
      const elements: Located<T>[] = []
      for (const element of node.elements) {
        const read = reader.read(element, withinList(reading))
        if (read) elements.push(read)
      }
      return {value: elements, place: node.place}
    },
  }
}

/** Reads a text one way and a mapping another: `lemon: 1 medium` or `lemon: { amount: … }`. */
export function textOrMapping<A, B>(ifText: Reader<A>, ifMapping: Reader<B>): Reader<A | B> {
  const expected = `${ifText.expected}, or ${ifMapping.expected}`
  return {
    expected,
    schema: {anyOf: [ifText.schema, ifMapping.schema]},
    read(node, reading) {
      if (node.kind === 'mapping') return ifMapping.read(node, reading)
      if (node.kind === 'text') return ifText.read(node, reading)
      return refuse(node, expected, reading)
    },
  }
}
