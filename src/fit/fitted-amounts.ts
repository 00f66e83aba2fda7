import type {FitLine} from './fit-problem.ts'
import type {FreeLine} from './free-line.ts'

/** A line before and after a fit. */
export interface ChangedLine {
  readonly name: string
  /** As written, and as it is to be written. */
  readonly from: string
  readonly to: string
  /** The change as a share of the amount as written; below 0 where it became less. */
  readonly ratio: number
  /** The limit that stands in the way of more change. */
  readonly limit?: 'low' | 'high'
}

/** The lines whose amount is another after the fit. */
export function changedLines(
  lines: readonly FreeLine[],
  grams: readonly number[],
): readonly ChangedLine[] {
  return lines.flatMap(({line, fitLine, textOf}, index) => {
    const to = grams[index] ?? fitLine.grams
    if (to === fitLine.grams) return []
    const limit = limitAt(fitLine, to)
    return [
      {
        name: fitLine.name,
        from: line.line.amount.value.text,
        to: textOf(to, 1),
        ratio: to / fitLine.grams - 1,
        ...(limit && {limit}),
      },
    ]
  })
}

function limitAt({grams, amounts}: FitLine, to: number): 'low' | 'high' | undefined {
  const [low, high] =
    amounts.kind === 'steps'
      ? [amounts.low + amounts.step, amounts.high - amounts.step]
      : [amounts.grams[1] ?? Number.POSITIVE_INFINITY, amounts.grams.at(-2) ?? 0]
  if (to < grams) return to < low - 1e-9 ? 'low' : undefined
  return to > high + 1e-9 ? 'high' : undefined
}

/** The amounts of a fit for numbers of servings, the first of which is the recipe's own. */
export function scaledAmounts(
  lines: readonly FreeLine[],
  grams: readonly number[],
  [serves = 1, ...others]: readonly number[],
): readonly {readonly name: string; readonly texts: readonly string[]}[] {
  return lines.map(({fitLine: {name, grams: before}, textOf}, index) => ({
    name,
    texts: [serves, ...others].map((one) => textOf(grams[index] ?? before, one / serves)),
  }))
}
