import {placeInPassage} from '../../cookbook/passage-place.ts'
import {ingredientMentions, stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'
import {hasHeat, methodText} from '../safety/heat.ts'

export const rawFlour: Rule = {
  id: 'raw-flour',
  severity: 'warning',
  summary: 'A dish that is eaten without cooking has no raw flour in it.',
  why: 'Flour is a raw food: it can carry E. coli and Salmonella, and nothing in the mill kills them.',
  source: 'US CDC, Raw Flour and Dough; the US FDA advises against heat-treating flour at home.',
  *check({recipe, computed}) {
    const steps = stepsOf(recipe)
    // A component, such as a dough, is cooked in the dish that uses it.
    if (!recipe.serves || steps.length === 0 || hasHeat(recipe)) return
    if (/\bheat[- ]treated\b/i.test(methodText(recipe))) return
    for (const entry of computed.lines) {
      const {line, ingredient} = entry
      if (ingredient.kind !== 'food' || !ingredient.food.traits.has('flour')) continue
      if (/\bheat[- ]treated\b|\btoasted\b/i.test(line.name.value)) continue
      const mention = ingredientMentions(computed).find(({lines}) => lines.includes(entry))
      yield {
        place: mention
          ? placeInPassage(mention.passage, mention.from, mention.to)
          : line.name.place,
        reason: `Flour \`${line.name.value}\` is eaten raw, expected a step that cooks it`,
        actual: line.name.value,
        expected: ['heat-treated flour'],
        note: 'Use flour sold as heat-treated, or bake it in. Heating flour at home is not advised. Local food-safety rules come first.',
      }
    }
  },
}
