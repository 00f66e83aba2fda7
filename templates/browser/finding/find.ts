import {slips} from '../../../src/units/nearest.ts'

/** A dish as its row in the table tells it. */
export interface Dish {
  /** Plain words of its name, its tags and its ingredients. */
  readonly words: readonly string[]
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
  readonly words: readonly string[]
  readonly most: Readonly<Record<string, number>>
  readonly least: Readonly<Record<string, number>>
  readonly tag?: string | undefined
  readonly diet?: string | undefined
  readonly without: readonly string[]
}

/** Whether a dish is what is asked for. What nobody knows of it never counts in its favour. */
export function isFound(dish: Dish, {words, most, least, tag, diet, without}: Query): boolean {
  return (
    words.every((word) => dish.words.some((other) => isAlike(word, other))) &&
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

/** Lower case without accents, word by word. */
export function plainWords(text: string): readonly string[] {
  return text
    .normalize('NFKD')
    .replaceAll(/\p{Mark}/gu, '')
    .toLowerCase()
    .split(/[^\p{Letter}\p{Number}]+/u)
    .filter((word) => word !== '')
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
