import type {Allergen, Food} from '../food/food.ts'
import {labelFigures} from '../food/label-figures.ts'
import type {LabelRules} from '../food/label-rules.ts'
import {nearestNames} from '../food/nearest-names.ts'
import type {PublishedFoods} from '../food/published-foods.ts'
import type {WeightAmount} from '../units/amount.ts'
import {measureOf} from '../units/measures.ts'
import {unitWords, volumeNames} from '../units/unit-names.ts'
import {type CupSystem, millilitresPerUnit} from '../units/units.ts'
import type {FoodValues} from './own-food-fields.ts'
import type {Located} from './problem.ts'
import type {Report} from './problems.ts'
import type {WrittenLabel} from './read-label.ts'

/** One entry of foods.yaml, its fields read. */
export interface OwnFoodEntry {
  readonly name: Located<string>
  readonly fields: FoodValues
  /** Path of foods.yaml, relative to the cookbook folder. */
  readonly file: string
  /** What the measures of the cookbook are filled with. */
  readonly cups: CupSystem
  readonly report: Report
}

/** How many near names a message lists. */
const mostSuggestions = 3

/** A food with a panel of its own. */
export function labelledFood(
  entry: OwnFoodEntry,
  written: Located<WrittenLabel>,
  cookbookRules: LabelRules,
): Food | undefined {
  const {name, fields, file, report} = entry
  const sameAs = fields['same as']
  if (sameAs) {
    report({
      ruleId: 'readable-value',
      place: sameAs.place,
      actual: sameAs.value,
      reason: `\`${name.value}\` has a \`label\` and is \`same as\` another food, expected one of them`,
      note: 'The figures come from the packet or from the table, not from both.',
    })
    return undefined
  }
  const {value, place} = written
  const label = {...value.label, rules: value.rules ?? cookbookRules}
  return {
    id: `own/${name.value}`,
    name: name.value,
    aisle: fields.sold?.value.aisle?.value ?? 'other',
    from: values(fields['made from']),
    traits: new Set(values(fields.traits)),
    contains: new Set(values(fields.contains)),
    allergensKnown: fields.contains !== undefined,
    refuseRatio: fields.refuse?.value ?? 0,
    ...measuredBy([...measureBeside(value.per), ...measures(fields)], entry),
    per100g: labelFigures(label, name.value),
    label,
    provenance: {kind: 'label', file, place},
    ...common(entry),
  }
}

/** Another name for a food of a table; what the writer adds comes on top of what the table says. */
export function tableFood(entry: OwnFoodEntry, published: PublishedFoods): Food | undefined {
  const {name, fields, report} = entry
  const sameAs = fields['same as']
  if (!sameAs) {
    report({
      ruleId: 'key-present',
      place: name.place,
      reason: `\`${name.value}\` has neither \`label\` nor \`same as\`: where do its figures come from?`,
    })
    return undefined
  }
  const base = published.lookUp(sameAs.value)
  if (!base) {
    const near = nearestNames(sameAs.value, published.names, mostSuggestions)
    report({
      ruleId: 'readable-value',
      place: sameAs.place,
      actual: sameAs.value,
      expected: near,
      reason: `\`same as\` of \`${name.value}\` is \`${sameAs.value}\`, expected ${nearOr(near)}`,
    })
    return undefined
  }
  return {
    ...base,
    name: name.value,
    aisle: fields.sold?.value.aisle?.value ?? base.aisle,
    from: fields['made from'] ? values(fields['made from']) : base.from,
    traits: new Set([...base.traits, ...values(fields.traits)]),
    contains: new Set<Allergen>([...base.contains, ...values(fields.contains)]),
    allergensKnown: base.allergensKnown || fields.contains !== undefined,
    refuseRatio: fields.refuse?.value ?? base.refuseRatio,
    ...measuredBy(measures(fields), entry, base.measures),
    ...common(entry),
  }
}

function nearOr(near: readonly string[]): string {
  if (near.length === 0) return 'a name or id of a food in the tables, such as `usda/20081`'
  return near.map((each) => `\`${each}\``).join(' or ')
}

/** What both kinds of entry have alike. */
function common({
  name,
  fields,
  file,
  report,
}: OwnFoodEntry): Pick<Food, 'also' | 'mayContain' | 'named' | 'sold'> {
  const {weight, price} = fields.sold?.value ?? {}
  if (price && !weight) {
    report({
      ruleId: 'key-present',
      place: price.place,
      reason: '`weight` in `sold` is missing: how much is in the pack the price is for?',
    })
  }
  return {
    named: {file, place: name.place},
    also: values(fields.also),
    mayContain: new Set(values(fields['may contain'])),
    ...(weight && {
      sold: {grams: weight.value.grams.value, ...(price && {price: price.value})},
    }),
  }
}

function values<T>(listed: Located<readonly Located<T>[]> | undefined): readonly T[] {
  return listed?.value.map(({value}) => value) ?? []
}

/** Grams of one measure, under the name amounts know it by. */
type GramsOfMeasure = readonly [measure: string, grams: number]

/** The writer's measures on top of a table's, with what those that are volumes hold. */
function measuredBy(
  own: readonly GramsOfMeasure[],
  {cups}: OwnFoodEntry,
  table: Iterable<GramsOfMeasure> = [],
): Pick<Food, 'measures' | 'filledMillilitres'> {
  const filled = own.flatMap(([measure]): (readonly [string, number])[] => {
    const unit = volumeNames.get(measure)
    return unit ? [[measure, millilitresPerUnit[cups][unit]]] : []
  })
  return {
    measures: new Map([...table, ...own]),
    ...(filled.length > 0 && {filledMillilitres: new Map(filled)}),
  }
}

function measures(fields: FoodValues): readonly GramsOfMeasure[] {
  const entries = fields.measures?.value ?? []
  return entries.map(({key, value}) => [measureName(key.value), value.value.grams.value])
}

function measureName(written: string): string {
  const words = unitWords(written)
  return volumeNames.get(words) ?? measureOf(words, new Set()) ?? words
}

/** `per: 30 g (2 tbsp)` says what a tablespoon weighs. */
function measureBeside({grams, beside}: WeightAmount): readonly GramsOfMeasure[] {
  return beside ? [[beside.measure, grams.value / beside.count.value]] : []
}
