import type {ElementContent} from 'hast'
import {withElements} from './with-elements.ts'

/** The script of a recipe's page knows the weights by their anchors: they need not stand twice. */
export function withoutWeights(content: readonly ElementContent[]): ElementContent[] {
  return withElements(content, (element) => {
    const {dataGrams, ...properties} = element.properties
    return dataGrams === undefined ? element : {...element, properties}
  })
}
