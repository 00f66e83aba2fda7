import type {TextRange} from '../../cookbook/prose/match-at.ts'

/** A word of a text, and what its singular and plural share. */
export interface Word extends TextRange {
  readonly stem: string
}

/** The words of a text in order; hyphens and apostrophes part them. */
export function wordsOf(text: string): readonly Word[] {
  return Array.from(text.matchAll(/\p{L}+/gu), ({0: word, index}) => ({
    from: index,
    to: index + word.length,
    stem: stemOf(word),
  }))
}

/**
 * What the forms of an English noun share: `tomatoes`, `tomato`; `leaves`, `leaf`; `olives`,
 * `olive`; `berries`, `berry`. No word of its own, only a key.
 */
export function stemOf(word: string): string {
  return word
    .toLowerCase()
    .normalize('NFKD')
    .replace(/\p{Mark}+/gu, '')
    .replace(/(?<=..[^s])s$/, '')
    .replace(/(?<=..)e$/, '')
    .replace(/(?<=..)v$/, 'f')
    .replace(/(?<=..)i$/, 'y')
}
