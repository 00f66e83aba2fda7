import {type Figures, isComplete} from '../food/figures.ts'
import {nutrientName} from '../food/nutrients.ts'
import type {Computed} from '../nutrition/computed.ts'
import {type Publishing, publishedFigure} from '../nutrition/published.ts'
import {type FitRow, type LinearSum, rowValue} from './fit-problem.ts'
import type {LineSums} from './line-sums.ts'
import type {Target, WeighedFigure} from './target.ts'

/** A target as a row over the lines that may change; without servings it is about the batch. */
export function targetRow(
  target: Target,
  {nutrient: sumOf, batchGrams}: LineSums,
  {serves, grams}: {readonly serves: number | undefined; readonly grams: readonly number[]},
): FitRow {
  const {text, sense, bound, figure, per} = target
  const over = times(sumOf(figure.nutrient), figure.weight)
  const row = {text, sense, bound, scale: 1} as const
  const of = (under: LinearSum | undefined) => ({...row, over, ...(under && {under})})
  const unscaled =
    per === 'serving'
      ? {...row, over: times(over, 1 / (serves ?? 1))}
      : of(
          per === '100 g'
            ? batchGrams && times(batchGrams, 1 / 100)
            : times(sumOf(per.nutrient), per.weight),
        )
  return {
    ...unscaled,
    scale: Math.max(Math.abs(bound), Math.abs(rowValue(unscaled, grams)), 1e-3),
  }
}

function times({perGram, fixed}: LinearSum, factor: number): LinearSum {
  return {perGram: perGram.map((weight) => weight * factor), fixed: fixed * factor}
}

/**
 * Why a target cannot be told from the figures there are. One that is "at least" can be shown to
 * reach a bound, never to stay below it; what a share is taken of, the other way round.
 */
export function whyUntold(
  target: Target,
  {batch, batchGrams, recipe}: Computed,
  publishing: Publishing,
): string | undefined {
  const {figure, per, sense, text} = target
  const hasGrowingShare = recipe.leftBehind !== undefined && recipe.batch === undefined
  if ((per === '100 g' && batchGrams === undefined) || (hasGrowingShare && isShared(target))) {
    return `the weight of the finished batch under \`yield\`, for \`${text}\``
  }
  const upper = sense === '<=' ? figure : typeof per === 'object' ? per : undefined
  if (typeof per === 'object' && publishedFigure(batch, per.nutrient, publishing).value <= 0) {
    return `some ${nutrientName[per.nutrient]} to divide by, for \`${text}\``
  }
  return upper && unknownIn(upper, {batch, publishing, text})
}

/**
 * Whether a target depends on the share of the pot that is served. Where a weight is left behind of
 * a batch that grows, that share grows too, and no sum over the lines tells it.
 */
function isShared({figure, per}: Target): boolean {
  return typeof per !== 'object' || [figure, per].some(({nutrient}) => nutrient === 'water')
}

function unknownIn(
  {nutrient}: WeighedFigure,
  {
    batch,
    publishing,
    text,
  }: {readonly batch: Figures<'batch'>; readonly publishing: Publishing; readonly text: string},
): string | undefined {
  const published = publishedFigure(batch, nutrient, publishing)
  if (isComplete(published)) return undefined
  const foods = [...published.missing].join(', ')
  return `known figures for \`${text}\`: nobody published ${nutrientName[nutrient]} for ${foods}`
}
