import type {Kitchen} from '../units/parse-amount.ts'
import {amountReader} from './amount-readers.ts'
import {reportContradictions} from './line-contradictions.ts'
import {type LineValues, lineFields} from './line-fields.ts'
import type {IngredientLine} from './recipe.ts'
import {mapping, textOrMapping} from './yaml/collection-readers.ts'
import {converted, intact} from './yaml/converted.ts'
import type {Reader} from './yaml/reader.ts'

/** What stands behind an ingredient's name. */
export type WrittenLine = Omit<IngredientLine, 'name' | 'anchor'>

/** `600 g`, or `{ amount: 600 g, bought: true }`. */
export function lineReader(kitchen: Kitchen): Reader<WrittenLine> {
  const bare = converted(amountReader(kitchen), (amount) => lineOf({amount}))
  const conditions = converted(
    intact(mapping('a mapping with its `amount`', lineFields(kitchen))),
    ({value}, reading) => {
      reportContradictions(value, reading)
      return lineOf(value)
    },
  )
  return textOrMapping(bare, conditions)
}

function lineOf(values: LineValues): WrittenLine {
  const {amount, recipe, food, eaten, trimmed, cooked, simmered, instead} = values
  const because = values.because && {because: values.because}
  const poured = values['poured off']
  return {
    amount,
    ...(recipe && {recipe}),
    ...(food && {food}),
    isBought: values.bought?.value ?? false,
    isOptional: values.optional?.value ?? false,
    ...(values.counted?.value === false && because && {uncounted: because}),
    ...(eaten && {eaten: {amount: eaten, ...because}}),
    ...(poured && {pouredOff: {...poured.value, ...because}}),
    ...(trimmed && {trimmed}),
    ...(cooked && {cooked}),
    ...(simmered && {simmeredMinutes: simmered}),
    instead: instead?.value ?? [],
  }
}
