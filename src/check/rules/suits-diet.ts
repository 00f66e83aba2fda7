import {foodsInDish} from '../../nutrition/foods-in-dish.ts'
import {dietNames, dietOf, otherDietOf} from '../absences/diet.ts'
import {objections} from '../absences/objection.ts'
import {brokenPromise, unknownWord} from '../absences/promise.ts'
import type {Rule} from '../rule.ts'

export const suitsDiet: Rule = {
  id: 'suits-diet',
  severity: 'error',
  summary: 'A dish suits the diets the page names, through every component and packet.',
  why: 'A stock, a sauce or a spoonful of gelatine hides what the title does not say; a food whose origin nobody has stated suits no diet.',
  source:
    'Vegetarian, vegan and the like: common practice, no source. Gluten: 21 CFR 101.91, Regulation (EU) 828/2014, Regulation (EU) 1169/2011 Annex II (cereals).',
  *check({recipe, computed}) {
    if (recipe.suits.length === 0) return
    const sure = foodsInDish(computed).filter(({isByChoice}) => !isByChoice)
    for (const word of recipe.suits) {
      const promised = {promise: 'Suits', word} as const
      const diet = dietOf(word.value)
      if (diet) {
        const against = objections(sure, (food) => diet.against(food))
        yield* brokenPromise(promised, against)
      } else {
        yield unknownWord(promised, dietNames, otherDietOf(word.value))
      }
    }
  },
}
