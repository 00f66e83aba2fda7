import type {Measured} from './amount.ts'
import {type Parsed, parsed, type Refusal, refused} from './parsed.ts'

/** Numbers in amounts: `150`, `13.5`, `1/2`, `1 1/2`, `½`, `1½`, and ranges of two of them. */

/** A number that a text begins with, and what stands behind it. */
export interface NumberStart {
  readonly number: Measured
  readonly rest: string
}

/** No kitchen weighs or counts more; above it a slip of the pen is likelier. */
const largestNumber = 1_000_000

const glyphs: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
}

const fraction = /^(?:(\d+)\s+)?(\d+)\s*[/\u2044]\s*(\d+)(?![\d.])/
const glyph = new RegExp(`^(\\d+)?\\s?([${Object.keys(glyphs).join('')}])`)
const decimal = /^(\d+(?:\.(\d+))?)(?![\d.,/\u2044])/
const dash = /^\s*[-\u2013\u2014]\s*(?=[\d¼-¾⅓-⅞])/

/**
 * Reads the number or range a text begins with.
 * @param text trimmed
 * @returns value, half the range and last digit in the unit that follows; all finite, 0 or more
 */
export function numberAtStart(text: string): Parsed<NumberStart> {
  const low = singleNumber(text)
  if (!low.ok) return low
  const between = dash.exec(low.value.rest)
  if (!between) return low
  const high = singleNumber(low.value.rest.slice(between[0].length))
  if (!high.ok) return high
  const [from, to] = [low.value.number, high.value.number]
  if (from.value >= to.value) {
    return refused('a range from the smaller number to the larger, such as `10-12 g`', {
      note: 'A whole number and a fraction stand apart: `1 1/2`.',
    })
  }
  return parsed({
    number: {
      value: (from.value + to.value) / 2,
      halfRange: (to.value - from.value) / 2,
      increment: Math.min(from.increment, to.increment),
    },
    rest: high.value.rest,
  })
}

function singleNumber(text: string): Parsed<NumberStart> {
  const inFraction = fraction.exec(text)
  if (inFraction) {
    const [whole, numerator, denominator] = [inFraction[1] ?? 0, inFraction[2], inFraction[3]].map(
      Number,
    )
    if (!denominator) return refused('a fraction with a number from `1` up below the line')
    return counted(
      Number(whole),
      [Number(numerator), denominator],
      text.slice(inFraction[0].length),
    )
  }
  const inGlyph = glyph.exec(text)
  const parts = inGlyph && glyphs[inGlyph[2] ?? '']
  if (parts) return counted(Number(inGlyph[1] ?? 0), parts, text.slice(inGlyph[0].length))
  const inDecimal = decimal.exec(text)
  if (!inDecimal) return noNumber(text)
  const increment = Number(`1e-${(inDecimal[2] ?? '').length}`)
  return bounded(Number(inDecimal[1]), increment, text.slice(inDecimal[0].length))
}

function counted(
  whole: number,
  [numerator, denominator]: readonly [number, number],
  rest: string,
): Parsed<NumberStart> {
  const increment = greatestCommonDivisor(numerator, denominator) / denominator
  return bounded(whole + numerator / denominator, increment, rest)
}

function bounded(value: number, increment: number, rest: string): Parsed<NumberStart> {
  if (value > largestNumber) return refused(`a number up to \`${largestNumber}\``)
  return parsed({number: {value, halfRange: 0, increment}, rest})
}

function noNumber(text: string): Refusal {
  const comma = /^(\d+),(\d+)/.exec(text)
  if (comma) return withoutComma(text, comma[2] ?? '')
  if (/^[-+\u2212]\s*[\d.]/.test(text)) return refused('a number without a sign')
  if (/^\.\d/.test(text)) return insteadOf('a digit before the point', [`0${text}`])
  return refused('a number first, in digits')
}

/** `1,5` is a decimal comma; `1,000` may be a thousand or one. */
function withoutComma(text: string, behind: string): Refusal {
  const asPoint = text.replace(',', '.')
  const joined = text.replace(',', '')
  return behind.length === 3
    ? insteadOf('no comma', [joined, asPoint])
    : insteadOf('a decimal point', [asPoint])
}

function insteadOf(what: string, instead: readonly string[]): Refusal {
  return refused(`${what}: ${instead.map((text) => `\`${text}\``).join(' or ')}`, {instead})
}

function greatestCommonDivisor(left: number, right: number): number {
  return right === 0 ? left : greatestCommonDivisor(right, left % right)
}

/** Steps of kitchen numbers: scales show decimals, cooks write halves, thirds, quarters … */
const denominators = [1, 2, 3, 4, 5, 6, 8, 12, 16, 32, 10, 100, 1_000, 10_000] as const

/** Float noise in amounts that went through a unit's factor and back. */
const closeRatio = 1e-9

/**
 * The text a number was written as, or would be.
 * @returns nothing where the number is no whole count of its last digit as cooks write them
 */
export function numberText({value, halfRange, increment}: Measured): string | undefined {
  if (halfRange === 0) return singleText(value, increment)
  const ends = [value - halfRange, value + halfRange]
  // The last digit of a range is the finer one of its ends: one end at least counts in it.
  if (ends.every((end) => singleText(end, increment) === undefined)) return undefined
  const [low, high] = ends.map((end) => singleText(end, increment) ?? anyText(end))
  return low === undefined || high === undefined ? undefined : `${low}-${high}`
}

/** Some text of the number, however it was written. */
function anyText(value: number): string | undefined {
  for (const denominator of denominators) {
    const text = singleText(value, 1 / denominator)
    if (text !== undefined) return text
  }
  return undefined
}

function singleText(value: number, increment: number): string | undefined {
  const denominator = denominators.find((each) => isClose(increment * each, 1))
  if (denominator === undefined) return undefined
  const steps = Math.round(value * denominator)
  if (!isClose(value * denominator, steps)) return undefined
  const decimals = Math.log10(denominator)
  if (Number.isInteger(decimals)) return (steps / denominator).toFixed(decimals)
  const whole = Math.floor(steps / denominator)
  return [whole || '', fractionText(steps - whole * denominator, denominator)].join('') || '0'
}

function fractionText(numerator: number, denominator: number): string {
  if (numerator === 0) return ''
  for (const [sign, [above, below]] of Object.entries(glyphs)) {
    if (above * denominator === numerator * below) return sign
  }
  return ` ${numerator}/${denominator}`
}

function isClose(left: number, right: number): boolean {
  return Math.abs(left - right) <= closeRatio * Math.max(Math.abs(left), Math.abs(right))
}
