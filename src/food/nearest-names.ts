import {slips} from '../units/nearest.ts'

/** Likeness from which a name is worth offering; found on misspelt kitchen names, no source. */
export const leastLikeness = 0.6

/** Letters from which a text is no misspelt name; comparing it would only take time. */
export const longestName = 120

/** A name as it is compared with others. */
export interface SpelledName {
  readonly name: string
  /** Lower case, without accents and punctuation. */
  readonly words: readonly string[]
  readonly joined: string
}

/**
 * The names most like what was written, best first: letters may be wrong and words may stand in
 * another order ("flour, plain", "zuchini").
 * @param most length of the answer at most; shorter when little is alike
 */
export function nearestNames(
  written: string,
  names: Iterable<string>,
  most: number,
): readonly string[] {
  return nearestSpelled(written, [...names].map(spelled), most)
}

/** `nearestNames` for who asks often of the same names: spelling them out takes most of the time. */
export function nearestSpelled(
  written: string,
  names: readonly SpelledName[],
  most: number,
): readonly string[] {
  if (written.length > longestName) return []
  const wanted = spelled(written)
  if (wanted.joined === '') return []
  const likeness = likenessTo(wanted)
  return names
    .map((name) => ({name: name.name, likeness: likeness(name)}))
    .filter((ranked) => ranked.likeness >= leastLikeness)
    .sort((left, right) => right.likeness - left.likeness || (left.name < right.name ? -1 : 1))
    .slice(0, most)
    .map(({name}) => name)
}

export function spelled(name: string): SpelledName {
  const words = name
    .normalize('NFD')
    .toLowerCase()
    .replace(/\p{Mark}+|['’]/gu, '')
    .split(/[^\p{Letter}\p{Number}%]+/u)
    .filter((word) => word !== '')
  return {name, words, joined: words.join('')}
}

/** How like a name is to `wanted`: 1 for the same words in any order, 0 for nothing in common. */
function likenessTo(wanted: SpelledName): (name: SpelledName) => number {
  // A few hundred words make up the thousands of names, so each pair is compared once.
  const compared = new Map<string, readonly number[]>()
  const toWanted = (word: string): readonly number[] => {
    const earlier = compared.get(word)
    if (earlier) return earlier
    const alike = wanted.words.map((each) => spellingLikeness(each, word, 0.5))
    compared.set(word, alike)
    return alike
  }
  return (name) =>
    Math.max(
      wordLikeness(wanted, name, name.words.map(toWanted)),
      // For words that are split or joined otherwise: `sourcream`, `sour cream`.
      spellingLikeness(wanted.joined, name.joined, leastLikeness),
    )
}

/**
 * Share of letters in words that have a like word on the other side. Both sides count the same:
 * `barley` is half of `pearl barley`, but all of what was written is in it.
 * @param alike for each word of `name`, how like it is to each word of `wanted`
 */
function wordLikeness(
  wanted: SpelledName,
  name: SpelledName,
  alike: readonly (readonly number[])[],
): number {
  let wantedLetters = 0
  for (const [index, word] of wanted.words.entries()) {
    wantedLetters += word.length * Math.max(0, ...alike.map((row) => row[index] ?? 0))
  }
  let nameLetters = 0
  for (const [index, word] of name.words.entries()) {
    nameLetters += word.length * Math.max(0, ...(alike[index] ?? []))
  }
  return (wantedLetters / wanted.joined.length + nameLetters / name.joined.length) / 2
}

/** 1 − slips ÷ length of the longer word; 0 below `least`: then it is another word. */
export function spellingLikeness(left: string, right: string, least: number): number {
  if (left === right) return 1
  const longer = Math.max(left.length, right.length)
  const limit = Math.floor(longer * (1 - least)) + 1
  if (Math.abs(left.length - right.length) >= limit) return 0
  if (lettersApart(left, right) >= limit) return 0
  const count = slips(left, right, limit)
  return count < limit ? 1 - count / longer : 0
}

/** Letters that one word has and the other lacks: never more than the slips between them. */
function lettersApart(left: string, right: string): number {
  const balance = new Int8Array(32)
  for (let at = 0; at < left.length; at++) shift(balance, left.charCodeAt(at), 1)
  for (let at = 0; at < right.length; at++) shift(balance, right.charCodeAt(at), -1)
  let missing = 0
  let added = 0
  for (const count of balance) {
    if (count > 0) missing += count
    else added -= count
  }
  return Math.max(missing, added)
}

/** Letters that share a place in the array only make the words look more alike than they are. */
function shift(balance: Int8Array, code: number, by: number): void {
  const place = code % balance.length
  balance[place] = (balance[place] ?? 0) + by
}
