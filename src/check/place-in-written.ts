import type {Position} from 'unist'
import type {Located} from '../cookbook/problem.ts'
import type {TextRange} from '../cookbook/prose/match-at.ts'

/** Where words of a text of the front matter stand as it is written; all of it where that bends. */
export function placeInWritten({value, place}: Located<string>, {from, to}: TextRange): Position {
  const {start, end} = place
  const isOneToOne = start.line === end.line && end.column - start.column === value.length
  if (!isOneToOne) return place
  const point = (index: number) => ({
    line: start.line,
    column: start.column + index,
    ...(start.offset !== undefined && {offset: start.offset + index}),
  })
  return {start: point(from), end: point(to)}
}
