import type {Amount} from '../units/amount.ts'
import type {Located} from './problem.ts'
import type {Alternative} from './recipe.ts'
import {mapping, openMapping, optional, required, textOrMapping} from './yaml/collection-readers.ts'
import {converted, intact} from './yaml/converted.ts'
import type {Reader, Reading} from './yaml/reader.ts'
import {text} from './yaml/text-readers.ts'

/** The keys that say what is used, and how much: of a line, and of what may stand in for it. */
export function choiceFields(amount: Reader<Amount>) {
  return {
    amount: required(amount, 'How much goes in', 'how much of it goes in?'),
    recipe: optional(text, 'The recipe used as a component, by its slug'),
    food: optional(
      text,
      'The food meant, where the name is your own words: a name or an id such as usda/20083',
    ),
  }
}

/** Reports a choice that names a component and a food at once. */
export function reportTwoChoices(
  {recipe, food}: {readonly recipe?: Located<string>; readonly food?: Located<string>},
  {report, subject}: Reading,
): void {
  if (!recipe || !food) return
  report({
    ruleId: 'readable-value',
    place: food.place,
    actual: food.value,
    reason: `${subject} names a recipe and a food, expected one of them`,
  })
}

/** `{ jarred tomato sauce: 90 g }`, or with `{ amount, food }` or `{ amount, recipe }`. */
export function alternativesReader(amount: Reader<Amount>): Reader<readonly Alternative[]> {
  const bare = converted(amount, (read) => ({amount: read}))
  const conditions = converted(
    intact(mapping('a mapping with its `amount`', choiceFields(amount))),
    ({value}, reading) => {
      reportTwoChoices(value, reading)
      return value
    },
  )
  return converted(
    openMapping(
      'alternatives such as `{ jarred tomato sauce: 90 g }`',
      textOrMapping(bare, conditions),
    ),
    ({value}) => value.map(({key, value: alternative}) => ({name: key, ...alternative.value})),
  )
}
