import type {TextRange} from '../../cookbook/prose/match-at.ts'
import {rememberedText} from '../../units/remembered.ts'

/** A word of a text, and what its singular and plural share. */
export interface Word extends TextRange {
  readonly stem: string
}

/** The words of a text in order; hyphens and apostrophes part them. */
export const wordsOf = rememberedText((text): readonly Word[] => {
  return Array.from(text.matchAll(/\p{L}+/gu), ({0: word, index}) => ({
    from: index,
    to: index + word.length,
    stem: stemOf(word),
  }))
})

/** More than a cook's vocabulary, in a few languages. */
const mostStems = 20_000

/**
 * What the forms of an English noun share: `tomatoes`, `tomato`; `leaves`, `leaf`; `olives`,
 * `olive`; `berries`, `berry`. No word of its own, only a key.
 */
export const stemOf = rememberedText(
  (word): string =>
    word
      .toLowerCase()
      .normalize('NFKD')
      .replace(/\p{Mark}+/gu, '')
      .replace(/(?<=..[^s])s$/, '')
      .replace(/(?<=..)e$/, '')
      .replace(/(?<=..)v$/, 'f')
      .replace(/(?<=..)i$/, 'y'),
  mostStems,
)
