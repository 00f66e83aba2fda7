import type {Rule} from '../rule.ts'
import {hasHeat, methodText} from '../safety/heat.ts'
import {spoils} from '../safety/keeping.ts'

export const reheatingSaid: Rule = {
  id: 'reheating-said',
  severity: 'warning',
  summary:
    'A cooked dish that is kept says how hot it must be again: 74 °C (165 °F), or that it is eaten cold.',
  why: 'What grew while it cooled and stood is killed by reheating it right through, and by nothing less.',
  source:
    'USDA FSIS and foodsafety.gov, Safe Minimum Internal Temperature Chart (2019): leftovers and casseroles 165 °F.',
  *check({recipe, computed}) {
    const kept = recipe.keeps?.fridgeDays ?? recipe.keeps?.freezerDays
    // A component is heated in the dish that uses it.
    if (!kept || !recipe.serves || !spoils(computed) || !hasHeat(recipe)) return
    const text = methodText(recipe)
    if (text === '' || reheating.test(text) || eatenCold.test(text)) return
    yield {
      place: kept.place,
      reason: 'Kept after cooking without a word on reheating, expected `reheat to 74 °C (165 °F)`',
      expected: ['reheat to 74 °C (165 °F)'],
      note: 'Write a step such as "Reheat to 74 °C (165 °F) all the way through", or say that it is eaten cold. Local food-safety rules come first.',
    }
  },
}

const reheating =
  /\b(?:re-?heat|warm(?:ed)? (?:through|up)|heat(?:ed)? through|hot again|heat (?:it |them )?up)\w*\b|\b(?:piping|really|very|properly) hot\b|\bboil through\b|\bboil\w*\b[^.]*\bnext day\b|\bsteaming hot\b/i
const eatenCold =
  /\b(?:eat(?:en)?|serve[ds]?|good|best|straight)\b[^.;]*\bcold\b|\bcold\b[^.;]*\b(?:from the fridge|lunch|salad)\b|\bfrom the fridge\b|\bserve\b[^.;]*\bchilled\b/i
