import type {Element} from 'hast'
import type {Heading} from 'mdast'
import type {State} from 'mdast-util-to-hast'
import {asciiSlug, uniqueAnchor} from '../ascii-slug.ts'
import type {BodyReading} from './body-reading.ts'

/** Sets the headings of a text apart from a page's own ids and from anything a script looks up. */
export const headingPrefix = 'section'

/** A heading, with an id from its words; its level is set by `settleHeadings`. */
export function heading(reading: BodyReading, state: State, node: Heading): Element {
  const {children, text} = reading.walkPassage('heading', state, node)
  const id = uniqueAnchor([headingPrefix, asciiSlug(text)].join('-').replace(/-$/, ''), reading.ids)
  const element: Element = {type: 'element', tagName: 'h2', properties: {id}, children}
  reading.headings.push({element, depth: node.depth})
  return element
}

/**
 * Puts the headings below those of the page, whatever level the writer began with: the highest
 * in the text gets the level given, and the others keep their distance from it, down to 6.
 */
export function settleHeadings({headings, context}: BodyReading): void {
  const highest = Math.min(...headings.map(({depth}) => depth))
  for (const {element, depth} of headings) {
    element.tagName = `h${Math.min(6, context.highestHeading + depth - highest)}`
  }
}
