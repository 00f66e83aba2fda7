import type {ElementContent, Properties} from 'hast'
import {type Child, h} from 'hastscript'
import {relativeHref} from '../addresses.ts'
import {withElements} from './with-elements.ts'

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
  return withElements(h('div', child).children, (element) => ({
    ...element,
    tagName: sunken(element.tagName, placing.deeper),
    properties: readdressed(element.tagName, renamed(element.properties, placing.id), placing),
  }))
}

function renamed(properties: Properties, place: string): Properties {
  const {id, ariaLabelledBy, ariaDescribedBy} = properties
  if (id === undefined && ariaLabelledBy === undefined && ariaDescribedBy === undefined) {
    return properties
  }
  const within = (name: string) => {
    const ids = properties[name]
    if (typeof ids === 'string') return {[name]: idWithin(place, ids)}
    return Array.isArray(ids) ? {[name]: ids.map((one) => idWithin(place, `${one}`))} : {}
  }
  return {
    ...properties,
    ...within('id'),
    ...within('ariaLabelledBy'),
    ...within('ariaDescribedBy'),
  }
}

/** Two hyphens keep place and id apart: no slug has them. */
function idWithin(place: string, id: string): string {
  return `${place}--${id}`
}

function sunken(tagName: string, deeper: number): string {
  const [, level] = /^h([1-6])$/.exec(tagName) ?? []
  return level === undefined ? tagName : `h${Math.min(6, Number(level) + deeper)}`
}

/** Only for taking relative addresses apart; it never appears. */
const base = 'https://site.invalid/'

function readdressed(tagName: string, properties: Properties, placing: Placing): Properties {
  const name = tagName === 'a' ? 'href' : tagName === 'img' ? 'src' : undefined
  const address = name && properties[name]
  if (name === undefined || typeof address !== 'string' || URL.canParse(address)) return properties
  return {...properties, [name]: addressWithin(address, placing)}
}

function addressWithin(address: string, {from, to, id, places}: Placing): string {
  const {pathname, hash} = new URL(address, `${base}${from}`)
  const path = decodeURIComponent(pathname.slice(1))
  const anchor = decodeURIComponent(hash.slice(1))
  const place = address.startsWith('#') ? id : places.get(path)
  if (place === undefined) return relativeHref(to, path, anchor || undefined)
  return `#${anchor === '' ? place : idWithin(place, anchor)}`
}
