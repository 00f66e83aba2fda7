import type {Computed} from '../../nutrition/computed.ts'
import {formatMinutes} from '../../units/format-duration.ts'
import {leastMinutes, timesInSteps} from '../method/time-in-steps.ts'
import type {Rule} from '../rule.ts'

export const componentReady: Rule = {
  id: 'component-ready',
  severity: 'warning',
  summary: 'A component that takes longer than the dish is said to be made ahead.',
  why: 'A dish of 20 minutes with a dough that rests an hour is no dish of 20 minutes.',
  *check({recipe, computed}) {
    const {totalMinutes} = recipe
    if (!totalMinutes) return
    const text = [recipe.summary?.value ?? '', ...recipe.method.passages.map((each) => each.text)]
    if (text.some((each) => madeAhead.test(each))) return
    for (const {line, ingredient, instead} of computed.lines) {
      if (ingredient.kind !== 'component' || instead.length > 0) continue
      const needs = minutesOf(ingredient.computed)
      if (needs <= totalMinutes.value) continue
      const [actual, least] = [totalMinutes.value, needs].map(formatMinutes)
      yield {
        place: line.name.place,
        reason: `Component \`${ingredient.recipe.slug}\` takes \`${least}\`, expected no more than the \`${actual}\` of the dish, or a word that it is made ahead`,
        ...(least !== undefined && {actual: least}),
        note: 'Say in the method that it is made ahead, or count its time in `time`.',
      }
    }
  },
}

const madeAhead =
  /\b(?:ahead|in advance|beforehand|(?:day|night|evening) before|yesterday|ready[- ]made|already made|made (?:earlier|before)|from the (?:fridge|freezer)|thaw\w*|defrost\w*|frozen|batch|left-?over|on hand|in the fridge)\b/i

/** What its front matter says, else what its steps add up to. */
function minutesOf({recipe}: Computed): number {
  return recipe.totalMinutes?.value ?? leastMinutes(timesInSteps(recipe))
}
