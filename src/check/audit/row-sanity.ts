import {type Figure, isComplete} from '../../food/figures.ts'
import type {Food} from '../../food/food.ts'
import {methodName} from '../../food/method-factors.ts'
import {nutrientText} from '../../food/nutrient-text.ts'
import {type Nutrient, nutrientName} from '../../food/nutrients.ts'
import type {MacroSpans} from '../../nutrition/energy-of-macros.ts'
import {formatFigure, roundedText} from '../../units/format-figure.ts'
import {type Span, spanOfRounded, spanSum} from '../../units/span.ts'
import {standardUncertainty} from '../../units/uncertain.ts'
import {energyGap} from '../energy-gap.ts'

/** What is odd about a row of a table: one sentence, and how to look into it. */
export interface Oddity {
  readonly reason: string
  readonly note: string
}

/** Looks at one row of a table by itself: parts within wholes, mass within 100 g, energy. */
export function rowOddities(food: Food): readonly Oddity[] {
  return [...partsBeyondWholes(food), ...massBeyond100g(food), ...energyBesideMacros(food)]
}

const partOf: readonly (readonly [part: Nutrient, whole: Nutrient])[] = [
  ['saturated', 'fat'],
  ['trans', 'fat'],
  ['fibre', 'carbohydrate'],
  ['sugars', 'carbohydrate'],
  ['addedSugars', 'sugars'],
  ['polyols', 'carbohydrate'],
]

/** Parts are analysed apart from their wholes, and come out up to this much larger; measured on SR28. */
const partSlackGrams = 1

function* partsBeyondWholes({name, per100g}: Food): Iterable<Oddity> {
  for (const [part, whole] of partOf) {
    const [inner, outer] = [spanOf(per100g[part]), spanOf(per100g[whole])]
    if (!inner || !outer || inner.low <= outer.high + partSlackGrams) continue
    const actual = nutrientText(part, inner.value)
    yield {
      reason: `${titled(part)} \`${actual}\` of \`${name}\`, expected \`${nutrientText(whole, outer.value)}\` or less: it is part of the ${nutrientName[whole]}`,
      note: 'A column of the table may stand for something else than its heading says.',
    }
  }
}

/** Proximates are analysed one by one, and need not close to 100 g; measured on SR28. */
const massSlackGrams = 3

function* massBeyond100g({name, per100g, ashGrams = 0}: Food): Iterable<Oddity> {
  const parts = (['water', 'protein', 'fat', 'carbohydrate', 'alcohol'] as const).flatMap(
    (nutrient) => spanOf(per100g[nutrient]) ?? [],
  )
  const grams = spanSum(parts).low + ashGrams
  if (grams <= 100 + massSlackGrams) return
  yield {
    reason: `Parts of \`${name}\` add up to \`${formatFigure(grams, 'g', 1)}\`, expected \`100 g\` or a little less`,
    note: 'The table may count fibre beside its carbohydrate, or a figure may be per dry weight.',
  }
}

/**
 * A gap within this share of the energy, or within so many kcal, says nothing: specific factors of
 * plants lie below the general ones (Merrill & Watt, USDA Handbook 74, 1973), and vinegar holds
 * acid that is no macro. Measured on SR28: of 1,385 rows this leaves 2 whose macros do not explain
 * their energy.
 */
const energySlack = {ratio: 0.25, kcal: 20} as const

function* energyBesideMacros(food: Food): Iterable<Oddity> {
  const {name, per100g} = food
  const energy = spanOf(per100g.energy)
  const macros = macroSpans(per100g)
  if (!energy || !macros || followsOwnFactors(food)) return
  const gap = energyGap(energy, macros, {slack: slackKcal(energy.value), grams: 100})
  if (gap.fits) return
  const expected = formatFigure(gap.general.value, 'kcal')
  yield {
    reason: `Energy \`${nutrientText('energy', energy.value)}\` of \`${name}\`, expected about \`${expected}\` from its macros by ${methodName.energyGeneral}, ${roundedText(gap.gapPercent, 1)} % apart`,
    note: gap.wouldExplain.join('\n'),
  }
}

function slackKcal(energyKcal: number): number {
  return Math.max(energySlack.kcal, energySlack.ratio * energyKcal)
}

/** Whether the energy follows from the specific factors the table gives for the food. */
export function followsOwnFactors({factors, per100g}: Food): boolean {
  const {protein, fat, carbohydrate} = factors ?? {}
  if (protein == null || fat == null || carbohydrate == null) return false
  const kcal =
    per100g.protein.value * protein +
    per100g.fat.value * fat +
    per100g.carbohydrate.value * carbohydrate
  return Math.abs(per100g.energy.value - kcal) <= slackKcal(kcal)
}

function macroSpans(per100g: Food['per100g']): MacroSpans | undefined {
  const [protein, fat] = [spanOf(per100g.protein), spanOf(per100g.fat)]
  const [total, available] = [spanOf(per100g.carbohydrate), spanOf(per100g.availableCarbohydrate)]
  const carbohydrate = total ?? available
  if (!protein || !fat || !carbohydrate) return undefined
  const [fibre, polyols, alcohol] = [
    spanOf(per100g.fibre),
    spanOf(per100g.polyols),
    spanOf(per100g.alcohol),
  ]
  return {
    protein,
    fat,
    carbohydrate,
    carbohydrateIs: total ? 'total' : 'available',
    ...(fibre && {fibre}),
    ...(polyols && {polyols}),
    ...(alcohol && {alcohol}),
  }
}

/** The limits of a figure's rounding; undefined where it is unknown. */
function spanOf(figure: Figure): Span | undefined {
  // A figure of a table has one rectangular source, whose width is √12 standard uncertainties.
  return isComplete(figure)
    ? spanOfRounded(figure.value, Math.sqrt(12) * standardUncertainty(figure))
    : undefined
}

function titled(nutrient: Nutrient): string {
  const name = nutrientName[nutrient]
  return name.charAt(0).toUpperCase() + name.slice(1)
}
