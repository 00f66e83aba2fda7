import {placeInPassage} from '../../cookbook/passage-place.ts'
import {sentencesOf} from '../../cookbook/prose/sentences.ts'
import type {Passage, Recipe} from '../../cookbook/recipe.ts'
import type {Computed, ComputedLine} from '../../nutrition/computed.ts'
import {ingredientMentions, stepsOf} from '../method/ingredient-mentions.ts'
import type {Finding, Rule} from '../rule.ts'
import {hasHeat, methodText} from '../safety/heat.ts'
import {isNeverHeated} from '../safety/never-heated.ts'

export const rawFlour: Rule = {
  id: 'raw-flour',
  severity: 'warning',
  summary: 'A dish that is eaten without cooking has no raw flour in it.',
  why: 'Flour is a raw food: it can carry E. coli and Salmonella, and nothing in the mill kills them.',
  source: 'US CDC, Raw Flour and Dough; the US FDA advises against heat-treating flour at home.',
  *check({recipe, computed}) {
    // A component, such as a dough, is cooked in the dish that uses it.
    if (!recipe.serves || stepsOf(recipe).length === 0) return
    if (/\bheat[- ]treated\b/i.test(methodText(recipe))) return
    const flours = computed.lines.filter(isRawFlour)
    const tasted = flours.length > 0 ? tastedRaw(recipe) : undefined
    for (const entry of flours) {
      const isCold = !hasHeat(recipe) || (isSetCold(recipe) && isNeverHeated(computed, entry))
      if (isCold) yield finding(entry, placeOf(entry, computed))
      else if (tasted && entry === flours[0]) yield finding(entry, tasted)
    }
  },
}

function isRawFlour({line, ingredient}: ComputedLine): boolean {
  if (ingredient.kind !== 'food' || !ingredient.food.traits.has('flour')) return false
  return !/\bheat[- ]treated\b|\btoasted\b/i.test(line.name.value)
}

/** Heat before the flour melts what it is stirred into; what is then chilled is eaten as it is. */
function isSetCold(recipe: Recipe): boolean {
  return /\b(?:chill|fridge|refrigerat|freez|no[- ]bake|(?:without|no) baking)/i.test(
    methodText(recipe),
  )
}

const rawDough =
  /\b(?:eat|nibble|snack on|enjoy|taste|try)\b[^.;]{0,40}\b(?:raw|uncooked|unbaked)\b|\b(?:raw|uncooked|unbaked)\b[^.;]{0,30}\bis (?:good|lovely|delicious|safe)\b|\blick(?:ing)?\b[^.;]{0,20}\b(?:bowl|spoon|whisk|beaters?)\b|\b(?:eat|nibble|taste)\b[^.;]{0,20}\b(?:dough|batter)\b/i
const forbidden = /\b(?:not|never|don['’]t|do not|avoid|resist|no one|nobody)\b/i

/** Where the method invites to eat dough or batter that has not been cooked. */
function tastedRaw(recipe: Recipe): Finding['place'] | undefined {
  for (const passage of stepsOf(recipe)) {
    const place = invitationIn(passage)
    if (place) return place
  }
  return undefined
}

function invitationIn(passage: Passage): Finding['place'] | undefined {
  for (const {from, to} of sentencesOf(passage.text)) {
    const sentence = passage.text.slice(from, to)
    const match = rawDough.exec(sentence)
    if (!match || forbidden.test(sentence)) continue
    const start = from + match.index
    return placeInPassage(passage, start, start + match[0].length)
  }
  return undefined
}

function placeOf(entry: ComputedLine, computed: Computed): Finding['place'] {
  const mention = ingredientMentions(computed).find(({lines}) => lines.includes(entry))
  return mention ? placeInPassage(mention.passage, mention.from, mention.to) : entry.line.name.place
}

function finding({line}: ComputedLine, place: Finding['place']): Finding {
  return {
    place,
    reason: `Flour \`${line.name.value}\` is eaten raw, expected a step that cooks it`,
    actual: line.name.value,
    expected: ['heat-treated flour'],
    note: 'Use flour sold as heat-treated, or bake it in. Heating flour at home is not advised. Local food-safety rules come first.',
  }
}
