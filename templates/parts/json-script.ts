import type {Element} from 'hast'
import {h} from 'hastscript'

/**
 * A block of JSON in a page. The serializer passes the text of a script as it is, so that every
 * `<` is written as an escape of JSON: no text can end the block.
 */
export function jsonScript(value: unknown, type: string, id?: string): Element {
  const text = JSON.stringify(value).replaceAll('<', '\\u003c')
  return h('script', {type, id}, text)
}
