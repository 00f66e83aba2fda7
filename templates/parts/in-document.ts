import type {Element, ElementContent} from 'hast'
import {type Child, h} from 'hastscript'
import {visit} from 'unist-util-visit'
import {relativeHref} from '../addresses.ts'

/** How parts made for pages of their own stand together in one document. */
export interface Placing {
  /** Path of the page the parts were made for. */
  readonly from: string
  /** Path of the document. */
  readonly to: string
  /** Id of the place in the document: its own ids stand behind it. */
  readonly id: string
  /** By how many levels the headings go down. */
  readonly deeper: number
  /** Ids of places in the document, by the path of the page that each stands for. */
  readonly places: ReadonlyMap<string, string>
}

/**
 * A part of a page as part of a longer document: ids are unique in it, links between pages that it
 * holds stay inside it, headings stand below its own.
 */
export function inDocument(child: Child, placing: Placing): ElementContent[] {
  const {children} = h('div', child)
  for (const node of children) {
    visit(node, 'element', (element) => {
      renameIds(element, placing.id)
      sinkHeading(element, placing.deeper)
      readdress(element, placing)
    })
  }
  return children
}

function renameIds({properties}: Element, place: string): void {
  if (typeof properties.id === 'string') properties.id = idWithin(place, properties.id)
  for (const name of ['ariaLabelledBy', 'ariaDescribedBy']) {
    const ids = properties[name]
    if (typeof ids === 'string') properties[name] = idWithin(place, ids)
    else if (Array.isArray(ids)) properties[name] = ids.map((id) => idWithin(place, `${id}`))
  }
}

/** Two hyphens keep place and id apart: no slug has them. */
function idWithin(place: string, id: string): string {
  return `${place}--${id}`
}

function sinkHeading(element: Element, deeper: number): void {
  const [, level] = /^h([1-6])$/.exec(element.tagName) ?? []
  if (level !== undefined) element.tagName = `h${Math.min(6, Number(level) + deeper)}`
}

/** Only for taking relative addresses apart; it never appears. */
const base = 'https://site.invalid/'

function readdress({tagName, properties}: Element, {from, to, id, places}: Placing): void {
  const name = tagName === 'a' ? 'href' : tagName === 'img' ? 'src' : undefined
  const address = name && properties[name]
  if (name === undefined || typeof address !== 'string' || URL.canParse(address)) return
  const {pathname, hash} = new URL(address, `${base}${from}`)
  const path = decodeURIComponent(pathname.slice(1))
  const anchor = decodeURIComponent(hash.slice(1))
  const place = address.startsWith('#') ? id : places.get(path)
  if (place === undefined) properties[name] = relativeHref(to, path, anchor || undefined)
  else properties[name] = `#${anchor === '' ? place : idWithin(place, anchor)}`
}
