import type {Amount, WeightAmount} from '../units/amount.ts'
import {reportTwoChoices} from './alternatives-field.ts'
import type {LineValues} from './line-fields.ts'
import type {Located} from './problem.ts'
import {reportMissing} from './yaml/collection-readers.ts'
import type {Reading} from './yaml/reader.ts'

/** Reports what the keys of one line cannot say together. */
export function reportContradictions(values: LineValues, reading: Reading): void {
  reportTwoChoices(values, reading)
  reportUnexplained(values, reading)
  const poured = values['poured off']?.value
  const pouredWeight = poured?.kind === 'weighed' ? poured.amount : undefined
  for (const part of [values.eaten, pouredWeight, values.trimmed]) {
    if (part) reportMoreThanAll(part, values.amount, reading)
  }
}

/** What is left out needs its reason, and a reason needs something it explains. */
function reportUnexplained(values: LineValues, reading: Reading): void {
  const {because, counted, eaten} = values
  const isUncounted = counted?.value === false
  if (isUncounted && !because) {
    reportMissing('because', 'why is the line not counted?', {place: counted.place, reading})
  }
  if (!because || isUncounted || eaten || values['poured off']) return
  reading.report({
    ruleId: 'readable-value',
    place: because.place,
    actual: because.value,
    reason: `\`because\` in ${reading.subject} explains nothing, expected it beside \`counted: false\`, \`eaten\` or \`poured off\``,
  })
}

/** No more can be eaten, poured off or trimmed than went in. */
function reportMoreThanAll(
  part: Located<WeightAmount>,
  {value: whole}: Located<Amount>,
  {report, subject}: Reading,
): void {
  if (whole.kind !== 'weight' || part.value.grams.value <= whole.grams.value) return
  report({
    ruleId: 'readable-value',
    place: part.place,
    actual: part.value.text,
    reason: `${subject} has a part of \`${part.value.text}\`, expected at most its \`${whole.text}\``,
  })
}
