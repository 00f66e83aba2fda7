/** A recipe's amounts and targets as numbers: what a solver sees. */
export interface FitProblem {
  readonly lines: readonly FitLine[]
  /** Targets; where they cannot all be met, the shortfalls are kept as small as possible. */
  readonly rows: readonly FitRow[]
  /** Held without exception: proportions that are kept. */
  readonly kept: readonly FitRow[]
}

/** A line whose amount may change. */
export interface FitLine {
  readonly name: string
  /** As written; above 0. */
  readonly grams: number
  /** Least and most it may become, grams; the amount as written lies between them. */
  readonly low: number
  readonly high: number
  /** A changed amount is a whole number of these, grams. */
  readonly step: number
}

/** Σ perGram × grams + fixed, at most or at least `bound`; by the lines' order. */
export interface FitRow {
  readonly text: string
  readonly perGram: readonly number[]
  /** What the lines that stay as they are bring. */
  readonly fixed: number
  readonly sense: '<=' | '>='
  readonly bound: number
  /** What a miss is measured against: 0.1 of it is a tenth; above 0. */
  readonly scale: number
}

/** The value of a row for amounts in grams. */
export function rowValue({perGram, fixed}: FitRow, grams: readonly number[]): number {
  return perGram.reduce((sum, weight, index) => sum + weight * (grams[index] ?? 0), fixed)
}

/** Noise of doubles, as a share of the row's scale; far below what any scale in a kitchen shows. */
const noise = 1e-8

/** How far a row is missed, in its unit; 0 where it is met. */
export function shortfall(row: FitRow, grams: readonly number[]): number {
  const over = rowValue(row, grams) - row.bound
  const miss = row.sense === '<=' ? over : -over
  return miss > noise * row.scale ? miss : 0
}

/** The sum of what changed, each line as a share of its own amount: what a fit keeps smallest. */
export function changeOf(lines: readonly FitLine[], grams: readonly number[]): number {
  return lines.reduce(
    (sum, line, index) => sum + Math.abs((grams[index] ?? line.grams) - line.grams) / line.grams,
    0,
  )
}
