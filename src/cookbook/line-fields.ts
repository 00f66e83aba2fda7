import {cookingMethodNames} from '../food/cooking-methods.ts'
import type {Kitchen} from '../units/parse-amount.ts'
import {parseMinutes} from '../units/parse-duration.ts'
import {alternativesReader, choiceFields} from './alternatives-field.ts'
import {amountReader, weightReader} from './amount-readers.ts'
import {pouredOffReader} from './poured-off-field.ts'
import {optional, type Values} from './yaml/collection-readers.ts'
import {choice, flag, parsedText, text} from './yaml/text-readers.ts'

/** The keys of an ingredient line with conditions. */
export function lineFields(kitchen: Kitchen) {
  const amount = amountReader(kitchen)
  const weight = weightReader(kitchen)
  return {
    ...choiceFields(amount),
    bought: optional(flag, 'The amount is as purchased: peel, bone and core come off'),
    optional: optional(flag, 'Left to the reader, and never counted'),
    counted: optional(flag, '`false` leaves the line out of the figures; say why with `because`'),
    because: optional(text, 'Why the line is not counted, or how the part eaten was found'),
    eaten: optional(weight, 'The part that ends up in the dish, weighed: frying oil, marinade'),
    'poured off': optional(
      pouredOffReader(weight),
      'What left the dish again: rendered fat (weighed, or like a cooked food), drained liquid',
    ),
    trimmed: optional(weight, 'Cut off the amount before cooking and thrown away, weighed'),
    cooked: optional(
      choice(cookingMethodNames),
      'How it is cooked, where that takes alcohol or minerals away',
    ),
    simmered: optional(
      parsedText('a time such as `30 min`', parseMinutes, ['30 min']),
      'How long the liquid cooks in the dish: alcohol evaporates',
    ),
    instead: optional(
      alternativesReader(amount),
      'What may stand in for the line; shown, never counted',
    ),
  }
}

export type LineValues = Values<ReturnType<typeof lineFields>>
