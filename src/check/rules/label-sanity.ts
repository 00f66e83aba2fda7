import type {Food} from '../../food/food.ts'
import {type Label, type LabelLine, type Printed, printedSpan} from '../../food/label.ts'
import {methodName} from '../../food/method-factors.ts'
import {kilojoulesPerKilocalorie, nutrientName} from '../../food/nutrients.ts'
import type {MacroSpans} from '../../nutrition/energy-of-macros.ts'
import {formatFigure, roundedText} from '../../units/format-figure.ts'
import {type Span, spanSum, spanTimes} from '../../units/span.ts'
import {energyGap} from '../energy-gap.ts'
import type {CookbookRule, Finding} from '../rule.ts'

export const labelSanity: CookbookRule = {
  id: 'label-sanity',
  severity: 'warning',
  summary:
    'A packet’s figures fit each other: parts within wholes, mass within the serving, energy within a method.',
  why: 'One slip while copying a panel goes into every recipe that uses the food.',
  source:
    'Rounding: 21 CFR 101.9(c), EU guidance of December 2012. Energy: 21 CFR 101.9(c)(1)(i) (A)–(C), Regulation (EU) 1169/2011 Annex XIV.',
  *check({cookbook}) {
    for (const food of cookbook.foods.own) {
      const {label, provenance} = food
      if (!label || provenance.kind !== 'label') continue
      for (const finding of [
        ...partsBeyondWholes(food, label),
        ...massBeyondServing(food, label),
        ...energyBesideMacros(food, label),
      ]) {
        yield {...finding, file: provenance.file}
      }
    }
  },
}

/** Lines of a panel that are part of another line. */
const partOf: readonly (readonly [part: LabelLine, whole: LabelLine])[] = [
  ['saturated', 'fat'],
  ['trans', 'fat'],
  ['sugars', 'carbohydrate'],
  ['addedSugars', 'sugars'],
  ['polyols', 'carbohydrate'],
]

function* partsBeyondWholes(food: Food, label: Label): Iterable<Finding> {
  // Fibre is part of a US panel's carbohydrate and stands beside an EU panel's.
  const pairs = label.rules === 'us' ? [...partOf, ['fibre', 'carbohydrate'] as const] : partOf
  for (const [part, whole] of pairs) {
    const [inner, outer] = [label.printed.get(part), label.printed.get(whole)]
    if (!inner || !outer) continue
    if (printedSpan(part, inner, label.rules).low <= printedSpan(whole, outer, label.rules).high) {
      continue
    }
    yield {
      place: inner.place,
      reason: `${named(part)} \`${inner.text}\` of \`${food.name}\`, expected \`${outer.text}\` or less: it is part of the ${named(whole).toLowerCase()}`,
      actual: inner.text,
      note: 'Read both lines of the packet again.',
    }
  }
}

const proximates: readonly LabelLine[] = ['protein', 'fat', 'carbohydrate', 'alcohol']

function* massBeyondServing(food: Food, label: Label): Iterable<Finding> {
  const lines: readonly LabelLine[] =
    label.rules === 'eu' ? [...proximates, 'fibre', 'salt'] : proximates
  const printed = lines.flatMap((line) => span(label, line) ?? [])
  const {low} = spanSum(printed)
  const first = label.printed.get('carbohydrate') ?? label.printed.get('protein')
  if (low <= label.perGrams || !first) return
  const sum = formatFigure(low, 'g', 1)
  yield {
    place: first.place,
    reason: `Parts of \`${food.name}\` add up to \`${sum}\`, expected \`${label.perText}\` or less: that is the weight they are for`,
    actual: sum,
    note: 'Read the packet again: a figure per 100 g may stand beside one per serving.',
  }
}

/** kcal that water, organic acids and a rounded method may explain before a packet is doubted. */
const slackRatio = 0.05

function* energyBesideMacros(food: Food, label: Label): Iterable<Finding> {
  const {energy, printed} = printedEnergy(label)
  const macros = macroSpans(label)
  if (!energy || !printed || !macros) return
  const gap = energyGap(energy, macros, {
    slack: slackRatio * energy.value,
    grams: label.perGrams,
  })
  if (gap.fits) return
  const expected = formatFigure(gap.general.value, 'kcal')
  yield {
    place: printed.place,
    reason: `Energy \`${printed.text}\` of \`${food.name}\`, expected about \`${expected}\` from its macros by ${methodName.energyGeneral}, ${roundedText(gap.gapPercent, 1)} % apart`,
    actual: printed.text,
    expected: [expected],
    note: [
      ...gap.byMethod.map(
        ({method, energy: by}) => `${methodName[method]}: ${formatFigure(by.value, 'kcal')}.`,
      ),
      ...gap.wouldExplain,
    ].join('\n'),
  }
}

/** The panel's energy in kcal; one that prints only kJ is held to its macros too. */
function printedEnergy(label: Label): {readonly energy?: Span; readonly printed?: Printed} {
  const printed = label.printed.get('energy') ?? label.printed.get('energyKilojoules')
  const kilojoules = span(label, 'energyKilojoules')
  const energy =
    span(label, 'energy') ?? (kilojoules && spanTimes(kilojoules, 1 / kilojoulesPerKilocalorie))
  return {...(energy && {energy}), ...(printed && {printed})}
}

function macroSpans(label: Label): MacroSpans | undefined {
  const [protein, fat] = [span(label, 'protein'), span(label, 'fat')]
  const carbohydrate = span(label, 'carbohydrate')
  if (!protein || !fat || !carbohydrate) return undefined
  const [fibre, polyols, alcohol] = [
    span(label, 'fibre'),
    polyolSpan(label),
    span(label, 'alcohol'),
  ]
  return {
    protein,
    fat,
    carbohydrate,
    carbohydrateIs: label.rules === 'us' ? 'total' : 'available',
    ...(fibre && {fibre}),
    ...(polyols && {polyols}),
    ...(label.printedAllulose && {
      allulose: printedSpan('carbohydrate', label.printedAllulose, label.rules),
    }),
    ...(alcohol && {alcohol}),
  }
}

function span(label: Label, line: LabelLine): Span | undefined {
  const printed = label.printed.get(line)
  return printed && printedSpan(line, printed, label.rules)
}

function polyolSpan(label: Label): Span | undefined {
  const kinds = [...label.printedPolyols.values()]
  return kinds.length > 0
    ? spanSum(kinds.map((printed) => printedSpan('polyols', printed, label.rules)))
    : span(label, 'polyols')
}

function named(line: LabelLine): string {
  const name = line === 'energyKilojoules' ? 'energy' : nutrientName[line]
  return name.charAt(0).toUpperCase() + name.slice(1)
}
