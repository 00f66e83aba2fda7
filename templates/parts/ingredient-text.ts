import type {ComputedLine} from '../../src/nutrition/computed.ts'
import type {Words} from '../words/en.ts'
import {kitchenMeasure, lineWeight} from './amount-text.ts'
import {captionLine} from './caption-text.ts'

/** An ingredient in one line of plain text: `30 g (2 tbsp) pepper paste`. */
export function ingredientText(entry: ComputedLine, words: Words): string {
  const {line, role} = entry
  return captionLine({
    weight: lineWeight(entry, words),
    measure: kitchenMeasure(line.amount.value, words),
    name: line.name.value,
    note: role === 'optional' ? words.recipe.ifWanted : undefined,
  })
}
