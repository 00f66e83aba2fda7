import {aisles, allergens, origins, traits} from '../food/food.ts'
import {parseWeight} from '../units/parse-amount.ts'
import {parsePercent} from '../units/parse-percent.ts'
import {refused} from '../units/parsed.ts'
import {labelReader} from './read-label.ts'
import {list, mapping, openMapping, optional} from './yaml/collection-readers.ts'
import type {Reader} from './yaml/reader.ts'
import {remembering} from './yaml/remembering.ts'
import {choice, number, parsedText, text} from './yaml/text-readers.ts'

const weight = parsedText(
  'a weight such as `450 g`',
  // Only weights pass, so the cookbook's cups do not matter here.
  (written) => parseWeight(written, {cups: 'metric', measures: new Set()}),
  ['450 g', '1 kg'],
)

/** Whatever is refused keeps at least a trace of what was bought. */
const refuse = parsedText(
  'a percentage such as `12 %`',
  (written) => {
    const ratio = parsePercent(written)
    return ratio.ok && ratio.value >= 1 ? refused('less than `100 %`') : ratio
  },
  ['12 %'],
)

const allergenList = list('a list of allergens such as `[milk, egg]`', choice(allergens))

const sold = mapping('a mapping such as `{ weight: 450 g, price: 2.89, aisle: dairy }`', {
  weight: optional(weight, 'What is in one pack'),
  price: optional(number({from: 0}), "Price of one pack, in the cookbook's currency"),
  aisle: optional(choice(aisles), 'Where in the shop it stands'),
})

const foodFields = mapping('a mapping with `label` or `same as`', {
  label: optional(labelReader, 'The nutrition panel, as the packet prints it'),
  'same as': optional(text, 'A food of a table, by name or id, that this is another name for'),
  sold: optional(sold, 'How it is sold'),
  contains: optional(allergenList, 'Allergens in it; `[]` says there are none'),
  'may contain': optional(allergenList, 'Allergens the packet warns of as traces'),
  'made from': optional(list('a list of origins such as `[dairy]`', choice(origins)), 'Made from'),
  traits: optional(
    list('a list of traits such as `[flour]`', choice(traits)),
    'What it is in a kitchen',
  ),
  measures: optional(
    openMapping('a mapping from measures to weights such as `{ tbsp: 17 g }`', weight),
    'Weight of one kitchen measure, without peel and bone',
  ),
  refuse: optional(refuse, 'Share of the purchase that is thrown away'),
  also: optional(list('a list of other names', text), 'Other names'),
})

export type FoodValues = typeof foodFields extends Reader<infer V> ? V : never

/** One food of foods.yaml, and whether all of it could be read. */
export const ownFoodReader: Reader<{readonly fields: FoodValues; readonly isSound: boolean}> = {
  expected: foodFields.expected,
  schema: foodFields.schema,
  read(node, reading) {
    const inside = remembering(reading)
    const fields = foodFields.read(node, inside.reading)
    return (
      fields && {
        value: {fields: fields.value, isSound: !inside.hasReported()},
        place: fields.place,
      }
    )
  },
}
