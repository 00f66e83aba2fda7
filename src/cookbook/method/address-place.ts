import type {Nodes} from 'mdast'
import type {Position} from 'unist'
import {placeWithin} from '../points.ts'
import {placeOf} from './body-reading.ts'

/**
 * The place of the address in a link or picture, which is what the writer must change; all of the
 * node where the address is not written as it was parsed (`&amp;`, a backslash).
 * @param text the whole file
 */
export function addressPlace(node: Nodes, url: string, text: string): Position {
  const place = placeOf(node)
  const content = 'children' in node ? node.children.at(-1)?.position?.end.offset : undefined
  const from = content ?? place.start.offset ?? 0
  const index = url === '' ? -1 : text.slice(from, place.end.offset).indexOf(url)
  if (index < 0) return place
  return placeWithin(text, place, from + index, from + index + url.length)
}
