import type {Rule} from '../rule.ts'
import {hasHeat, methodText} from '../safety/heat.ts'
import {spoils} from '../safety/keeping.ts'

export const coolingSaid: Rule = {
  id: 'cooling-said',
  severity: 'warning',
  summary: 'A cooked dish that is kept says how it is cooled.',
  why: 'A deep pot left to cool by itself stays lukewarm for half a day, and that is when bacteria grow.',
  source:
    'USDA National Agricultural Library, two-hour rule; containers about 5 cm (2 in) deep or less.',
  *check({recipe, computed}) {
    const kept = recipe.keeps?.fridgeDays ?? recipe.keeps?.freezerDays
    if (!kept || !spoils(computed) || !hasHeat(recipe)) return
    const text = methodText(recipe)
    if (text === '' || cooling.test(text)) return
    yield {
      place: kept.place,
      reason: 'Kept after cooking without a word on cooling, expected `cool within 2 hours`',
      expected: ['cool within 2 hours'],
      note: 'Write a step such as "What is for later: fill shallow boxes, cool and put them in the fridge within 2 hours." Local food-safety rules come first.',
    }
  },
}

const cooling =
  /\b(?:cool(?:s|ed|ing)?|chill(?:s|ed|ing)?)\b[^.;]*\b(?:quick\w*|fast|rapid\w*|shallow|within|hours?|fridge|refrigerat\w*|box(?:es)?|containers?|ice|cold water|freez\w*)\b|\b(?:within|shallow|spread\b[^.]*|ice|quick\w*)\b[^.;]*\b(?:cool\w*|chill\w*|fridge|refrigerat\w*)\b/i
