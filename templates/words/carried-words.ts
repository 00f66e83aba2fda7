import type {PublishedNutrient} from '../../src/food/nutrients.ts'
import type {Words} from './en.ts'
import {fill} from './fill.ts'

/** Of the nutrients a page speaks of. */
type NutrientNames = Readonly<Partial<Words['nutrientName']>>

/** What a script says about figures: the same texts, in the same words, as the build. */
export interface CarriedWords
  extends Pick<Words, 'atLeast' | 'atLeastBefore' | 'plusMinus' | 'unknown' | 'and' | 'decimal'> {
  readonly nutrientName: NutrientNames
  readonly missing: Words['figures']['missing']
}

/** Those texts as data, with {names} where they are filled in. */
export interface PackedWords {
  readonly atLeast: string
  readonly atLeastBefore: string
  readonly plusMinus: string
  readonly unknown: string
  readonly decimal: string
  /** What stands before the last of several. */
  readonly lastAnd: string
  readonly nutrientName: NutrientNames
  readonly missing: string
}

/** The build's own, by the names scripts know. */
export function carriedWords(words: Words): CarriedWords {
  return {...words, missing: words.figures.missing}
}

/** @param named the nutrients that the page speaks of */
export function packedWords(words: Words, named: readonly PublishedNutrient[]): PackedWords {
  return {
    atLeast: words.atLeast('{amount}'),
    atLeastBefore: words.atLeastBefore,
    plusMinus: words.plusMinus('{amount}'),
    unknown: words.unknown,
    decimal: words.decimal,
    lastAnd: words.and(['', '']),
    nutrientName: Object.fromEntries(named.map((name) => [name, words.nutrientName[name]])),
    missing: words.figures.missing('{names}', '{foods}'),
  }
}

export function unpackedWords(words: PackedWords): CarriedWords {
  return {
    ...words,
    atLeast: (amount) => fill(words.atLeast, {amount}),
    plusMinus: (amount) => fill(words.plusMinus, {amount}),
    and: (names) =>
      names.length < 2
        ? names.join('')
        : `${names.slice(0, -1).join(', ')}${words.lastAnd}${names.at(-1)}`,
    missing: (names, foods) => fill(words.missing, {names, foods}),
  }
}
