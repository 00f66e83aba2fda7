import type {ElementContent} from 'hast'
import type {Html, Parents} from 'mdast'
import {shortened} from '../yaml/reader.ts'
import {type BodyReading, placeOf} from './body-reading.ts'

/** One HTML comment, or several: a note among writers, which readers of a page never see either. */
const comments = /^(?:\s*<!--(?:(?!-->)[\s\S])*-->)+\s*$/

/**
 * HTML in a text: reported, and shown as it is written, so that nothing of it takes effect and
 * nothing vanishes unseen. Comments alone are left out without a word.
 */
export function rawHtml(
  reading: BodyReading,
  node: Html,
  parent: Parents | undefined,
): ElementContent | undefined {
  if (comments.test(node.value)) return undefined
  reading.context.report({
    ruleId: 'no-raw-html',
    place: placeOf(node),
    actual: shortened(node.value),
    reason: `\`${shortened(node.value)}\` is HTML, expected Markdown`,
    note: 'Write `**bold**`, `*italic*`, a list or a heading. A `<` that is meant as it stands takes a backslash before it.',
  })
  const shown: ElementContent = {type: 'text', value: node.value}
  if (parent?.type !== 'root' && parent?.type !== 'blockquote' && parent?.type !== 'listItem') {
    return shown
  }
  return {type: 'element', tagName: 'p', properties: {}, children: [shown]}
}
