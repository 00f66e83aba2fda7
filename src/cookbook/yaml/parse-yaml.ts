import {
  type Alias,
  Composer,
  type CST,
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Pair,
  type ParsedNode,
  Parser,
} from 'yaml'
import type {Report} from '../problems.ts'
import type {YamlEntry, YamlNode} from './node.ts'
import {shortened} from './reader.ts'
import {yamlErrorProblems} from './yaml-errors.ts'
import type {YamlSource} from './yaml-source.ts'

/**
 * Levels of nesting that are read. The deepest field of a cookbook (an ingredient's alternative in
 * a group) needs seven; the parser itself would overflow the stack at some thousands.
 */
export const deepestNesting = 20

/** Everything that turning the parser's tree into ours needs. */
interface Conversion {
  readonly source: YamlSource
  readonly report: Report
}

/**
 * Reads YAML into nodes that know their place, and reports what it cannot take.
 * @returns nothing where the text is empty, or where a syntax error leaves its meaning in doubt
 */
export function parseYaml(source: YamlSource, report: Report): YamlNode | undefined {
  const tokens = [...new Parser().parse(source.yaml)]
  const tooDeep = collectionBelow(tokens, deepestNesting)
  if (tooDeep !== undefined) {
    report({
      ruleId: 'no-deep-nesting',
      place: source.placeOf(tooDeep, tooDeep + 1),
      reason: `Values are nested more than \`${deepestNesting}\` levels deep here, expected a few`,
    })
    return undefined
  }
  // Failsafe: every scalar stays text, so `012`, `1e3`, `.nan` and `yes` are never reinterpreted.
  const composer = new Composer<ParsedNode, true>({
    schema: 'failsafe',
    uniqueKeys: false,
    prettyErrors: false,
    strict: true,
  })
  const documents: Document.Parsed<ParsedNode, true>[] = []
  for (const document of composer.compose(tokens, false, source.yaml.length)) {
    documents.push(document)
  }
  const [first, second] = documents
  if (!first) return undefined
  if (first.errors.length > 0) {
    for (const problem of yamlErrorProblems(first, source)) report(problem)
    return undefined
  }
  if (second) {
    report({
      ruleId: 'yaml-readable',
      place: source.placeOf(second.range[0], second.range[0]),
      reason: 'A second YAML document starts here, expected one in a file',
      note: 'Take the `---` or `...` line before it out.',
    })
    return undefined
  }
  return first.contents ? converted(first.contents, {source, report}) : undefined
}

function converted(node: ParsedNode, conversion: Conversion): YamlNode | undefined {
  const {source, report} = conversion
  const [start, end] = node.range
  if (isAlias(node)) return reportAlias(node, conversion)
  if (node.anchor || node.tag) {
    const sign = node.anchor ? `&${node.anchor}` : (node.tag ?? '')
    report({
      ruleId: 'no-alias',
      place: source.placeOf(start, end),
      actual: sign,
      reason: `A value is marked \`${sign}\`, expected the value alone`,
      note: 'A text that begins with `&` or `!` goes in quotes.',
    })
  }
  const place = source.placeOf(start, end)
  if (isMap<ParsedNode, ParsedNode | null>(node)) {
    return {kind: 'mapping', entries: entriesOf(node.items, conversion), place}
  }
  if (isSeq<ParsedNode>(node)) {
    const elements = node.items.map((element) => converted(element, conversion))
    return {kind: 'list', elements: elements.filter((element) => element !== undefined), place}
  }
  if (node.type === 'PLAIN' && /^(?:~|null|)$/i.test(node.source)) return {kind: 'empty', place}
  return {kind: 'text', text: String(node.value).trim(), place}
}

function entriesOf(pairs: Pairs, conversion: Conversion): readonly YamlEntry[] {
  const entries = new Map<string, YamlEntry>()
  for (const [index, {key, value}] of pairs.entries()) {
    if (isCutOff(pairs, index, conversion)) continue
    const named = keyText(key, conversion)
    if (!named) continue
    const first = entries.get(named.value)
    if (first) {
      conversion.report({
        ruleId: 'no-duplicate-key',
        place: named.place,
        actual: named.value,
        reason: `\`${named.value}\` is given twice, expected once`,
        note: `It stands on line ${first.key.place.start.line} already.`,
      })
      continue
    }
    const content = wholeText(pairs, index, conversion) ?? (value && converted(value, conversion))
    if (value && !content) continue
    const isEmpty = !content || content.kind === 'empty'
    entries.set(named.value, {
      key: named,
      value: isEmpty ? {kind: 'empty', place: named.place} : content,
    })
  }
  return [...entries.values()]
}

type Pairs = readonly Pair<ParsedNode, ParsedNode | null>[]

/** `{ fat: 0,2 g }` is `fat: 0` and a key `2 g` to YAML: whether this pair is such a key. */
function isCutOff(pairs: Pairs, index: number, {source}: Conversion): boolean {
  const [before, pair] = [pairs[index - 1], pairs[index]]
  if (!before?.value || !pair || pair.value !== null) return false
  const [from, to] = [before.value.range[1], pair.key.range[0]]
  const digits = source.yaml.slice(before.value.range[0], from)
  return (
    source.yaml.slice(from, to) === ',' &&
    /^[-+]?\d+$/.test(digits) &&
    /^\d/.test(source.yaml.slice(to, pair.key.range[1]))
  )
}

/** The value with what its decimal comma cut off, for its reader to say what is wrong with it. */
function wholeText(pairs: Pairs, index: number, conversion: Conversion): YamlNode | undefined {
  const start = pairs[index]?.value?.range[0]
  const end = pairs[index + 1]?.key.range[1]
  if (start === undefined || end === undefined) return undefined
  if (!isCutOff(pairs, index + 1, conversion)) return undefined
  const {source} = conversion
  return {kind: 'text', text: source.yaml.slice(start, end), place: source.placeOf(start, end)}
}

/** Keys that would reach into the prototype of a plain object further down the line. */
const reservedKeys: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype'])

function keyText(key: ParsedNode, {source, report}: Conversion): YamlEntry['key'] | undefined {
  const place = source.placeOf(key.range[0], key.range[1])
  const value = isScalar(key) ? String(key.value).trim() : undefined
  if (value !== undefined && value !== '' && !key.tag && !reservedKeys.has(value)) {
    return {value, place}
  }
  const actual = value ?? source.yaml.slice(key.range[0], key.range[1])
  report({
    ruleId: 'readable-value',
    place,
    actual,
    reason: actual
      ? `\`${shortened(actual)}\` stands where a key should, expected a name`
      : 'A value stands without its key, expected `key: value`',
  })
  return undefined
}

function reportAlias(node: Alias.Parsed, {source, report}: Conversion): undefined {
  report({
    ruleId: 'no-alias',
    place: source.placeOf(node.range[0], node.range[1]),
    actual: `*${node.source}`,
    reason: `\`*${node.source}\` points to a value elsewhere, expected the value itself`,
    note: 'Write the value out. A text that begins with `*` goes in quotes.',
  })
}

/** @returns the offset of the first collection nested deeper than `levels`; walks without recursion */
function collectionBelow(tokens: readonly CST.Token[], levels: number): number | undefined {
  let layer = tokens.flatMap(collectionsWithin)
  for (let level = 1; layer.length > 0; level++) {
    if (level > levels) return layer[0]?.offset
    layer = layer.flatMap(collectionsWithin)
  }
  return undefined
}

function collectionsWithin(token: CST.Token): readonly CST.Token[] {
  if (token.type === 'document') return token.value && 'items' in token.value ? [token.value] : []
  if (!('items' in token)) return []
  return token.items
    .flatMap(({key, value}) => [key, value])
    .filter((part) => part != null && 'items' in part)
}
