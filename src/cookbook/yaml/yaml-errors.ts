import {type Document, type ErrorCode, isCollection, visit, type YAMLParseError} from 'yaml'
import type {ReadingProblem} from '../problems.ts'
import {shortened} from './reader.ts'
import type {YamlSource} from './yaml-source.ts'

/** After the first few, syntax errors only follow from one another. */
const mostErrors = 5

/** The parser's errors in a writer's words, one a line of the file. */
export function yamlErrorProblems(
  document: Document,
  source: YamlSource,
): readonly ReadingProblem[] {
  const byLine = new Map<number, ReadingProblem>()
  for (const error of document.errors) {
    const [start, end] = rangeOf(error, document)
    const actual = source.yaml.slice(start, end).split('\n', 1)[0]?.trimEnd() ?? ''
    const place = source.placeOf(start, start + actual.length)
    const {line} = place.start
    if (byLine.has(line)) continue
    if (byLine.size === mostErrors) break
    byLine.set(line, {ruleId: 'yaml-readable', place, actual, ...inWords(error, actual)})
  }
  return [...byLine.values()]
}

/** The parser misses a closing sign where the text ends; the writer looks for the opening one. */
function rangeOf(error: YAMLParseError, document: Document): readonly [number, number] {
  const [start, end] = error.pos
  if (!unclosed.test(error.message)) return [start, Math.max(start, end)]
  let range: readonly [number, number] = [start, start]
  visit(document, {
    Node(_, node) {
      if (node.range?.[1] !== start) return undefined
      range = [node.range[0], node.range[0] + 1]
      return isCollection(node) && node.flow ? visit.SKIP : undefined
    },
  })
  return range
}

const unclosed = /^Missing closing|^Flow .* end with a/

interface Words {
  readonly reason: string
  readonly note?: string
}

function inWords({code, message}: YAMLParseError, actual: string): Words {
  const shown = `\`${shortened(actual)}\``
  const known = unclosed.test(message) ? neverCloses(actual) : wordsFor[code]?.(shown, message)
  if (known) return known
  return {
    reason: actual
      ? `${shown} does not fit here, expected one \`key: value\` a line`
      : 'The YAML does not fit together here, expected one `key: value` a line',
    note: `Quotes, colons or a first \`*\` within a text make no sense to YAML. ${quoteIt}`,
  }
}

const quoteIt = 'Put the whole text in double quotes: `"…"`.'

/** Codes that are not listed, or a message that is not, get the general words. */
const wordsFor: Partial<Record<ErrorCode, (shown: string, message: string) => Words | undefined>> =
  {
    TAB_AS_INDENT: () => ({
      reason: 'A tab indents this line, expected spaces',
      note: 'Two spaces for each level.',
    }),
    BAD_SCALAR_START: (shown) => ({
      reason: `A text begins with ${shown}, expected it in quotes`,
      note: quoteIt,
    }),
    BLOCK_AS_IMPLICIT_KEY: () => ({
      reason: 'A second `key: value` begins on this line, expected one a line',
      note: `A text with a colon and a space in it goes in quotes. ${quoteIt}`,
    }),
    MULTILINE_IMPLICIT_KEY: (shown) => withoutColon(shown),
    MISSING_CHAR: (shown, message) => {
      if (message.startsWith('Implicit map keys')) return withoutColon(shown)
      if (message.startsWith('Missing ,')) {
        return {reason: `A comma is missing before ${shown}, expected one between two values`}
      }
      return undefined
    },
    BAD_INDENT: () => ({
      reason: 'The indentation does not fit the lines above, expected one column for one level',
      note: 'Two spaces for each level.',
    }),
    BLOCK_IN_FLOW: (shown) => ({
      reason: `${shown} does not fit within braces, expected \`{ key: value, key: value }\``,
    }),
    BAD_DQ_ESCAPE: (shown) => ({
      reason: `${shown} opens no known escape, expected \`\\\\\` for a backslash`,
      note: 'Single quotes take a backslash as it is.',
    }),
  }

function neverCloses(opening: string): Words {
  const closing = opening === '[' ? ']' : opening === '{' ? '}' : opening
  return {reason: `\`${opening}\` opens here and never closes, expected \`${closing}\` behind it`}
}

function withoutColon(shown: string): Words {
  return {reason: `${shown} is no \`key: value\`, expected a colon and a space behind the key`}
}
