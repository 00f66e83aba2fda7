import {numberAtStart} from '../../units/number-text.ts'
import {matchAt} from './match-at.ts'

/** A number or a range as cooks write it in a sentence: `180`, `1½`, `10 to 12`, `half a`, `ten`. */
export interface ProseQuantity {
  readonly low: number
  readonly high: number
  /** Unit of the last written digit: 0.5 for `6½`, 1 for words. */
  readonly increment: number
  /** Index behind it; blanks that follow are not part of it. */
  readonly to: number
}

const smallNumbers: ReadonlyMap<string, number> = new Map(
  [
    ...['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven'],
    ...[
      'twelve',
      'thirteen',
      'fourteen',
      'fifteen',
      'sixteen',
      'seventeen',
      'eighteen',
      'nineteen',
    ],
  ].map((word, index) => [word, index + 1]),
)

const tens: ReadonlyMap<string, number> = new Map(
  ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'].map(
    (word, index) => [word, (index + 2) * 10],
  ),
)

/** Words that count without a number; vague ones are wide ranges (common practice, no source). */
const countingWords: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['a', [1, 1]],
  ['an', [1, 1]],
  ['half', [0.5, 0.5]],
  ['half a', [0.5, 0.5]],
  ['half an', [0.5, 0.5]],
  ['quarter of a', [0.25, 0.25]],
  ['quarter of an', [0.25, 0.25]],
  ['three quarters of a', [0.75, 0.75]],
  ['three quarters of an', [0.75, 0.75]],
  ['couple of', [2, 2]],
  ['few', [2, 5]],
  ['several', [3, 7]],
])

const smallWords = [...smallNumbers.keys()].toSorted((left, right) => right.length - left.length)
const tensWords = [...tens.keys()]

const inWords = new RegExp(
  `(?:(${tensWords.join('|')})(?:[-\\s](${smallWords.join('|')}))?|(${smallWords.join('|')}))(?![\\p{L}])`,
  'iuy',
)
const inCountingWords =
  /(?:(?:an?\s+)?(three[-\s]quarters\s+of\s+an?|quarter\s+of\s+an?|half\s+an?|couple\s+of|few)|(half|several|an?))(?!\p{L})/iuy
const andPart = /\s+and\s+(a half|a quarter|three[-\s]quarters)(?!\p{L})/iuy
const partValues: ReadonlyMap<string, number> = new Map([
  ['a half', 0.5],
  ['a quarter', 0.25],
  ['three quarters', 0.75],
])

const start =
  /(?<![\p{L}\d.,/¼-¾⅓-⅞])(?:\d|[¼-¾⅓-⅞])|(?<![\p{L}\d])(?:an?|half|three[-\s]quarters|quarter|couple|few|several|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?!\p{L})/giu

/** Two numbers with blanks around a slash are a fraction only as cooks write them: `1/2`, `3/4`. */
const alternatives = /\d{2,}\s*\/\s*\d/y

/** Indexes at which a number may begin, in order. */
export function* quantityStarts(text: string): Iterable<number> {
  for (const match of text.matchAll(start)) yield match.index
}

/**
 * Reads the number or range at an index.
 * @returns undefined where there is none, or one that can be read in two ways (`1,5`)
 */
export function quantityAt(text: string, from: number): ProseQuantity | undefined {
  const first = singleAt(text, from)
  if (!first) return undefined
  const between = matchAt(/\s*(?:-|–|—|\bto\b|\bor\b|\band\b)\s*/iuy, text, first.to)
  if (!between || first.low !== first.high) return first
  const isAnd = /and/i.test(between[0])
  if (isAnd && !/\bbetween\s+$/i.test(text.slice(Math.max(0, from - 10), from))) return first
  const second = singleAt(text, first.to + between[0].length)
  return second && second.low > first.low
    ? {
        low: first.low,
        high: second.high,
        increment: Math.min(first.increment, second.increment),
        to: second.to,
      }
    : first
}

function singleAt(text: string, from: number): ProseQuantity | undefined {
  const plain = /[\d¼-¾⅓-⅞]/u.test(text[from] ?? '') ? digitsAt(text, from) : wordsAt(text, from)
  if (!plain) return undefined
  const part = matchAt(andPart, text, plain.to)
  const more = part && partValues.get(key(part[1]))
  if (more === undefined) return plain
  const to = plain.to + (part?.[0].length ?? 0)
  return {low: plain.low + more, high: plain.high + more, increment: 1 - more, to}
}

/** Longest number a kitchen writes, blanks and fraction included. */
const longestNumber = 40

function digitsAt(text: string, from: number): ProseQuantity | undefined {
  if (matchAt(alternatives, text, from)) return undefined
  const rest = text.slice(from, from + longestNumber)
  const read = numberAtStart(rest)
  if (!read.ok) return undefined
  const {value, halfRange, increment} = read.value.number
  const to = from + rest.length - read.value.rest.length
  return {low: value - halfRange, high: value + halfRange, increment, to}
}

function wordsAt(text: string, from: number): ProseQuantity | undefined {
  const counting = matchAt(inCountingWords, text, from)
  const range = counting && countingWords.get(key(counting[1] ?? counting[2]))
  if (counting && range) {
    return {
      low: range[0],
      high: range[1],
      increment: Math.min(1, range[0]),
      to: from + counting[0].length,
    }
  }
  const match = matchAt(inWords, text, from)
  if (!match) return undefined
  const value =
    (tens.get(key(match[1])) ?? 0) +
    (smallNumbers.get(key(match[2])) ?? smallNumbers.get(key(match[3])) ?? 0)
  return {low: value, high: value, increment: 1, to: from + match[0].length}
}

function key(words = ''): string {
  return words.toLowerCase().replace(/[-\s]+/g, ' ')
}
