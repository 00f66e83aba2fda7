import {slips} from '../units/nearest.ts'

/** Likeness from which a name is worth offering; found on misspelt kitchen names, no source. */
const leastLikeness = 0.6

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
  const wanted = spelling(written)
  const ranked: {readonly name: string; readonly likeness: number}[] = []
  for (const name of names) {
    const likeness = likenessOf(wanted, spelling(name))
    if (likeness >= leastLikeness) ranked.push({name, likeness})
  }
  ranked.sort((left, right) => right.likeness - left.likeness || (left.name < right.name ? -1 : 1))
  return ranked.slice(0, most).map(({name}) => name)
}

/** A name as it is compared. */
interface Spelling {
  /** Lower case, without accents and punctuation. */
  readonly words: readonly string[]
  readonly letterCount: number
}

function spelling(name: string): Spelling {
  const words = name
    .normalize('NFD')
    .toLowerCase()
    .replace(/\p{Mark}+|['’]/gu, '')
    .split(/[^\p{Letter}\p{Number}%]+/u)
    .filter((word) => word !== '')
  return {words, letterCount: words.reduce((count, word) => count + word.length, 0)}
}

/** 1 for the same words in any order, 0 for nothing in common. */
function likenessOf(left: Spelling, right: Spelling): number {
  if (left.letterCount === 0 || right.letterCount === 0) return 0
  return Math.max(wordLikeness(left, right), runTogetherLikeness(left, right))
}

/**
 * Share of letters in words that have a like word on the other side. Both shares count the same:
 * `barley` is half of `pearl barley`, but all of what was written is in it.
 */
function wordLikeness(left: Spelling, right: Spelling): number {
  const ofLeft = matchedLetters(left.words, right.words) / left.letterCount
  const ofRight = matchedLetters(right.words, left.words) / right.letterCount
  return (ofLeft + ofRight) / 2
}

function matchedLetters(words: readonly string[], others: readonly string[]): number {
  let letters = 0
  for (const word of words) {
    let best = 0
    for (const other of others) {
      best = Math.max(best, spellingLikeness(word, other))
      if (best === 1) break
    }
    letters += best * word.length
  }
  return letters
}

/** For words that are split or joined otherwise: `sourcream`, `sour cream`. */
function runTogetherLikeness(left: Spelling, right: Spelling): number {
  return spellingLikeness(left.words.join(''), right.words.join(''))
}

/** 1 − slips ÷ length of the longer word; 0 from half the word on: then it is another word. */
function spellingLikeness(left: string, right: string): number {
  if (left === right) return 1
  const longer = Math.max(left.length, right.length)
  const limit = Math.ceil(longer / 2)
  const count = slips(left, right, limit)
  return count < limit ? 1 - count / longer : 0
}
