import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import {withElements} from '../parts/with-elements.ts'
import type {Book} from './book.ts'

/** Links to other recipes and chapters name the page these are on, once it is known. */
export function withPages(
  {site, places, layout}: Book,
  content: readonly ElementContent[],
): ElementContent[] {
  const ids = new Set(places.values())
  const pageOf = ({tagName, properties: {href}}: Element) => {
    const id = tagName === 'a' && typeof href === 'string' ? href.slice(1) : ''
    return ids.has(id) ? layout.pageOf(id) : undefined
  }
  return withElements(content, (element) => {
    const page = pageOf(element)
    if (page === undefined) return element
    const named = h('span', {className: ['on-page']}, ` (${site.words.book.onPage(page)})`)
    return {...element, children: [...element.children, named]}
  })
}
