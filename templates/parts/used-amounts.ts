import type {ElementContent} from 'hast'
import {visit} from 'unist-util-visit'

/** The script of a recipe's page knows the weights by their anchors: they need not stand twice. */
export function withoutWeights(content: ElementContent[]): ElementContent[] {
  for (const node of content) {
    visit(node, 'element', ({properties}) => {
      delete properties.dataGrams
    })
  }
  return content
}
