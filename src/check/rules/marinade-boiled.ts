import {placeInPassage} from '../../cookbook/passage-place.ts'
import {sentencesOf} from '../../cookbook/prose/sentences.ts'
import {stepsOf} from '../method/ingredient-mentions.ts'
import type {Rule} from '../rule.ts'
import {type Hazard, rawLines} from '../safety/hazard.ts'
import {isHeated} from '../safety/heat.ts'

const meats: readonly Hazard[] = ['poultry', 'groundMeat', 'wholeMeat', 'fish', 'shellfish']

export const marinadeBoiled: Rule = {
  id: 'marinade-boiled',
  severity: 'warning',
  summary: 'A marinade that held raw meat or fish is boiled before it is used again.',
  why: 'What was on the raw meat is in the marinade.',
  source:
    'US FDA and USDA FSIS, Safe Food Handling: boil a marinade that held raw meat (from memory).',
  *check({recipe, computed}) {
    if (meats.every((hazard) => rawLines(computed, hazard).length === 0)) return
    const steps = stepsOf(recipe)
    // Before anything is hot, "pour the marinade over the chicken" is its first use.
    const isHot = (index: number, from: number): boolean =>
      steps.slice(0, index).some(isHeated) ||
      isHeated({text: steps[index]?.text.slice(0, from) ?? ''})
    for (const [index, passage] of steps.entries()) {
      for (const {from, to} of sentencesOf(passage.text)) {
        const sentence = passage.text.slice(from, to)
        const again = reused.exec(sentence)
        const match =
          leftOver.exec(sentence) ?? (again && isHot(index, from + again.index) ? again : undefined)
        if (!match) continue
        // Boiled where it is used, or in one of the steps around.
        const around = steps.slice(Math.max(0, index - 1), index + 2)
        if (around.some(({text}) => boiled.test(text)) || setAside(steps.map(({text}) => text)))
          continue
        yield {
          place: placeInPassage(passage, from + match.index, from + match.index + match[0].length),
          reason: `Marinade used again, \`${match[0]}\`, expected it boiled first`,
          actual: match[0],
          expected: ['boil the marinade'],
          note: 'Bring it to a full boil before it touches cooked food, or set some aside before the raw meat goes in. Local food-safety rules come first.',
        }
      }
    }
  },
}

const leftOver = /\b(?:left-?over|remaining|reserved|used|rest of the) marinade\b/i
const reused =
  /\b(?:bast\w+|brush\w*|pour\w*|spoon\w*|drizzl\w+|serv\w+|gloss|glaze|toss\w*)\b[^.;]{0,40}\b(?:marinade|marinating liquid)\b/i
const boiled =
  /\b(?:boil\w*|simmer\w*|bubbl\w*|reduc\w*)\b[^.]*\bmarinade\b|\bmarinade\b[^.]*\b(?:boil\w*|simmer\w*|bubbl\w*|reduc\w*|cook)\b/i

/** Taken off before the raw meat went in. */
function setAside(texts: readonly string[]): boolean {
  return texts.some((text) =>
    /\b(?:set aside|keep back|reserve|hold back)\b[^.]*\bmarinade\b(?![^.]*\bafter\b)/i.test(text),
  )
}
