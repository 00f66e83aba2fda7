import type {Food} from '../../food/food.ts'
import {type FoodInDish, foodsInDish} from '../../nutrition/foods-in-dish.ts'
import {absenceOf} from '../absences/absence.ts'
import {dietOf} from '../absences/diet.ts'
import {againstFreeFrom} from '../absences/free-from.ts'
import {foodsText, type Objection, objections} from '../absences/objection.ts'
import {type Promised, workings} from '../absences/promise.ts'
import type {Finding, Rule} from '../rule.ts'

export const choicesFit: Rule = {
  id: 'choices-fit',
  severity: 'warning',
  summary: 'What is optional or may stand instead keeps what the page promises of the dish.',
  why: 'The dish as listed is free from something or suits a diet; a reader who takes the other choice may not see that it no longer is.',
  source: 'Common practice, no source.',
  *check({recipe, computed}) {
    const {freeFrom, suits} = recipe
    if (freeFrom.length === 0 && suits.length === 0) return
    const foods = foodsInDish(computed)
    const sure = new Set(foods.filter(({isByChoice}) => !isByChoice).map(({food}) => food))
    const chosen = foods.filter(({food, isByChoice}) => isByChoice && !sure.has(food))
    for (const word of freeFrom) {
      const absence = absenceOf(word.value)
      if (absence) {
        yield* broken({promise: 'Free from', word}, chosen, (food) =>
          againstFreeFrom(absence, food),
        )
      }
    }
    for (const word of suits) {
      const diet = dietOf(word.value)
      if (diet) yield* broken({promise: 'Suits', word}, chosen, (food) => diet.against(food))
    }
  },
}

function* broken(
  {promise, word}: Promised,
  chosen: readonly FoodInDish[],
  objection: (food: Food) => Objection | undefined,
): Iterable<Finding> {
  const against = objections(chosen, objection)
  if (against.length === 0) return
  yield {
    place: word.place,
    reason: `${promise} \`${word.value}\` no longer holds with ${foodsText(against)}, expected a choice that keeps it`,
    actual: word.value,
    note: [
      ...workings(against),
      'Take the choice out, or accept the finding with a reason: the page lists what choices bring.',
    ].join('\n'),
  }
}
