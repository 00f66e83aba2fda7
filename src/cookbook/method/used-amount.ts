import type {ElementContent, Properties} from 'hast'
import type {Amount} from '../../units/amount.ts'
import type {IngredientLine} from '../recipe.ts'

/**
 * An ingredient where the method uses it, with its amount: `barley (180 g)`. The amount carries
 * its line's anchor, and its grams where it is a weight, so that a page can scale it.
 * @param words of the link; the ingredient's own name stands in where there are none
 */
export function usedAmount(line: IngredientLine, words: ElementContent[]): ElementContent[] {
  const named: ElementContent[] =
    words.length > 0 ? words : [{type: 'text', value: line.name.value}]
  return [
    ...named,
    {type: 'text', value: ' ('},
    {
      type: 'element',
      tagName: 'span',
      properties: amountProperties(line),
      children: [{type: 'text', value: usedAmountText(line.amount.value)}],
    },
    {type: 'text', value: ')'},
  ]
}

/** What a script finds an amount in a text by. */
export function amountProperties({anchor, amount}: IngredientLine): Properties {
  const {value} = amount
  return {
    className: ['amount'],
    dataAnchor: anchor,
    ...(value.kind === 'weight' && {dataGrams: String(value.grams.value)}),
  }
}

/** As written; a kitchen measure in brackets is set off by a comma, since brackets are around it. */
export function usedAmountText({text, beside}: Amount): string {
  if (!beside) return text
  const bracket = text.lastIndexOf('(')
  return bracket < 0 ? text : `${text.slice(0, bracket).trimEnd()}, ${beside.text}`
}
