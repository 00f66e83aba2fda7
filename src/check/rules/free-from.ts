import {foodsInDish} from '../../nutrition/foods-in-dish.ts'
import {absenceNames, absenceOf, uncheckable} from '../absences/absence.ts'
import {againstFreeFrom} from '../absences/free-from.ts'
import {objections} from '../absences/objection.ts'
import {brokenPromise, unknownWord} from '../absences/promise.ts'
import type {Rule} from '../rule.ts'

export const freeFrom: Rule = {
  id: 'free-from',
  severity: 'error',
  summary: 'A dish is free from what the page says, through every component and packet.',
  why: 'Somebody with an allergy eats by these words; a food that nobody has stated, or whose packet warns of traces, does not allow them.',
  source:
    'US: FALCPA (2004) and the FASTER Act (2021), tree nuts as FDA lists them since January 2025 (guidance, edition 5). EU: Regulation (EU) 1169/2011 Annex II. Seen in secondary summaries.',
  *check({recipe, computed}) {
    if (recipe.freeFrom.length === 0) return
    const sure = foodsInDish(computed).filter(({isByChoice}) => !isByChoice)
    for (const word of recipe.freeFrom) {
      const promised = {promise: 'Free from', word} as const
      const absence = absenceOf(word.value)
      if (absence) {
        const against = objections(sure, (food) => againstFreeFrom(absence, food))
        yield* brokenPromise(promised, against)
      } else {
        yield unknownWord(promised, absenceNames, uncheckable.get(word.value.toLowerCase()))
      }
    }
  },
}
