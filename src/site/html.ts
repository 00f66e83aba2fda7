import type {Root} from 'hast'
import rehypeStringify from 'rehype-stringify'
import {unified} from 'unified'

const processor = unified().use(rehypeStringify, {
  upperDoctype: true,
  characterReferences: {useNamedReferences: false},
})

/** A tree as text. Text and attributes are escaped here, and a raw node stays text. */
export function htmlText(tree: Root): string {
  return `${processor.stringify(tree)}\n`
}
