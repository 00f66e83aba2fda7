import type {Food} from '../../food/food.ts'
import {type Label, type LabelLine, type Printed, printedSpan} from '../../food/label.ts'
import {methodName} from '../../food/method-factors.ts'
import {kilojoulesPerKilocalorie, type PublishedNutrient} from '../../food/nutrients.ts'
import {formatFigure} from '../../units/format-figure.ts'
import {type Span, spanSum, spanTimes} from '../../units/span.ts'
import {energyGap} from '../energy-gap.ts'
import {
  energyReason,
  leastGrams,
  macrosPrinted,
  type PrintedFigures,
  partReason,
  partsBeyondWholes,
} from '../figures-fit.ts'
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
        ...oddParts(food, label),
        ...massBeyondServing(food, label),
        ...energyBesideMacros(food, label),
      ]) {
        yield {...finding, file: provenance.file}
      }
    }
  },
}

function figuresOf(label: Label): PrintedFigures {
  return {
    carbohydrateIs: label.rules === 'us' ? 'total' : 'available',
    span: (nutrient) => (nutrient === 'polyols' ? polyolSpan(label) : span(label, nutrient)),
  }
}

function* oddParts(food: Food, label: Label): Iterable<Finding> {
  for (const pair of partsBeyondWholes(figuresOf(label), 0)) {
    const [part, whole] = pair
    // Polyols told by kind have no line of their own: the first kind stands for them.
    const [kind] = label.printedPolyols.values()
    const inner = label.printed.get(part) ?? (part === 'polyols' ? kind : undefined)
    const outer = label.printed.get(whole)
    if (!inner || !outer) continue
    const actual = inner === kind ? formatFigure(polyolSpan(label)?.value ?? 0, 'g') : inner.text
    yield {
      place: inner.place,
      reason: partReason(pair, {actual, most: outer.text, food: food.name}),
      actual,
      note: 'Read both lines of the packet again.',
    }
  }
}

const proximates: readonly PublishedNutrient[] = ['protein', 'fat', 'carbohydrate', 'alcohol']

function* massBeyondServing(food: Food, label: Label): Iterable<Finding> {
  const lines =
    label.rules === 'eu' ? [...proximates, 'fibre' as const, 'salt' as const] : proximates
  const low = leastGrams(figuresOf(label), lines)
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
  const macros = macrosPrinted(figuresOf(label))
  if (!energy || !printed || !macros) return
  const {printedAllulose, rules, perGrams} = label
  const gap = energyGap(
    energy,
    {
      ...macros,
      ...(printedAllulose && {allulose: printedSpan('carbohydrate', printedAllulose, rules)}),
    },
    {slack: slackRatio * energy.value, grams: perGrams},
  )
  if (gap.fits) return
  const {expected, reason} = energyReason(gap, {actual: printed.text, food: food.name})
  yield {
    place: printed.place,
    reason,
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
