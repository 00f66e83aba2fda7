import type {Element, Text} from 'hast'
import type {Definition, Image, ImageReference} from 'mdast'
import type {State} from 'mdast-util-to-hast'
import {hrefFrom, linkTarget} from '../link-target.ts'
import {shortened} from '../yaml/reader.ts'
import {addressPlace} from './address-place.ts'
import {type BodyReading, placeOf} from './body-reading.ts'

const folder = 'images/'

export function image(reading: BodyReading, _: State, node: Image): Element | Text {
  return pictured(reading, node, node)
}

/** A picture whose address stands in a definition; without one, only its words. */
export function imageReference(
  reading: BodyReading,
  state: State,
  node: ImageReference,
): Element | Text {
  const definition = state.definitionById.get(node.identifier.toUpperCase())
  return definition ? pictured(reading, node, definition) : {type: 'text', value: node.alt ?? ''}
}

function pictured(
  reading: BodyReading,
  node: Image | ImageReference,
  address: Image | Definition,
): Element | Text {
  const {source, report} = reading.context
  const alt = node.alt ?? ''
  const target = linkTarget(address.url, source.path)
  if (target.kind !== 'file' || !target.path.startsWith(folder)) {
    report({
      ruleId: 'image-in-folder',
      place: addressPlace(address, address.url, source.text),
      actual: address.url,
      reason: `Picture \`${shortened(address.url)}\` does not stand in images/, expected a file from there`,
      note: 'Copy the picture into images/ and name it as seen from this file: `../images/barley-pot.jpg`. Its words are shown instead.',
    })
    return {type: 'text', value: alt}
  }
  if (alt.trim() === '') {
    report({
      ruleId: 'image-alternative',
      place: placeOf(node),
      reason: `Picture \`${shortened(address.url)}\` has nothing in its brackets, expected words that say what it shows`,
    })
  }
  const picture = {path: target.path.slice(folder.length), alt}
  reading.images.push({value: picture, place: addressPlace(address, address.url, source.text)})
  const src = hrefFrom(source.path, target.path)
  const title = address.title == null ? {} : {title: address.title}
  return {type: 'element', tagName: 'img', properties: {src, alt, ...title}, children: []}
}
