import type {WeightAmount} from '../units/amount.ts'
import type {PouredOff} from './recipe.ts'
import {mapping, optional, textOrMapping} from './yaml/collection-readers.ts'
import {converted, intact} from './yaml/converted.ts'
import type {Reader} from './yaml/reader.ts'
import {choice, text} from './yaml/text-readers.ts'

/** `45 g`, `{ amount: 300 g, what: liquid }`, or `{ like: beef mince, 20 % fat, browned }`. */
export function pouredOffReader(weight: Reader<WeightAmount>): Reader<PouredOff> {
  const bare = converted(weight, (amount): PouredOff => ({kind: 'weighed', amount, what: 'fat'}))
  const conditions = mapping('a mapping with an `amount`, or with `like`', {
    amount: optional(weight, 'What was poured off, weighed'),
    what: optional(choice(['fat', 'liquid']), 'Rendered fat, or drained liquid'),
    like: optional(text, 'The cooked food of the table that the line turns into'),
  })
  return textOrMapping(
    bare,
    converted(
      intact(conditions),
      ({value: {amount, what, like}, place}, {report, subject}): PouredOff | undefined => {
        if (like && !amount && !what) return {kind: 'like', cooked: like}
        if (amount && !like) return {kind: 'weighed', amount, what: what?.value ?? 'fat'}
        report({
          ruleId: 'readable-value',
          place,
          reason: `${subject} has to say one thing, expected an \`amount\` or \`like\``,
        })
        return undefined
      },
    ),
  )
}
