import type {PublishedNutrient} from '../../food/nutrients.ts'
import {parseFigure} from '../../food/parse-figure.ts'
import {rememberedText} from '../../units/remembered.ts'
import type {StatedBasis} from '../recipe.ts'
import {matchAt, type TextRange} from './match-at.ts'
import {type ProseQuantity, quantityAt, quantityStarts} from './quantity.ts'
import {sentenceAround} from './sentences.ts'

/** A figure of the dish in a sentence: `only 480 kcal`, `40 g of protein`, `under 500 calories`. */
export interface FigureMention extends TextRange {
  readonly nutrient: PublishedNutrient
  /** In the nutrient's own unit. */
  readonly value: number
  /** Unit of the last digit that means something, same unit: 10 for `about 480 kcal`. */
  readonly increment: number
  /** As written, without the words around it. */
  readonly text: string
  /** `under 500 kcal` is a bound, not a figure. */
  readonly bound: 'none' | 'at most' | 'at least'
  /** What the sentence says it is per; absent where it does not say. */
  readonly basis?: StatedBasis
}

/** How sentences name a nutrient; the longer name first. */
const nutrientWords: readonly (readonly [PublishedNutrient, string])[] = [
  ['saturated', 'saturated\\s+fat|saturates'],
  ['addedSugars', 'added\\s+sugars?'],
  ['protein', 'protein'],
  ['fibre', 'fib(?:re|er)'],
  ['carbohydrate', 'carbohydrates?|carbs'],
  ['fat', 'fat'],
  ['sugars', 'sugars'],
  ['sodium', 'sodium'],
]

const energyUnit = /\s*(kcal|kilocalories|calories|cals?|kj|kilojoules)\b/iuy
const massUnit = /\s*-?(g|grams?|mg|milligrams?)\s+(?:of\s+)?/iuy

/** `protein powder`, `fat-free yoghurt`: what is weighed is no nutrient. */
const partOfName =
  /[-\s]+(?:powder|bars?|shakes?|free|yoghurt|milk|flour|sponge|chicken|cubes?)\b|-\p{L}/iuy

/** Every figure of a passage, in order. */
export const figuresIn = rememberedText((text): readonly FigureMention[] => {
  const mentions: FigureMention[] = []
  let behind = 0
  for (const from of quantityStarts(text)) {
    const quantity = from < behind ? undefined : quantityAt(text, from)
    if (!quantity) continue
    behind = quantity.to
    // A range of figures says too little to be wrong.
    const found = quantity.low === quantity.high && figureAt(text, from, quantity)
    if (found && isOfTheDish(text, found)) mentions.push(found)
  }
  return mentions
})

function figureAt(text: string, from: number, quantity: ProseQuantity): FigureMention | undefined {
  const energy = matchAt(energyUnit, text, quantity.to)
  if (energy) {
    const unit = /^k(?:j|ilojoules)$/i.test(energy[1] ?? '') ? 'kJ' : 'kcal'
    return mention(text, {from, to: quantity.to + energy[0].length}, 'energy', quantity, unit)
  }
  const mass = matchAt(massUnit, text, quantity.to)
  if (!mass) return undefined
  const start = quantity.to + mass[0].length
  for (const [nutrient, words] of nutrientWords) {
    const named = matchAt(new RegExp(`(?:${words})(?!\\p{L})`, 'iuy'), text, start)
    if (!named) continue
    const to = start + named[0].length
    if (matchAt(partOfName, text, to)) return undefined
    const unit = /^m/i.test(mass[1] ?? '') ? 'mg' : 'g'
    return mention(text, {from, to}, nutrient, quantity, unit)
  }
  return undefined
}

function mention(
  text: string,
  {from, to}: TextRange,
  nutrient: PublishedNutrient,
  {low, increment}: ProseQuantity,
  unit: string,
): FigureMention | undefined {
  const one = parseFigure(nutrient, `1 ${unit}`)
  if (!one.ok) return undefined
  const sentence = sentenceAround(text, from)
  const before = text.slice(sentence.from, from)
  const basis = basisOf(text.slice(sentence.from, sentence.to))
  const step = roughly.test(before) ? Math.max(increment, trailingStep(low)) : increment
  return {
    from,
    to,
    nutrient,
    value: low * one.value.value,
    increment: step * one.value.value,
    text: text.slice(from, to),
    bound: atMost.test(before) ? 'at most' : atLeast.test(before) ? 'at least' : 'none',
    ...(basis && {basis}),
  }
}

const roughly = /\b(?:about|around|roughly|some|circa|approximately|nearly|almost|just over)\s+$/i
const atMost =
  /\b(?:under|below|less than|fewer than|at most|no more than|not even|up to|within)\s+$/i
const atLeast = /\b(?:over|above|more than|at least|no less than|a good)\s+$/i

/** Place of the last digit that is not 0, 1 and up: 10 for 480, 100 for 500. */
function trailingStep(value: number): number {
  let step = 1
  while (value >= step * 10 && value % (step * 10) === 0) step *= 10
  return step
}

const bases: readonly (readonly [StatedBasis, RegExp])[] = [
  ['100 g', /\b(?:per|in|for|every|a)\s+100\s*g\b|\/\s*100\s*g\b/i],
  [
    'batch',
    /\b(?:whole|entire)\s+(?:batch|pot|tray|loaf|tin|pan|dish|recipe)\b|\bper batch\b|\bin all\b|\baltogether\b/i,
  ],
  [
    'serving',
    /\b(?:per|each|a|every)\s+(?:serving|portion|bowl|slice|plate|person|head|piece|glass|bar)\b/i,
  ],
]

function basisOf(sentence: string): StatedBasis | undefined {
  return bases.find(([, words]) => words.test(sentence))?.[0]
}

/** What is added, saved, or told of something else than the dish. */
const ofSomethingElse =
  /\b(?:adds?|adding|saves?|saving|extra|another|instead|without|than|original|classic|usual|shop|packet|takes? (?:off|out)|leaves? out|spoon|spoonful|tablespoon|teaspoon|a day|daily|of which)\b/i
const difference = /^\s*(?:less|fewer|more|lower|higher|lighter|a day|daily)\b/i

function isOfTheDish(text: string, {from, to}: FigureMention): boolean {
  const sentence = sentenceAround(text, from)
  const around = `${text.slice(sentence.from, from).replace(bound, '')}${text.slice(to, sentence.to)}`
  return !ofSomethingElse.test(around) && !difference.test(text.slice(to))
}

/** Words of a bound are about the figure, not about another dish. */
const bound = /\b(?:less|fewer|more) than\s+$/i
