import {rememberedText} from '../../units/remembered.ts'
import {matchAt, type TextRange} from './match-at.ts'
import {sentenceAt, sentencesOf} from './sentences.ts'

/** What a temperature in a method is of. */
export type TemperatureOf = 'oven' | 'inside' | 'other'

/** A temperature in a sentence: `180 °C`, `350F`, `gas mark 4`, `160–170 °C fan`. */
export interface TemperatureMention extends TextRange {
  /** As written. */
  readonly text: string
  readonly scale: 'C' | 'F' | 'gas'
  readonly lowCelsius: number
  readonly highCelsius: number
  /** Of an oven with a fan, which cooks faster than its air is hot. */
  readonly isFan: boolean
  readonly of: TemperatureOf
}

/**
 * Centigrade of the gas marks, index by mark; common practice, no source: tables of British
 * cookers agree within 10 °C.
 */
const gasMarkCelsius = [125, 140, 150, 165, 180, 190, 200, 220, 230, 240, 260] as const

const number = String.raw`(\d{1,3}(?:\.\d)?)`
const range = String.raw`(?:\s*(?:-|–|—|\bto\b)\s*${number})?`
const degrees = String.raw`(?:(?:\s*(?:°|º|˚|&deg;|degrees?\b|deg\b\.?))?\s*(celsius|centigrade|fahrenheit|[CF](?![\p{L}\d]))|\s*([℃℉])|\s*(?:°|º|˚)\s*([cf])(?![\p{L}\d]))`

/** The scale may stand behind the last of several: `180-200 °C`, `200/180 °C`. */
const written = new RegExp(
  String.raw`(?<![\d.,\p{L}]|\d\s?\/\s?)(-|−)?(?:${number}\s*\/\s*(?=\d))?${number}(?:\s*(?:°|º|˚))?${range}${degrees}`,
  'giu',
)
const gas = /(?<!\p{L})gas(?:\s+mark)?\s+(\d{1,2}|¼|½)(?!\d|\.\d)/giu

const fanBehind =
  /\s*[(,]?\s*(?:in\s+an?\s+)?(?:fan|convection)\b(?!\s*(?:oven\s*)?(?:at|to|of|:)?\s*\d)/iy
const fanBefore = /\b(?:fan|convection)(?:\s+oven)?\s*(?:at|to|of|:)?\s*$/i

/** Every temperature of a passage, in order. */
export const temperaturesIn = rememberedText((text): readonly TemperatureMention[] => {
  const passage = {text, sentences: sentencesOf(text)}
  return [...degreesIn(passage), ...gasMarksIn(passage)].toSorted(
    (left, right) => left.from - right.from,
  )
})

/** A passage with its sentences, parted once. */
interface Parted {
  readonly text: string
  readonly sentences: readonly TextRange[]
}

function* degreesIn(passage: Parted): Iterable<TemperatureMention> {
  for (const match of passage.text.matchAll(written)) {
    const [all, minus, beforeSlash, first, last, long, glyph, short] = match
    const scale = /^[f℉]/i.test(long ?? glyph ?? short ?? '') ? 'F' : 'C'
    // `20 c` and `3 f` are no temperatures: without a sign of degree the letter is a capital.
    if (long?.length === 1 && /[cf]/.test(long) && !/[°º˚]|deg/i.test(all)) continue
    const sign = minus ? -1 : 1
    const celsius = (value: string): number => toCelsius(sign * Number(value), scale)
    const from = match.index
    if (beforeSlash !== undefined) {
      const value = celsius(beforeSlash)
      const range = {from, to: from + beforeSlash.length}
      yield mention(passage, range, {scale, lowCelsius: value, highCelsius: value})
    }
    const firstFrom =
      beforeSlash === undefined ? from : from + all.indexOf(first ?? '', beforeSlash.length)
    yield mention(
      passage,
      {from: firstFrom, to: from + all.length},
      {scale, lowCelsius: celsius(first ?? ''), highCelsius: celsius(last ?? first ?? '')},
    )
  }
}

function* gasMarksIn(passage: Parted): Iterable<TemperatureMention> {
  for (const match of passage.text.matchAll(gas)) {
    const mark = match[1] ?? ''
    const value = /[¼½]/.test(mark) ? (mark === '¼' ? 110 : 120) : gasMarkCelsius[Number(mark)]
    if (value === undefined) continue
    const range = {from: match.index, to: match.index + match[0].length}
    yield mention(passage, range, {scale: 'gas', lowCelsius: value, highCelsius: value})
  }
}

function toCelsius(value: number, scale: 'C' | 'F'): number {
  return scale === 'C' ? value : ((value - 32) * 5) / 9
}

type Reading = Pick<TemperatureMention, 'scale' | 'lowCelsius' | 'highCelsius'>

function mention(passage: Parted, {from, to}: TextRange, reading: Reading): TemperatureMention {
  const {text} = passage
  const isFan =
    matchAt(fanBehind, text, to) !== undefined ||
    fanBefore.test(text.slice(Math.max(0, from - 24), from))
  return {
    from,
    to,
    text: text.slice(from, to),
    ...reading,
    isFan,
    of: isFan ? 'oven' : whatIsHot(passage, {from, to}, reading),
  }
}

/** Cooler air than this bakes nothing; hotter than this no food is inside. */
const coolestOvenCelsius = 50
const hottestInsideCelsius = 105

const ovenWords =
  /\b(?:oven|bake[ds]?|baking|roast(?:s|ed|ing)?|pre-?heat(?:ed)?|grill|broiler|fan|convection|gas|shelf|rack)\b/i
const insideWords =
  /\b(?:inside|internal(?:ly)?|core|cent(?:re|er)s?|middle|thickest|thermometer|probe|cooked through|heated through|piping|re-?heat(?:ed|s|ing)?|all the way through|throughout)\b/i
const otherWords =
  /\b(?:oil|fat|fryer|water|syrup|caramel|fridge|refrigerator|freezer|room|dough|starter|milk)\b/i
const readWords = /\b(?:reads?|reading|registers?|reach(?:es|ed)?|hits?|comes? to|shows?)\b/i

function whatIsHot(
  {text, sentences}: Parted,
  {from, to}: TextRange,
  {scale, highCelsius}: Reading,
): TemperatureOf {
  if (scale === 'gas') return 'oven'
  const sentence = sentenceAt(sentences, from) ?? {from: 0, to: text.length}
  const clause = clauseAround(text, {from, to}, sentence)
  const isCoolEnough = highCelsius <= hottestInsideCelsius
  if (isCoolEnough && insideWords.test(clause) && !/\boven\b/i.test(clause)) return 'inside'
  if (otherWords.test(clause) && !ovenWords.test(clause)) return 'other'
  if (isCoolEnough && readWords.test(clause) && !/\boven\b/i.test(clause)) {
    return otherWords.test(clause) ? 'other' : 'inside'
  }
  const whole = text.slice(sentence.from, sentence.to)
  if (isCoolEnough && insideWords.test(whole) && !ovenWords.test(clause)) return 'inside'
  if (highCelsius < coolestOvenCelsius) return 'other'
  if (ovenWords.test(clause) || ovenWords.test(whole)) return 'oven'
  // `Turn it down to 160 °C`: no other vessel of a kitchen is set to a temperature like this.
  return highCelsius > hottestInsideCelsius && !otherWords.test(whole) ? 'oven' : 'other'
}

/** From the comma, semicolon or `until` before a temperature to the one behind it. */
function clauseAround(text: string, {from, to}: TextRange, sentence: TextRange): string {
  const before = text.slice(sentence.from, from)
  const behind = text.slice(to, sentence.to)
  const cut = before.split(/[;,:](?=\s)|\b(?=until\b|then\b|or until\b)/i).at(-1) ?? before
  const [rest = ''] = behind.split(/[;,](?=\s)|\b(?=until\b|then\b|and bake\b)/i)
  return `${cut}${text.slice(from, to)}${rest}`
}
