import type {Position} from 'unist'
import {placeInPassage} from '../../cookbook/passage-place.ts'
import {sentenceAround} from '../../cookbook/prose/sentences.ts'
import type {Recipe} from '../../cookbook/recipe.ts'
import {listedFoods} from '../../nutrition/foods-in-dish.ts'
import type {Rule} from '../rule.ts'

export const honeyForInfants: Rule = {
  id: 'honey-for-infants',
  severity: 'error',
  summary: 'A recipe with honey is not offered to babies.',
  why: 'Honey can hold spores of Clostridium botulinum, which grow in the gut of a child under 12 months; cooking does not kill them.',
  source: 'US CDC and AAP advice on infant botulism: no honey before 12 months (from memory).',
  *check({recipe, computed}) {
    const honey = [...listedFoods(computed)].find(({from}) => from.includes('honey'))
    if (!honey) return
    for (const {text, place} of offers(recipe)) {
      const match = baby.exec(text)
      if (!match) continue
      const {from, to} = sentenceAround(text, match.index)
      if (
        /\b(?:not|never|no|avoid|without|under|unsuitable|over|older|leave out)\b/i.test(
          text.slice(from, to),
        )
      )
        continue
      yield {
        place: place(match.index, match.index + match[0].length),
        reason: `\`${match[0]}\` with \`${honey.name}\` in the dish, expected no honey before 12 months of age`,
        actual: match[0],
        note: 'Take the honey out of what babies get, or say that it is not for children under 12 months.',
      }
      return
    }
  },
}

/** Young vegetables are called so too. */
const baby =
  /\b(?:bab(?:y|ies)(?!\s+(?:spinach|leaf|leaves|kale|carrot|potato|corn|sweetcorn|gem|plum|beet|tomato|aubergine|courgette|turnip|leek|new|salad|rocket|chard|squash|squid|octopus|bella|onion|back)\w*)|infants?|weaning|wean)\b/i

interface Offer {
  readonly text: string
  place(from: number, to: number): Position
}

function offers({title, summary, tags, method}: Recipe): readonly Offer[] {
  const fields = [title, ...(summary ? [summary] : []), ...tags]
  return [
    ...fields.map(({value, place}) => ({text: value, place: () => place})),
    ...method.passages.map((passage) => ({
      text: passage.text,
      place: (from: number, to: number) => placeInPassage(passage, from, to),
    })),
  ]
}
