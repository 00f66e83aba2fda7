import {methodName} from '../food/method-factors.ts'
import {nutrientName, type PublishedNutrient} from '../food/nutrients.ts'
import type {MacroSpans} from '../nutrition/energy-of-macros.ts'
import {formatFigure, roundedText} from '../units/format-figure.ts'
import {type Span, spanSum} from '../units/span.ts'
import type {EnergyGap} from './energy-gap.ts'

/** Figures printed for one weight, on a packet or in a row of a table, within their rounding. */
export interface PrintedFigures {
  readonly carbohydrateIs: MacroSpans['carbohydrateIs']
  /** In the nutrient's unit; undefined where it is not printed. */
  span(nutrient: PublishedNutrient): Span | undefined
}

/** A figure and the one it is part of. */
export type PartOfWhole = readonly [part: PublishedNutrient, whole: PublishedNutrient]

const partsOfWholes: readonly PartOfWhole[] = [
  ['saturated', 'fat'],
  ['trans', 'fat'],
  ['sugars', 'carbohydrate'],
  ['addedSugars', 'sugars'],
  ['polyols', 'carbohydrate'],
]

/**
 * Parts that are more than their wholes.
 * @param slackGrams by how much a part may be more, where the two are analysed apart
 */
export function partsBeyondWholes(
  {carbohydrateIs, span}: PrintedFigures,
  slackGrams: number,
): readonly PartOfWhole[] {
  // Fibre is part of total carbohydrate, and stands beside the carbohydrate without it.
  const pairs: readonly PartOfWhole[] =
    carbohydrateIs === 'total' ? [...partsOfWholes, ['fibre', 'carbohydrate']] : partsOfWholes
  return pairs.filter(([part, whole]) => {
    const [inner, outer] = [span(part), span(whole)]
    return inner && outer && inner.low > outer.high + slackGrams
  })
}

/** Least weight of what is printed of these, g. */
export function leastGrams(
  {span}: PrintedFigures,
  nutrients: readonly PublishedNutrient[],
): number {
  return spanSum(nutrients.flatMap((nutrient) => span(nutrient) ?? [])).low
}

/** The macros that energy is worked out from; undefined unless all three are printed. */
export function macrosPrinted({carbohydrateIs, span}: PrintedFigures): MacroSpans | undefined {
  const [protein, fat, carbohydrate] = [span('protein'), span('fat'), span('carbohydrate')]
  if (!protein || !fat || !carbohydrate) return undefined
  const [fibre, polyols, alcohol] = [span('fibre'), span('polyols'), span('alcohol')]
  return {
    protein,
    fat,
    carbohydrate,
    carbohydrateIs,
    ...(fibre && {fibre}),
    ...(polyols && {polyols}),
    ...(alcohol && {alcohol}),
  }
}

/** ``Saturated `6 g` of `feta`, expected `5 g` or less: it is part of the fat``. */
export function partReason(
  [part, whole]: PartOfWhole,
  {actual, most, food}: {readonly actual: string; readonly most: string; readonly food: string},
): string {
  const name = nutrientName[part]
  const subject = name.charAt(0).toUpperCase() + name.slice(1)
  return `${subject} \`${actual}\` of \`${food}\`, expected \`${most}\` or less: it is part of the ${nutrientName[whole]}`
}

/** What the macros would give, and the sentence that sets the printed energy beside it. */
export function energyReason(
  {general, gapPercent}: EnergyGap,
  {actual, food}: {readonly actual: string; readonly food: string},
): {readonly expected: string; readonly reason: string} {
  const expected = formatFigure(general.value, 'kcal')
  return {
    expected,
    reason: `Energy \`${actual}\` of \`${food}\`, expected about \`${expected}\` from its macros by ${methodName.energyGeneral}, ${roundedText(gapPercent, 1)} % apart`,
  }
}
