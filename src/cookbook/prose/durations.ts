import {rememberedText} from '../../units/remembered.ts'
import {matchAt, type TextRange} from './match-at.ts'
import {type ProseQuantity, quantityAt, quantityStarts} from './quantity.ts'
import {sentenceAt, sentencesOf} from './sentences.ts'

/**
 * What a time in a method means: `spent` on the step; a `part` of a longer one ("for the last 5
 * minutes", "after 20 minutes"); how often something is repeated (`every`); a limit (`within`);
 * how long the food keeps (`keeping`); a `rate` ("20 minutes per 500 g"); the `whole` dish.
 */
export type DurationRole = 'spent' | 'part' | 'every' | 'within' | 'keeping' | 'rate' | 'whole'

/** A stretch of time in a sentence: `10 to 12 minutes`, `an hour and a half`, `overnight`. */
export interface DurationMention extends TextRange {
  /** As written. */
  readonly text: string
  /** Minutes it takes at least; 0 for "up to". */
  readonly lowMinutes: number
  readonly highMinutes: number
  readonly role: DurationRole
}

const unit =
  /\s*[-‑]?\s*(?:(seconds?|secs?|s)|(minutes?|mins?|min\.|′)|(hours?|hrs?|h)|(days?|nights?)|(weeks?|wks?)|(months?|mths?))(?!\p{L}|-old)/iuy

/** A month is 30 days: keeping times are round figures. */
const minutesPerUnit = [1 / 60, 1, 60, 24 * 60, 7 * 24 * 60, 30 * 24 * 60] as const
const minutesPerHour = 60

/** Eight to twelve hours; common practice, no source. */
const overnight = {lowMinutes: 8 * minutesPerHour, highMinutes: 12 * minutesPerHour}

/** Every stretch of time of a passage, in order. */
export const durationsIn = rememberedText((text): readonly DurationMention[] => {
  const mentions: DurationMention[] = []
  const sentences = sentencesOf(text)
  let behind = 0
  for (const from of quantityStarts(text)) {
    if (from < behind) continue
    const found = durationAt(text, from)
    if (!found) continue
    behind = found.to
    mentions.push(withRole(text, sentences, {from, ...found}))
  }
  for (const {index} of text.matchAll(/\bovernight\b/gi)) {
    const found = {from: index, to: index + 'overnight'.length, ...overnight}
    mentions.push(withRole(text, sentences, found))
  }
  return mentions.toSorted((left, right) => left.from - right.from)
})

type Span = Omit<DurationMention, 'from' | 'text' | 'role'>

/** One time, or two joined to a range: `1 hour to 1½ hours`. */
function durationAt(text: string, from: number): Span | undefined {
  const first = singleDurationAt(text, from)
  if (!first || first.lowMinutes !== first.highMinutes) return first
  const between = matchAt(/\s*(?:-|–|—|\bto\b)\s*/iuy, text, first.to)
  const second = between && singleDurationAt(text, first.to + between[0].length)
  return second && second.lowMinutes > first.lowMinutes
    ? {to: second.to, lowMinutes: first.lowMinutes, highMinutes: second.highMinutes}
    : first
}

function singleDurationAt(text: string, from: number): Span | undefined {
  const quantity = quantityAt(text, from)
  if (!quantity) return undefined
  const more = matchAt(
    /\s+(?:more|further|extra|additional|full|good|whole|short|long)(?=\s)/iuy,
    text,
    quantity.to,
  )
  const unitFrom = quantity.to + (more?.[0].length ?? 0)
  const match = matchAt(unit, text, unitFrom)
  const which = match ? match.slice(1).findIndex((group) => group !== undefined) : -1
  const each = minutesPerUnit[which]
  if (!match || each === undefined || isNoTime(text, from, quantity, match[0])) return undefined
  const to = unitFrom + match[0].length
  const span = {to, lowMinutes: quantity.low * each, highMinutes: quantity.high * each}
  return each === minutesPerHour ? withMinutes(text, span) : span
}

/** `a second bowl`, `one second` are an order; `10 s` may be a plural and `5′` a length. */
function isNoTime(text: string, from: number, {low}: ProseQuantity, word: string): boolean {
  const isWord = !/\d/.test(text[from] ?? '')
  return isWord && (/^\s*-?second$/i.test(word) || (/^\s*(?:h|s|min)$/i.test(word) && low <= 1))
}

/** `1 h 30 min`, `1 hour and 15 minutes`, `an hour and a half`, `1h30`. */
function withMinutes(text: string, hours: Span): Span {
  const part = matchAt(
    /\s+and\s+(?:(a\s+half)|(a\s+quarter)|(three[-\s]quarters))(?!\p{L})/iuy,
    text,
    hours.to,
  )
  if (part) return later(hours, part[1] ? 30 : part[2] ? 15 : 45, part[0].length)
  const minutes = matchAt(
    /(?:\s*,?\s*(?:and\s+)?)(\d{1,2})(?:\s*-?\s*(?:minutes?|mins?|m)(?!\p{L})|(?=\D|$)(?<=h\d\d))/iuy,
    text,
    hours.to,
  )
  return minutes ? later(hours, Number(minutes[1]), minutes[0].length) : hours
}

function later({to, lowMinutes, highMinutes}: Span, minutes: number, length: number): Span {
  return {to: to + length, lowMinutes: lowMinutes + minutes, highMinutes: highMinutes + minutes}
}

const sides =
  /^\s*(?:(?:on|per|for|each|a|either|both)\s+)*(?:each\s+|either\s+|both\s+|per\s+|a\s+|the\s+other\s+)*sides?\b/i
const upTo = /\b(?:up to|no more than|less than|under|at most|no longer than|not more than)\s*$/i

function withRole(
  text: string,
  sentences: readonly TextRange[],
  found: Omit<DurationMention, 'text' | 'role'>,
): DurationMention {
  const {from, to} = found
  const sentence = sentenceAt(sentences, from)
  const before = text.slice(sentence?.from, from)
  const behind = text.slice(to, sentence?.to)
  const times = sides.test(behind) ? 2 : 1
  return {
    from,
    to,
    text: text.slice(from, to),
    lowMinutes: upTo.test(before) ? 0 : found.lowMinutes * times,
    highMinutes: found.highMinutes * times,
    role: roleOf(before, behind, found),
  }
}

const roles: readonly {readonly role: DurationRole; before?: RegExp; behind?: RegExp}[] = [
  {role: 'rate', behind: /^\s*(?:per|for (?:each|every))\s+(?:\d|kg|kilo|pound|lb|half)/i},
  {
    role: 'every',
    before: /\b(?:every|each|(?:intervals|bursts|pulses) of)(?:\s+(?:other|or so))?\s*$/i,
  },
  {role: 'every', behind: /^\s*-?\s*(?:intervals?|bursts?|pulses)\b|^\s+at a time\b/i},
  {
    role: 'whole',
    before:
      /\b(?:in all|altogether|in total|start to finish|ready (?:in|within)|total time|takes? (?:about |around )?(?:only |just )?)[:\s]*$/i,
  },
  {
    role: 'whole',
    behind: /^\s+(?:in all|altogether|in total|from start to finish|start to finish)\b/i,
  },
  {role: 'within', before: /\b(?:within|inside|in under|in less than)(?:\s+(?:about|the))?\s*$/i},
  {
    role: 'part',
    before:
      /\b(?:after|last|final|first|halfway|remaining|for the next|past)(?:\s+(?:about|around|another|the|of the))*\s*$/i,
  },
  {
    role: 'part',
    behind:
      /^\s*(?:before|beforehand|earlier|later|after\b|apart|ago|from the end|ahead|of (?:the )?(?:cooking|baking|roasting|simmering) (?:time|left)|(?:to go|left|remaining)\b|in (?:add|stir))/i,
  },
]

/** Days, or hours said of what keeps, are no work. */
const keepingWords =
  /\b(?:keeps?|kept|stor(?:e|es|ed|age)|lasts?|good for|use (?:it |them )?(?:up )?(?:within|in)|eat(?:en)? within|shelf life|best before|freezes?)\b/i
const stirring = /\bkeep(?:ing)?\s+(?:\w+ing|it|them|warm|covered|hot|the)\b/i
const longestStepMinutes = 24 * minutesPerHour

function roleOf(before: string, behind: string, {highMinutes}: Span): DurationRole {
  const told = roles.find(
    ({before: left, behind: right}) => left?.test(before) || right?.test(behind),
  )
  const isKeeping = keepingWords.test(before) && !stirring.test(before)
  if (
    isKeeping &&
    (highMinutes >= longestStepMinutes ||
      /\b(?:fridge|freezer|frozen|chilled)\b/i.test(before + behind))
  ) {
    return 'keeping'
  }
  return told?.role ?? 'spent'
}
