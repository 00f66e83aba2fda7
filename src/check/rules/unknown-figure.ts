import {nutrientName} from '../../food/nutrients.ts'
import type {Computed} from '../../nutrition/computed.ts'
import type {Rule} from '../rule.ts'
import {type Judged, judge} from '../verdict.ts'

export const unknownFigure: Rule = {
  id: 'unknown-figure',
  severity: 'warning',
  summary: 'Every stated figure can be computed: no ingredient lacks it.',
  why: 'A food without a figure is not a food without the nutrient; the sum is then only "at least", and the stated figure cannot be checked.',
  *check({recipe, computed, cookbook}) {
    if (recipe.stated === undefined) return
    for (const judged of judge(recipe.stated, computed, cookbook.settings)) {
      if (judged.verdict !== 'unknown') continue
      const {stated, computed: found} = judged
      const lacking = lackingNutrient(judged, computed)
      const foods = [...found.missing].map((food) => `\`${food}\``).join(', ')
      yield {
        place: stated.place,
        reason: `Stated ${nutrientName[stated.nutrient]} \`${stated.text}\` cannot be checked, expected a ${lacking} figure for ${foods}`,
        actual: stated.text,
        note: `Give the food a label with ${lacking} in foods.yaml, or take \`${nutrientName[stated.nutrient]}\` out of \`stated\`.`,
      }
    }
  },
}

/** One carbohydrate is worked out from the other and the fibre: often that is all that lacks. */
function lackingNutrient(
  {stated, against, computed: {missing}}: Judged,
  {batch}: Computed,
): string {
  if (stated.nutrient !== 'carbohydrate') return nutrientName[stated.nutrient]
  const other = against === 'carbohydrate' ? 'availableCarbohydrate' : 'carbohydrate'
  const isFibreAll = [...missing].every((food) => !batch[other].missing.has(food))
  return isFibreAll ? nutrientName.fibre : nutrientName.carbohydrate
}
