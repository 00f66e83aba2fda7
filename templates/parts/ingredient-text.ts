import type {ComputedLine} from '../../src/nutrition/computed.ts'
import type {Words} from '../words/en.ts'
import {kitchenMeasure, lineWeight} from './amount-text.ts'

/** An ingredient in one line of plain text: `30 g (2 tbsp) pepper paste`. */
export function ingredientText(entry: ComputedLine, words: Words): string {
  const {line, role} = entry
  const measure = kitchenMeasure(line.amount.value)
  const weight = lineWeight(entry)
  const amount = measure === undefined ? weight : `${weight} (${measure})`
  const note = role === 'optional' ? `, ${words.recipe.ifWanted}` : ''
  return `${amount} ${line.name.value}${note}`
}
