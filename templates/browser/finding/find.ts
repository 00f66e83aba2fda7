import {slips} from '../../../src/units/nearest.ts'
import {plainWords} from '../../parts/plain-words.ts'

/** A dish as the data of the table tell it. */
export interface Dish {
  /** Of its name, its tags and its ingredients: places in the vocabulary. */
  readonly words: readonly number[]
  readonly figures: Readonly<Record<string, Known | undefined>>
  readonly tags: readonly string[]
  readonly diets: readonly string[]
  /** What it holds, may hold by traces, or may be given by choice. */
  readonly allergens: readonly string[]
  /** Some food's allergens are not stated. */
  readonly isOpen: boolean
}

/** A figure of a dish; one that is not complete is "at least" that. */
export interface Known {
  readonly value: number
  readonly isComplete: boolean
}

/** What a reader asks for; what is absent does not matter. */
export interface Query {
  /** For each word that was typed, the words of the vocabulary that it may mean. */
  readonly words: readonly ReadonlySet<number>[]
  readonly most: Readonly<Record<string, number>>
  readonly least: Readonly<Record<string, number>>
  readonly tag?: string | undefined
  readonly diet?: string | undefined
  readonly without: readonly string[]
}

/** Whether a dish is what is asked for. What nobody knows of it never counts in its favour. */
export function isFound(dish: Dish, {words, most, least, tag, diet, without}: Query): boolean {
  return (
    words.every((meant) => dish.words.some((word) => meant.has(word))) &&
    Object.entries(most).every(([name, limit]) => isAtMost(dish.figures[name], limit)) &&
    Object.entries(least).every(([name, limit]) => (dish.figures[name]?.value ?? 0) >= limit) &&
    (tag === undefined || dish.tags.includes(tag)) &&
    (diet === undefined || dish.diets.includes(diet)) &&
    (without.length === 0 || (!dish.isOpen && !without.some((one) => dish.allergens.includes(one))))
  )
}

function isAtMost(figure: Known | undefined, limit: number): boolean {
  return figure?.isComplete === true && figure.value <= limit
}

/**
 * What each word of a text may mean. A vocabulary is looked through once, however many dishes
 * use its words.
 */
export function meantBy(
  text: string,
  vocabulary: readonly string[],
): readonly ReadonlySet<number>[] {
  return plainWords(text).map(
    (typed) => new Set(vocabulary.flatMap((word, place) => (isAlike(typed, word) ? [place] : []))),
  )
}

/** Slips of the pen that a word of a length may hold: none in `egg`, one in `lentil`, two in `chickpeas`. */
function mostSlips({length}: string): number {
  return length < 4 ? 0 : length < 8 ? 1 : 2
}

/** Whether a typed word, perhaps not yet typed to its end, may mean another. */
export function isAlike(typed: string, word: string): boolean {
  if (word.includes(typed)) return true
  const most = mostSlips(typed)
  if (most === 0) return false
  const beginnings = [word, word.slice(0, typed.length), word.slice(0, typed.length + 1)]
  return beginnings.some((part) => slips(typed, part, most + 1) <= most)
}
