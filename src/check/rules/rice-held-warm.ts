import {placeInPassage} from '../../cookbook/passage-place.ts'
import {durationsIn} from '../../cookbook/prose/durations.ts'
import {sentencesOf} from '../../cookbook/prose/sentences.ts'
import {temperaturesIn} from '../../cookbook/prose/temperatures.ts'
import {listedFoods} from '../../nutrition/foods-in-dish.ts'
import {stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'

export const riceHeldWarm: Rule = {
  id: 'rice-held-warm',
  severity: 'warning',
  summary: 'Cooked rice is not left standing lukewarm.',
  why: 'Spores of Bacillus cereus survive cooking and grow in warm rice; the poison they make survives reheating.',
  source:
    'USDA National Agricultural Library, two-hour rule; consumer danger zone 40–140 °F (4–60 °C). B. cereus in rice: from memory.',
  *check({recipe, computed}) {
    if (![...listedFoods(computed)].some(({traits}) => traits.has('rice'))) return
    for (const passage of stepsOf(recipe)) {
      for (const {from, to} of sentencesOf(passage.text)) {
        const sentence = passage.text.slice(from, to)
        const match = held.exec(sentence)
        if (!match || !isTooLong(sentence)) continue
        if (temperaturesIn(sentence).some(({highCelsius}) => highCelsius >= hotCelsius)) continue
        yield {
          place: placeInPassage(passage, from + match.index, from + match.index + match[0].length),
          reason: `Rice \`${match[0]}\`, expected it eaten or cooled within \`2 hours\`, or held above \`${hotCelsius} °C\``,
          actual: match[0],
          expected: [`above ${hotCelsius} °C`],
          note: 'Serve it at once, spread it out to cool and put it in the fridge within 2 hours, or hold it hot by a thermometer. Local food-safety rules come first.',
        }
      }
    }
  },
}

const hotCelsius = 60
const longestMinutes = 120

const held =
  /\b(?:keep|kept|hold|held|leave|left|stand|sit)\b(?:\s+\w+){0,5}?\s+(?:warm|lukewarm|at room temperature|on the (?:side|counter|worktop)|out)\b|\b(?:warm setting|keep[- ]warm)\b/i

/** A time past two hours, or none that ends it. */
function isTooLong(sentence: string): boolean {
  const times = durationsIn(sentence)
  if (times.length > 0) return times.some(({highMinutes}) => highMinutes > longestMinutes)
  return /\b(?:until (?:needed|wanted|served|serving|(?:it is |they are |you are )?ready to (?:serve|eat)|(?:you|it is time to) (?:serve|eat)|supper|dinner|lunch|everyone|the (?:others|crew|guests|next))|all day|all evening|setting|as long as)\b|\broom temperature\b(?!.*\b(?:hour|minute)s?\b)/i.test(
    sentence,
  )
}
