import type {ComputedLine} from '../../nutrition/computed.ts'
import {
  collectiveWords,
  dryIngredients,
  everything,
  wetIngredients,
} from '../method/collective-words.ts'
import {ingredientMentions, stepsOf} from '../method/ingredient-mentions.ts'
import {wordsOf} from '../method/words.ts'
import type {Rule} from '../rule.ts'

export const ingredientUsed: Rule = {
  id: 'ingredient-used',
  severity: 'warning',
  summary: 'The method uses every ingredient of the list.',
  why: 'What is listed and never used is left over on the table, and its energy is in the figures all the same.',
  *check({recipe, computed}) {
    const text = stepsOf(recipe)
      .map((passage) => passage.text)
      .join('\n')
    if (text.trim() === '' || everything.test(text)) return
    const named = new Set(ingredientMentions(computed).flatMap(({lines}) => lines))
    const linked = new Set(recipe.method.ingredientLinks.map(({anchor}) => anchor))
    const stems = new Set(wordsOf(text).map(({stem}) => stem))
    for (const entry of computed.lines) {
      const {line} = entry
      if (named.has(entry) || linked.has(line.anchor) || isMeant(entry, text, stems)) continue
      const name = line.name.value
      yield {
        place: line.name.place,
        reason: `Ingredient \`${name}\` is not in the method, expected a step that uses it`,
        actual: name,
        expected: [`[${name}](#${line.anchor})`],
        note: `Write where it goes in, such as \`[${name}](#${line.anchor})\`, or take the line out.`,
      }
    }
  },
}

/** Whether words for several ingredients mean this one too. */
function isMeant(entry: ComputedLine, text: string, stems: ReadonlySet<string>): boolean {
  for (const stem of collectiveWords(entry)) if (stems.has(stem)) return true
  return (isDry(entry) && dryIngredients.test(text)) || (isWet(entry) && wetIngredients.test(text))
}

function isDry({ingredient}: ComputedLine): boolean {
  return (
    ingredient.kind === 'food' &&
    (ingredient.food.state === 'dry' || isPowder(ingredient.food.traits))
  )
}

function isPowder(traits: ReadonlySet<string>): boolean {
  return ['flour', 'sugar', 'salt', 'leavening', 'spice', 'sweetener'].some((trait) =>
    traits.has(trait),
  )
}

function isWet({ingredient}: ComputedLine): boolean {
  if (ingredient.kind === 'component') return true
  const {traits, from} = ingredient.food
  return (
    ['liquid', 'juice', 'fat', 'alcohol'].some((trait) =>
      [...traits].some((each) => each === trait),
    ) || from.some((origin) => origin === 'egg' || origin === 'dairy')
  )
}
