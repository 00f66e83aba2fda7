import {lengthNames} from '../../units/unit-names.ts'
import {millimetresPerUnit} from '../../units/units.ts'
import type {Pan} from '../recipe.ts'
import type {TextRange} from './match-at.ts'

/** A vessel with its size in a sentence: `a 24 cm round tin`, `23 x 33 cm dish`. */
export interface PanMention extends TextRange {
  /** As written, size and vessel. */
  readonly text: string
  readonly shape?: Pan['shape']
  readonly acrossMillimetres: number
  readonly secondMillimetres?: number
}

const number = String.raw`(\d{1,2}(?:\.\d)?)`
const unit = String.raw`[-\s]?(cm|mm|in\b\.?|inch(?:es)?|centimetres?|["″])`
const size = String.raw`(?<![\d.,/])${number}(?:${unit})?(?:\s*(?:x|×|by)\s*${number})?(?:${unit})?`
const vesselWord = String.raw`(?:tins?|tray|dish(?:es)?|moulds?|skillet|frying[-\s]pan|saucepan|pan|pot|casserole|ring|springform|ramekins?|sheet)\b`

/** The size before the vessel, with a few words between: `20 cm / 8 in loose-based tart tin`. */
const sizeFirst = new RegExp(
  String.raw`${size}(?:\s*[(/]\s*[\d.]+${unit}(?:\s*\))?)?((?:[-,]?\s{0,3}(?!(?:in|into|on|onto|to|of|the|an?|and|with|from|deep|thick|apart)\b)\p{L}{1,20}){0,5}?)[-\s]{1,3}(${vesselWord})`,
  'giu',
)
/** Or behind it: `a round tin, 24 cm across`, `a tin (24 cm)`. */
const vesselFirst = new RegExp(
  String.raw`((?:\b\p{L}{1,20}[-\s]{1,3}){0,4})\b(${vesselWord})(?:,?\s{0,3}\(?(?:of|about|measuring)?\s{0,3})${size}`,
  'giu',
)

const shapes: readonly {readonly word: RegExp; readonly shape: Pan['shape']}[] = [
  {word: /\bring\b/i, shape: 'ring'},
  {word: /\bsquare\b/i, shape: 'square'},
  {word: /\brectang|\bloaf\b|\bbrownie\b/i, shape: 'rectangle'},
  {word: /\bround\b|\bspringform\b|\btart\b|\bpie\b|\bfrying|\bskillet\b/i, shape: 'round'},
]

/** Every vessel of a passage that has a size, in order. */
export function pansIn(text: string): readonly PanMention[] {
  const mentions: PanMention[] = []
  for (const match of text.matchAll(sizeFirst)) {
    const [all, one, oneUnit, two, twoUnit, , words = '', vessel = ''] = match
    push(mentions, {at: match.index, all, one, oneUnit, two, twoUnit, words: `${words} ${vessel}`})
  }
  for (const match of text.matchAll(vesselFirst)) {
    const [all, words = '', vessel = '', one, oneUnit, two, twoUnit] = match
    push(mentions, {at: match.index, all, one, oneUnit, two, twoUnit, words: `${words} ${vessel}`})
  }
  return mentions.toSorted((left, right) => left.from - right.from)
}

interface Groups {
  readonly at: number
  readonly all: string
  readonly one: string | undefined
  readonly oneUnit: string | undefined
  readonly two: string | undefined
  readonly twoUnit: string | undefined
  readonly words: string
}

function push(mentions: PanMention[], {at, all, one, oneUnit, two, twoUnit, words}: Groups): void {
  const first = lengthNames.get(unitKey(oneUnit ?? twoUnit))
  const second = lengthNames.get(unitKey(twoUnit ?? oneUnit))
  if (!first || !second || one === undefined) return
  const [from, to] = [at + all.search(/\S/), at + all.length]
  // A tin named between its two sizes is one tin.
  if (mentions.some((other) => from < other.to && other.from < to)) return
  const sides = [Number(one) * millimetresPerUnit[first]]
  if (two !== undefined) sides.push(Number(two) * millimetresPerUnit[second])
  const [across = 0, other] = sides.toSorted((left, right) => left - right)
  const named = shapes.find(({word}) => word.test(words))?.shape
  const shape = other === undefined ? named : (named ?? 'rectangle')
  mentions.push({
    from,
    to,
    text: all.trim(),
    ...(shape && {shape}),
    acrossMillimetres: across,
    ...(other !== undefined && {secondMillimetres: other}),
  })
}

function unitKey(word = ''): string {
  return word
    .toLowerCase()
    .replace(/\.$/, '')
    .replace(/^centimetres?$/, 'cm')
}
