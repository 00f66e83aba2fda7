import type {IngredientLine} from '../../cookbook/recipe.ts'
import type {Food} from '../../food/food.ts'
import {gramsOf} from '../../nutrition/weigh.ts'
import {formatFigure} from '../../units/format-figure.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Finding, Rule} from '../rule.ts'

/**
 * How far a kitchen measure may lie from its weight, as a share of the weight: a cup may be packed
 * or loose, an onion called medium smaller than the next. The project's choice (no source).
 */
const allowedRatio = {volume: 0.25, count: 0.4} as const

export const measureWeight: Rule = {
  id: 'measure-weight',
  severity: 'warning',
  summary: 'A kitchen measure beside a weight is about as much as the weight.',
  why: 'Half the readers follow the scale and half the spoon; they should eat the same dish.',
  source:
    'Gram weights of measures: USDA SR28 (2015) for table foods, the packet for own foods. Allowed: 25 % for volumes, 40 % for counts, a choice of this project.',
  *check({computed, cookbook}) {
    for (const {line, ingredient} of computed.lines) {
      if (ingredient.kind !== 'food') continue
      const found = finding(line, ingredient.food, cookbook.settings.scaleGrams)
      if (found) yield found
    }
  },
}

function finding(line: IngredientLine, food: Food, scaleGrams: number): Finding | undefined {
  const {value: amount, place} = line.amount
  if (amount.kind !== 'weight' || !amount.beside) return undefined
  const measured = gramsOf(food, amount.beside, scaleGrams)
  // Without a weight for the measure there is nothing to compare; the weight alone is counted.
  if (measured === undefined) return undefined
  const written = amount.grams.value
  const distance = Math.abs(measured.value - written)
  if (isAtMost(distance, allowedRatio[amount.beside.kind] * written)) return undefined
  const expected = formatFigure(measured.value, 'g')
  return {
    place,
    reason: `Amount \`${amount.text}\` of \`${food.name}\`, expected \`${amount.beside.text}\` to weigh about as much: it weighs \`${expected}\``,
    actual: amount.text,
    note: 'Mend the measure or the weight; the weight is what is counted.',
  }
}
