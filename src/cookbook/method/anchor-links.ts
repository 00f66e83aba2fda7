import {nearestNames} from '../../food/nearest-names.ts'
import {shortened} from '../yaml/reader.ts'
import type {AnchorLink, BodyReading} from './body-reading.ts'
import {headingPrefix} from './headings.ts'

/** Anchors a message names. */
const mostNamed = 3

/** Links to nowhere that get suggestions; a file with more of them was not written by hand. */
const mostSuggested = 20

/**
 * Completes the links to headings, once all headings are known. They may be written with the
 * heading's id or without its prefix; what leads nowhere is reported and keeps its words only.
 */
export function settleAnchorLinks(reading: BodyReading): void {
  const headingIds = new Set(reading.headings.map(({element}) => String(element.properties.id)))
  const unknown: AnchorLink[] = []
  for (const link of reading.anchorLinks) {
    const spellings = [link.anchor, `${headingPrefix}-${link.anchor}`]
    const id = spellings.find((spelling) => headingIds.has(spelling))
    if (id === undefined) unknown.push(link)
    else link.element.properties.href = `#${id}`
  }
  const known = [
    ...reading.lineByAnchor.keys(),
    ...[...headingIds].map((id) => id.slice(headingPrefix.length + 1)),
  ]
  for (const [index, link] of unknown.entries()) {
    const near = index < mostSuggested ? nearestNames(link.anchor, known, mostNamed) : []
    reportUnknown(link, near, reading)
  }
}

function reportUnknown(
  {element, anchor, place}: AnchorLink,
  near: readonly string[],
  {context}: BodyReading,
): void {
  element.tagName = 'span'
  const [first] = context.lines
  const links = near.map((name) => `#${name}`)
  const expected =
    links.length > 0
      ? links.map((link) => `\`${link}\``).join(' or ')
      : first
        ? `the anchor of one, such as \`#${first.anchor}\``
        : 'a heading of this page'
  context.report({
    ruleId: context.anchorRule,
    place,
    actual: `#${anchor}`,
    reason: `Link \`#${shortened(anchor)}\` names no ${first ? 'ingredient or ' : ''}heading, expected ${expected}`,
    ...(links.length > 0 && {expected: links}),
    ...(first && {
      note: 'An ingredient’s anchor is its name in lower case with hyphens: `pearl barley` is `#pearl-barley`.',
    }),
  })
}
