import type {Position} from 'unist'
import {pointAmong} from './points.ts'
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
