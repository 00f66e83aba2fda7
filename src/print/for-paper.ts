import {visit} from 'unist-util-visit'
import {absoluteHref} from '../../templates/addresses.ts'
import type {Page} from '../../templates/site.ts'

/** Only for taking relative addresses apart; it never appears. */
const base = 'https://site.invalid/'

/**
 * A page whose links hold when it leaves the site as a PDF: within it, or to the published site.
 * Without a published address a link to another page keeps its words alone.
 */
export function forPaper({path, tree}: Page, address: string | undefined): Page {
  const copy = structuredClone(tree)
  visit(copy, 'element', ({tagName, properties}) => {
    const {href} = properties
    if (tagName !== 'a' || typeof href !== 'string') return
    if (href.startsWith('#') || URL.canParse(href)) return
    if (address === undefined) {
      delete properties.href
      return
    }
    const {pathname, hash} = new URL(href, `${base}${path}`)
    properties.href = `${absoluteHref(address, decodeURIComponent(pathname.slice(1)))}${hash}`
  })
  return {path, tree: copy}
}
