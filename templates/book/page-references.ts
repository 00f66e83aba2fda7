import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import {visit} from 'unist-util-visit'
import type {Book} from './book.ts'

/** Links to other recipes and chapters name the page these are on, once it is known. */
export function withPages(
  {site, places, layout}: Book,
  content: ElementContent[],
): ElementContent[] {
  const ids = new Set(places.values())
  for (const node of content) {
    visit(node, 'element', ({tagName, properties, children}) => {
      const {href} = properties
      const id = tagName === 'a' && typeof href === 'string' ? href.slice(1) : ''
      const page = ids.has(id) ? layout.pageOf(id) : undefined
      if (page === undefined) return
      children.push(h('span', {className: ['on-page']}, ` (${site.words.book.onPage(page)})`))
    })
  }
  return content
}
