import {type Figure, isComplete} from '../../food/figures.ts'
import type {Food} from '../../food/food.ts'
import {nutrientText} from '../../food/nutrient-text.ts'
import {formatFigure} from '../../units/format-figure.ts'
import {type Span, spanOfRounded} from '../../units/span.ts'
import {standardUncertainty} from '../../units/uncertain.ts'
import {energyGap} from '../energy-gap.ts'
import {
  energyReason,
  leastGrams,
  macrosPrinted,
  type PrintedFigures,
  partReason,
  partsBeyondWholes,
} from '../figures-fit.ts'

/** What is odd about a row of a table: one sentence, and how to look into it. */
export interface Oddity {
  readonly reason: string
  readonly note: string
}

/** Looks at one row of a table by itself: parts within wholes, mass within 100 g, energy. */
export function rowOddities(food: Food): readonly Oddity[] {
  return [...oddParts(food), ...massBeyond100g(food), ...energyBesideMacros(food)]
}

/** Parts are analysed apart from their wholes, and come out up to this much larger; measured on SR28. */
const partSlackGrams = 1

function* oddParts({name, per100g}: Food): Iterable<Oddity> {
  const figures = figuresOf(per100g)
  for (const pair of partsBeyondWholes(figures, partSlackGrams)) {
    const [actual = '', most = ''] = pair.map((nutrient) =>
      nutrientText(nutrient, figures.span(nutrient)?.value ?? 0),
    )
    yield {
      reason: partReason(pair, {actual, most, food: name}),
      note: 'A column of the table may stand for something else than its heading says.',
    }
  }
}

/** Proximates are analysed one by one, and need not close to 100 g; measured on SR28. */
const massSlackGrams = 3

const proximates = ['water', 'protein', 'fat', 'carbohydrate', 'alcohol'] as const

function* massBeyond100g({name, per100g, ashGrams = 0}: Food): Iterable<Oddity> {
  const grams = leastGrams(figuresOf(per100g), proximates) + ashGrams
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
  const macros = macrosPrinted(figuresOf(per100g))
  if (!energy || !macros || followsOwnFactors(food)) return
  const gap = energyGap(energy, macros, {slack: slackKcal(energy.value), grams: 100})
  if (gap.fits) return
  const actual = nutrientText('energy', energy.value)
  yield {
    reason: energyReason(gap, {actual, food: name}).reason,
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

/** A table that gives only the carbohydrate without fibre has that one looked at. */
function figuresOf(per100g: Food['per100g']): PrintedFigures {
  const isTotal = isComplete(per100g.carbohydrate)
  return {
    carbohydrateIs: isTotal ? 'total' : 'available',
    span: (nutrient) =>
      spanOf(per100g[nutrient === 'carbohydrate' && !isTotal ? 'availableCarbohydrate' : nutrient]),
  }
}

/** The limits of a figure's rounding; undefined where it is unknown. */
function spanOf(figure: Figure): Span | undefined {
  // A figure of a table has one rectangular source, whose width is √12 standard uncertainties.
  return isComplete(figure)
    ? spanOfRounded(figure.value, Math.sqrt(12) * standardUncertainty(figure))
    : undefined
}
