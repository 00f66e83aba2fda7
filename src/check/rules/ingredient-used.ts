import type {TextRange} from '../../cookbook/prose/match-at.ts'
import {everything, standsFor} from '../method/collective-words.ts'
import {ingredientMentions, stepsOf} from '../method/ingredient-mentions.ts'
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
    const mentions = ingredientMentions(computed)
    const named = new Set(mentions.flatMap(({lines}) => lines))
    const linked = new Set(recipe.method.ingredientLinks.map(({anchor}) => anchor))
    // What names one ingredient does not stand for another: "olive oil" is no other oil.
    const others = stepsOf(recipe).map((passage) =>
      without(
        passage.text,
        mentions.filter((mention) => mention.passage === passage),
      ),
    )
    const isMeant = standsFor(others.join('\n'))
    for (const entry of computed.lines) {
      const {line} = entry
      if (named.has(entry) || linked.has(line.anchor) || isMeant(entry)) continue
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

/** A text with the names in it blanked out. */
function without(text: string, ranges: readonly TextRange[]): string {
  let left = text
  for (const {from, to} of ranges) {
    left = left.slice(0, from) + ' '.repeat(to - from) + left.slice(to)
  }
  return left
}
