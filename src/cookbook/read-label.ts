import type {Label, LabelLine, Printed} from '../food/label.ts'
import {type LabelRules, labelRules} from '../food/label-rules.ts'
import {nutrientUnit} from '../food/nutrients.ts'
import {type PrintedText, parsePrinted} from '../food/parse-printed.ts'
import {type Polyol, polyols} from '../food/polyols.ts'
import type {WeightAmount} from '../units/amount.ts'
import {parseWeight} from '../units/parse-amount.ts'
import {type Parsed, parsed} from '../units/parsed.ts'
import {parseDay} from './calendar-date.ts'
import {nutrientFields} from './nutrient-fields.ts'
import type {Located} from './problem.ts'
import {
  mapping,
  type OptionalField,
  optional,
  required,
  textOrMapping,
} from './yaml/collection-readers.ts'
import type {Reader} from './yaml/reader.ts'
import {remembering} from './yaml/remembering.ts'
import {choice, parsedText} from './yaml/text-readers.ts'

/** A panel as foods.yaml has it, before the cookbook's own rules fill in. */
export interface WrittenLabel {
  readonly per: WeightAmount
  readonly label: Omit<Label, 'rules'>
  readonly rules?: LabelRules
}

/** One line of a panel. */
interface WrittenLine extends PrintedText {
  readonly line: LabelLine
}

const weight = parsedText(
  'a weight such as `150 g`',
  // Only weights pass, so the cookbook's cups do not matter here.
  (text) => parseWeight(text, {cups: 'metric', measures: new Set()}),
  ['100 g', '28 g', '30 g (2 tbsp)'],
)

function printed(line: LabelLine): Reader<WrittenLine> {
  const example = line === 'energyKilojoules' ? '410 kJ' : `6 ${nutrientUnit[line]}`
  return parsedText(
    `a figure as the packet prints it, such as \`${example}\``,
    (text): Parsed<WrittenLine> => {
      const figure = parsePrinted(line, text)
      return figure.ok ? parsed({line, ...figure.value}) : figure
    },
    [example, `less than ${example}`],
  )
}

const polyolGrams = optional(printed('polyols'), 'Grams of this one')

const polyolsByKind = mapping('a mapping from kind to grams', {
  erythritol: polyolGrams,
  xylitol: polyolGrams,
  maltitol: polyolGrams,
  sorbitol: polyolGrams,
  mannitol: polyolGrams,
  isomalt: polyolGrams,
  lactitol: polyolGrams,
  'hydrogenated starch hydrolysates': polyolGrams,
} satisfies Record<Polyol, OptionalField<WrittenLine>>)

const labelFields = mapping('a mapping with `per` and the figures of the packet', {
  per: required(weight, 'What the figures are for', 'what weight are the figures for?'),
  ...nutrientFields(printed),
  energy: optional(printed('energy'), 'Energy in kcal; it counts where kJ is given too'),
  'energy kJ': optional(printed('energyKilojoules'), 'Energy in kJ'),
  carbohydrate: optional(
    printed('carbohydrate'),
    'Carbohydrate as the panel has it: with fibre under US rules, without under EU rules',
  ),
  polyols: optional(
    textOrMapping(printed('polyols'), polyolsByKind),
    'Polyols (sugar alcohols), as one figure or by kind',
  ),
  allulose: optional(printed('carbohydrate'), 'Allulose, part of the carbohydrate'),
  rules: optional(choice(labelRules), 'Whose rules the panel follows'),
  read: optional(
    parsedText('a day such as `2026-10-03`', parseDay, ['2026-10-03']),
    'The day the packet was read',
  ),
  state: optional(
    choice(['as sold', 'as prepared']),
    'Whether the figures are for the food as it is sold or as it is prepared',
  ),
})

type LabelValues = typeof labelFields extends Reader<infer V> ? V : never
type PolyolsByKind = typeof polyolsByKind extends Reader<infer V> ? V : never

/** The nutrition panel of a packaged food, as foods.yaml has it. */
export const labelReader: Reader<WrittenLabel> = {
  expected: labelFields.expected,
  schema: labelFields.schema,
  read(node, reading) {
    const inside = remembering(reading)
    const fields = labelFields.read(node, inside.reading)
    if (!fields) return undefined
    const {per, rules} = fields.value
    const label = writtenLabel(fields.value)
    if (label.printed.size + label.printedPolyols.size === 0 && !inside.hasReported()) {
      reading.report({
        ruleId: 'key-present',
        place: per.place,
        reason: `${reading.subject} has no figures, expected those of the packet`,
        note: 'A packet without a panel has nothing to compute from: take `same as` and a food of the table.',
      })
      return undefined
    }
    return {
      value: {per: per.value, label, ...(rules && {rules: rules.value})},
      place: fields.place,
    }
  },
}

function writtenLabel(values: LabelValues): WrittenLabel['label'] {
  const {per, polyols: written, allulose, rules: _, read, state, ...figures} = values
  const lines = new Map<LabelLine, Printed>()
  for (const figure of Object.values(figures)) {
    if (figure) lines.set(figure.value.line, placed(figure))
  }
  const {value: polyolsWritten, place} = written ?? {}
  if (polyolsWritten && place && isOneFigure(polyolsWritten)) {
    lines.set('polyols', placed({value: polyolsWritten, place}))
  }
  return {
    perGrams: per.value.grams.value,
    perText: per.value.text,
    printed: lines,
    printedPolyols:
      polyolsWritten && !isOneFigure(polyolsWritten) ? byKind(polyolsWritten) : new Map(),
    ...(allulose && {printedAllulose: placed(allulose)}),
    state: state?.value ?? 'as sold',
    ...(read && {readOn: {day: read.value, place: read.place}}),
  }
}

function isOneFigure(written: WrittenLine | PolyolsByKind): written is WrittenLine {
  return 'line' in written
}

function byKind(written: PolyolsByKind): ReadonlyMap<Polyol, Printed> {
  const kinds = new Map<Polyol, Printed>()
  for (const kind of polyols) {
    const figure = written[kind]
    if (figure) kinds.set(kind, placed(figure))
  }
  return kinds
}

function placed({value: {line: _, ...figure}, place}: Located<WrittenLine>): Printed {
  return {...figure, place}
}
