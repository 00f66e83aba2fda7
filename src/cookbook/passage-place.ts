import type {Position} from 'unist'
import {pointAmong} from './points.ts'
import type {TextRange} from './prose/match-at.ts'
import type {Passage, Stretch} from './recipe.ts'

/**
 * The range in the file of some characters of a passage: `180 °C` inside a step, exactly.
 * @param from index of the first character in `passage.text`
 * @param to index behind the last one
 */
export function placeInPassage(passage: Passage, from: number, to: number): Position {
  const {lineStarts, place} = passage
  const start = rangeOf(passage, from).start
  const end = to > from ? rangeOf(passage, to - 1).end : start
  return {
    start: pointAmong(lineStarts, place.start.line, start),
    end: pointAmong(lineStarts, place.start.line, end),
  }
}

/** The offsets in the file of one character. */
function rangeOf(
  {text, stretches, place}: Passage,
  index: number,
): {readonly start: number; readonly end: number} {
  const which = stretches.findLastIndex((stretch) => stretch.index <= index)
  const stretch: Stretch | undefined = stretches[which]
  const fallback = place.start.offset ?? 0
  if (!stretch) return {start: fallback, end: fallback}
  const next = stretches[which + 1]?.index ?? text.length
  const isOneToOne = stretch.end - stretch.start === next - stretch.index
  if (!isOneToOne) return stretch
  const start = stretch.start + index - stretch.index
  return {start, end: start + 1}
}

/** The characters of a passage that stand within a place of the file, such as a link's words. */
export function indexesOfPlace({text, stretches}: Passage, {start, end}: Position): TextRange {
  let [from, to] = [text.length, 0]
  for (const [which, stretch] of stretches.entries()) {
    const low = Math.max(stretch.start, start.offset ?? 0)
    const high = Math.min(stretch.end, end.offset ?? 0)
    if (high <= low) continue
    const next = stretches[which + 1]?.index ?? text.length
    const isOneToOne = stretch.end - stretch.start === next - stretch.index
    from = Math.min(from, isOneToOne ? stretch.index + low - stretch.start : stretch.index)
    to = Math.max(to, isOneToOne ? stretch.index + high - stretch.start : next)
  }
  return from < to ? {from, to} : {from: 0, to: 0}
}
