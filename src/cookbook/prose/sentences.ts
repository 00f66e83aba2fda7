import {rememberedText} from '../../units/remembered.ts'
import type {TextRange} from './match-at.ts'

/**
 * Where a sentence ends: a full stop and the like before a capital, a digit or the end, a line
 * ending. The point of `10 min. more` and the one inside `1.5 cm` end nothing.
 */
const sentenceEnd = /[.!?][)"”’]?(?=\s+[\p{Lu}\d(“"]|\s*$)|\n/gu

/** The sentences of a passage, in order, without the blanks between them. */
export const sentencesOf = rememberedText((text): readonly TextRange[] => {
  const sentences: TextRange[] = []
  let from = 0
  const close = (to: number): void => {
    const lead = text.slice(from, to).search(/\S/)
    if (lead >= 0) sentences.push({from: from + lead, to})
    from = to
  }
  for (const end of text.matchAll(sentenceEnd)) close(end.index + end[0].length)
  close(text.length)
  return sentences
})

/** The sentence that holds a character; the whole text where none does. */
export function sentenceAround(text: string, index: number): TextRange {
  return sentenceAt(sentencesOf(text), index) ?? {from: 0, to: text.length}
}

/** The same among sentences that were parted before. */
export function sentenceAt(sentences: readonly TextRange[], index: number): TextRange | undefined {
  return sentences.find(({from, to}) => from <= index && index < to)
}
