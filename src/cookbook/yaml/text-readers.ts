import {nearest} from '../../units/nearest.ts'
import type {Parsed} from '../../units/parsed.ts'
import type {JsonSchema} from './json-schema.ts'
import {oneOf} from './one-of.ts'
import {type Reader, refuse, refuseText} from './reader.ts'

/** Any text. */
export const text: Reader<string> = {
  expected: 'a text',
  // As other YAML parsers see it: `title: 1989` is a number to them, and `title: true` no text.
  schema: {type: ['string', 'number', 'boolean']},
  read(node, reading) {
    if (node.kind !== 'text' || node.text === '') return refuse(node, text.expected, reading)
    return {value: node.text, place: node.place}
  },
}

/**
 * A text that a parser turns into a value.
 * @param expected goes on after "expected" where there is no text at all
 * @param examples texts that pass, for editors; the first may stand in messages
 */
export function parsedText<T>(
  expected: string,
  parse: (text: string) => Parsed<T>,
  examples: readonly string[],
): Reader<T> {
  return {
    expected,
    schema: {type: ['string', 'number'], examples},
    read(node, reading) {
      if (node.kind !== 'text') return refuse(node, expected, reading)
      const result = parse(node.text)
      if (!result.ok) return refuseText(node, result, reading)
      return {value: result.value, place: node.place}
    },
  }
}

/** One of a few words. */
export function choice<const T extends string>(words: readonly T[]): Reader<T> {
  const expected = oneOf(words)
  return {
    expected,
    schema: {enum: words},
    read(node, reading) {
      if (node.kind !== 'text') return refuse(node, expected, reading)
      const value = words.find((word) => word === node.text)
      if (value !== undefined) return {value, place: node.place}
      const meant = nearest(node.text, words)
      return refuseText(node, {expected, ...(meant && {instead: [meant]})}, reading)
    },
  }
}

/** `true` or `false`. */
export const flag: Reader<boolean> = {
  expected: '`true` or `false`',
  schema: {type: 'boolean'},
  read(node, reading) {
    const written = node.kind === 'text' ? node.text : undefined
    if (written !== 'true' && written !== 'false') return refuse(node, flag.expected, reading)
    return {value: written === 'true', place: node.place}
  },
}

/** Limits of a number, both optional. */
interface Bounds {
  readonly from?: number
  readonly above?: number
  readonly to?: number
}

/** A plain decimal number, within bounds. */
export function number(bounds: Bounds = {}): Reader<number> {
  return numeric(
    'a number',
    /^[+-]?\d+(?:\.\d+)?$/,
    {...boundsSchema(bounds), type: 'number'},
    bounds,
  )
}

/** A whole number, within bounds. */
export function wholeNumber(bounds: Bounds = {}): Reader<number> {
  return numeric('a whole number', /^[+-]?\d+$/, {...boundsSchema(bounds), type: 'integer'}, bounds)
}

function numeric(
  what: string,
  form: RegExp,
  schema: JsonSchema,
  {from, above, to}: Bounds,
): Reader<number> {
  const lower =
    from === undefined ? (above === undefined ? '' : ` above \`${above}\``) : ` from \`${from}\``
  const upper = to === undefined ? (from === undefined ? '' : ' up') : ` to \`${to}\``
  const expected = what + lower + upper
  return {
    expected,
    schema,
    read(node, reading) {
      const written = node.kind === 'text' ? node.text : ''
      const value = form.test(written) ? Number(written) : Number.NaN
      const isWithin =
        Number.isFinite(value) &&
        (from === undefined || value >= from) &&
        (above === undefined || value > above) &&
        (to === undefined || value <= to)
      return isWithin ? {value, place: node.place} : refuse(node, expected, reading)
    },
  }
}

function boundsSchema({from, above, to}: Bounds): JsonSchema {
  return {
    ...(from !== undefined && {minimum: from}),
    ...(above !== undefined && {exclusiveMinimum: above}),
    ...(to !== undefined && {maximum: to}),
  }
}
