import {cookingMethodNames} from '../food/cooking-methods.ts'
import type {Amount, WeightAmount} from '../units/amount.ts'
import {type Kitchen, parseAmount, parseWeight} from '../units/parse-amount.ts'
import {parseMinutes} from '../units/parse-duration.ts'
import type {Located} from './problem.ts'
import type {Alternative, IngredientLine, PouredOff} from './recipe.ts'
import {
  mapping,
  openMapping,
  optional,
  reportMissing,
  required,
  textOrMapping,
  type Values,
} from './yaml/collection-readers.ts'
import {converted, intact} from './yaml/converted.ts'
import type {Reader, Reading} from './yaml/reader.ts'
import {choice, flag, parsedText, text} from './yaml/text-readers.ts'

/** What stands behind an ingredient's name. */
export type WrittenLine = Omit<IngredientLine, 'name' | 'anchor'>

export function amountReader(kitchen: Kitchen): Reader<Amount> {
  return parsedText('an amount such as `150 g`', (written) => parseAmount(written, kitchen), [
    '150 g',
    '½ cup',
    '2 cloves',
    '13.5 g (1 tbsp)',
    '½ batch',
  ])
}

export function weightReader(kitchen: Kitchen): Reader<WeightAmount> {
  return parsedText('a weight such as `150 g`', (written) => parseWeight(written, kitchen), [
    '150 g',
  ])
}

const whichFood =
  'The food meant, where the name is your own words: a name or an id such as usda/20083'
const whichRecipe = 'The recipe used as a component, by its slug'
const howMuch = 'how much of it goes in?'

/** The keys of a line with conditions. */
function lineFields(kitchen: Kitchen) {
  const amount = amountReader(kitchen)
  const weight = weightReader(kitchen)
  return {
    amount: required(amount, 'How much goes in', howMuch),
    recipe: optional(text, whichRecipe),
    food: optional(text, whichFood),
    bought: optional(flag, 'The amount is as purchased: peel, bone and core come off'),
    optional: optional(flag, 'Left to the reader, and never counted'),
    counted: optional(flag, '`false` leaves the line out of the figures; say why with `because`'),
    because: optional(text, 'Why the line is not counted, or how the part eaten was found'),
    eaten: optional(weight, 'The part that ends up in the dish, weighed: frying oil, marinade'),
    'poured off': optional(
      pouredOff(weight),
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
    instead: optional(alternatives(amount), 'What may stand in for the line; shown, never counted'),
  }
}

type LineValues = Values<ReturnType<typeof lineFields>>

/** `600 g`, or `{ amount: 600 g, bought: true }`. */
export function lineReader(kitchen: Kitchen): Reader<WrittenLine> {
  const bare = converted(amountReader(kitchen), (amount) => lineOf({amount}))
  const conditions = intact(mapping('a mapping with its `amount`', lineFields(kitchen)))
  return textOrMapping(
    bare,
    converted(conditions, ({value}, reading) => {
      reportContradictions(value, reading)
      return lineOf(value)
    }),
  )
}

/** Keys that tell a line with conditions from a group of lines. */
export const conditionKeys: ReadonlySet<string> = new Set(
  Object.keys(lineFields({cups: 'us', measures: new Set()})),
)

function lineOf(values: LineValues): WrittenLine {
  const {amount, recipe, food, because, eaten, trimmed, cooked, simmered, instead} = values
  const poured = values['poured off']
  return {
    amount,
    ...(recipe && {recipe}),
    ...(food && {food}),
    isBought: values.bought?.value ?? false,
    isOptional: values.optional?.value ?? false,
    ...(values.counted?.value === false && because && {uncounted: {because}}),
    ...(eaten && {eaten: {amount: eaten, ...(because && {because})}}),
    ...(poured && {pouredOff: {...poured.value, ...(because && {because})}}),
    ...(trimmed && {trimmed}),
    ...(cooked && {cooked}),
    ...(simmered && {simmeredMinutes: simmered}),
    instead: instead?.value ?? [],
  }
}

function reportContradictions(values: LineValues, reading: Reading): void {
  const {amount, because, counted, eaten, food, recipe, trimmed} = values
  const poured = values['poured off']
  const {report, subject} = reading
  if (recipe && food) {
    report({
      ruleId: 'readable-value',
      place: food.place,
      actual: food.value,
      reason: `${subject} names a recipe and a food, expected one of them`,
    })
  }
  if (counted?.value === false && !because) {
    reportMissing('because', 'why is the line not counted?', {place: counted.place, reading})
  }
  if (because && counted?.value !== false && !eaten && !poured) {
    report({
      ruleId: 'readable-value',
      place: because.place,
      actual: because.value,
      reason: `\`because\` in ${subject} explains nothing, expected it beside \`counted: false\`, \`eaten\` or \`poured off\``,
    })
  }
  const pouredWeight = poured?.value.kind === 'weighed' ? poured.value.amount : undefined
  for (const part of [eaten, pouredWeight, trimmed]) {
    if (part) reportMoreThanAll(part, amount, reading)
  }
}

/** No more can be eaten or poured off than went in. */
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

/** `45 g`, `{ amount: 300 g, what: liquid }`, or `{ like: beef mince, 20 % fat, browned }`. */
function pouredOff(weight: Reader<WeightAmount>): Reader<PouredOff> {
  const bare = converted(weight, (amount): PouredOff => ({kind: 'weighed', amount, what: 'fat'}))
  const conditions = mapping('a mapping with an `amount`, or with `like`', {
    amount: optional(weight, 'What was poured off, weighed'),
    what: optional(choice(['fat', 'liquid']), 'Rendered fat, or drained liquid'),
    like: optional(text, 'The cooked food of the table that the line turns into'),
  })
  return textOrMapping(
    bare,
    converted(conditions, ({value: {amount, what, like}, place}, {report, subject}) => {
      if (like && !amount && !what) return {kind: 'like', cooked: like}
      if (amount && !like) return {kind: 'weighed', amount, what: what?.value ?? 'fat'}
      report({
        ruleId: 'readable-value',
        place,
        reason: `${subject} has to say one thing, expected an \`amount\` or \`like\``,
      })
      return undefined
    }),
  )
}

/** `{ jarred tomato sauce: 90 g }`, or with `{ amount, food }` or `{ amount, recipe }`. */
function alternatives(amount: Reader<Amount>): Reader<readonly Alternative[]> {
  const conditions = mapping('a mapping with its `amount`', {
    amount: required(amount, 'How much goes in instead', howMuch),
    recipe: optional(text, whichRecipe),
    food: optional(text, whichFood),
  })
  const bare = converted(amount, (read) => ({amount: read}))
  return converted(
    openMapping(
      'alternatives such as `{ jarred tomato sauce: 90 g }`',
      textOrMapping(
        bare,
        converted(conditions, ({value}) => value),
      ),
    ),
    ({value}) => value.map(({key, value: alternative}) => ({name: key, ...alternative.value})),
  )
}
