import {nutrientName} from '../../food/nutrients.ts'
import type {Rule} from '../rule.ts'
import {judge} from '../verdict.ts'

export const unknownFigure: Rule = {
  id: 'unknown-figure',
  severity: 'warning',
  summary: 'Every stated figure can be computed: no ingredient lacks it.',
  why: 'A food without a figure is not a food without the nutrient; the sum is then only "at least", and the stated figure cannot be checked.',
  *check({recipe, computed, cookbook}) {
    if (recipe.stated === undefined) return
    for (const {stated, computed: against, verdict} of judge(
      recipe.stated,
      computed,
      cookbook.settings,
    )) {
      if (verdict !== 'unknown') continue
      const name = nutrientName[stated.nutrient]
      const foods = [...against.missing].map((food) => `\`${food}\``).join(', ')
      yield {
        place: stated.place,
        reason: `Stated ${name} \`${stated.text}\` cannot be checked, expected a ${name} figure for ${foods}`,
        actual: stated.text,
        note: `Give the food a label with ${name} in foods.yaml, or take \`${name}\` out of \`stated\`.`,
      }
    }
  },
}
