import type {Element, ElementContent} from 'hast'
import type {Definition, Link, LinkReference} from 'mdast'
import type {State} from 'mdast-util-to-hast'
import {hrefFrom, linkTarget} from '../link-target.ts'
import {shortened} from '../yaml/reader.ts'
import {addressPlace} from './address-place.ts'
import {type BodyReading, placeOf} from './body-reading.ts'
import {usedAmount} from './used-amount.ts'

/** What a link leads to, and the node that says so: the link, or the definition it refers to. */
interface Written {
  readonly node: Link | LinkReference
  readonly address: Link | Definition
}

export function link(reading: BodyReading, state: State, node: Link): ElementContent[] {
  return linked(reading, {node, address: node}, state.all(node))
}

/** A link whose address stands in a definition, `[barley][grain]`; without one, only its words. */
export function linkReference(
  reading: BodyReading,
  state: State,
  node: LinkReference,
): ElementContent[] {
  const definition = state.definitionById.get(node.identifier.toUpperCase())
  const words = state.all(node)
  return definition ? linked(reading, {node, address: definition}, words) : words
}

function linked(
  reading: BodyReading,
  {node, address}: Written,
  words: ElementContent[],
): ElementContent[] {
  const {source, report} = reading.context
  const target = linkTarget(address.url, source.path)
  const place = () => addressPlace(address, address.url, source.text)
  const title = address.title == null ? {} : {title: address.title}
  switch (target.kind) {
    case 'address':
      return [anchorElement({href: target.href, ...title}, words)]
    case 'file': {
      const {path, anchor} = target
      reading.links.push({path, ...(anchor !== undefined && {anchor}), place: place()})
      return [anchorElement({href: hrefFrom(source.path, path, anchor), ...title}, words)]
    }
    case 'anchor': {
      const line = reading.lineByAnchor.get(target.anchor)
      if (line) {
        reading.ingredientLinks.push({anchor: line.anchor, place: placeOf(node)})
        return usedAmount(line, words)
      }
      const element = anchorElement({...title}, words)
      reading.anchorLinks.push({element, anchor: target.anchor, place: place()})
      return [element]
    }
    case 'refused':
      report({
        ruleId: 'no-unsafe-link',
        place: place(),
        actual: address.url,
        reason: `Link \`${shortened(address.url)}\` ${target.fault}, expected a web or mail address, a file of the cookbook or \`#\` and an ingredient`,
        note: 'A file is named as seen from this one: `barley-pot.md`, `../pages/about.md`. The words of the link are shown without it.',
      })
      return words
  }
}

function anchorElement(properties: Element['properties'], children: ElementContent[]): Element {
  return {type: 'element', tagName: 'a', properties, children}
}
