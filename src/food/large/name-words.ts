import {leastLikeness, longestName, spelled, spellingLikeness} from '../nearest-names.ts'

/** A word of names, and where the numbers of the rows that have it stand. */
export interface IndexedWord {
  readonly word: string
  /** Number of its first posting, from 0. */
  readonly from: number
  readonly count: number
}

/** Words of one name that are found again; the rest of a longer one is not. */
const mostWords = 24

/** Letters of a word that are kept. */
const longestWord = 40

/** How like a word is that begins with the one that was written; ours, no source. */
const begunLikeness = 0.9

/** Words of the index taken for one that was written, the likest. */
const mostAlike = 200

/** The words by which a name is found. */
export function nameWords(name: string): readonly string[] {
  const words = spelled(name).words.slice(0, mostWords)
  return [...new Set(words.map((word) => word.slice(0, longestWord)))]
}

export function indexedWordText({word, from, count}: IndexedWord): string {
  return `${word}\t${from}\t${count}\n`
}

/** @returns undefined for a line that is none */
export function readIndexedWord(line: string): IndexedWord | undefined {
  const [word, from, count, ...more] = line.split('\t')
  if (word === undefined || more.length > 0) return undefined
  const isNumbers = [from, count].every((number) => /^\d+$/.test(number ?? ''))
  return isNumbers ? {word, from: Number(from), count: Number(count)} : undefined
}

/** A word of the index that is meant by one that was written, 0.6 to 1. */
export interface AlikeWord extends IndexedWord {
  readonly likeness: number
}

/** Gathers the words of an index that a written name may mean. */
export class WantedWords {
  /** For each written word those of the index that are like it. */
  readonly #alike: readonly {readonly written: string; readonly words: AlikeWord[]}[]

  constructor(written: string) {
    const words = written.length > longestName ? [] : nameWords(written)
    this.#alike = words.map((word) => ({written: word, words: []}))
  }

  consider(indexed: IndexedWord): void {
    for (const {written, words} of this.#alike) {
      const likeness = likenessOf(written, indexed.word)
      if (likeness === 0) continue
      words.push({...indexed, likeness})
      if (words.length > 2 * mostAlike) words.splice(0, words.length, ...likest(words))
    }
  }

  /** Share of the written letters in each word, and the words it may mean, the likest first. */
  get wanted(): readonly {readonly share: number; readonly words: readonly AlikeWord[]}[] {
    const letters = this.#alike.reduce((sum, {written}) => sum + written.length, 0)
    return this.#alike.map(({written, words}) => ({
      share: written.length / letters,
      words: likest(words),
    }))
  }
}

function likest(words: readonly AlikeWord[]): readonly AlikeWord[] {
  return words
    .toSorted((left, right) => right.likeness - left.likeness || (left.word < right.word ? -1 : 1))
    .slice(0, mostAlike)
}

function likenessOf(written: string, word: string): number {
  if (written === word) return 1
  const slipped = spellingLikeness(written, word, leastLikeness)
  return word.startsWith(written) ? Math.max(begunLikeness, slipped) : slipped
}
