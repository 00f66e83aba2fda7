/** A recipe's amounts and targets as numbers: what a solver sees. */
export interface FitProblem {
  readonly lines: readonly FitLine[]
  /** Targets; where they cannot all be met, the shortfalls are kept as small as possible. */
  readonly rows: readonly FitRow[]
  /** Held without exception: proportions, the weight of a batch. */
  readonly kept: readonly FitKept[]
}

/** A line whose amount may change. */
export interface FitLine {
  readonly name: string
  /** As written; above 0. */
  readonly grams: number
  readonly amounts: FitAmounts
}

/** What a line may become. */
export type FitAmounts = SteppedAmounts | ListedAmounts

/** Any whole number of steps between two bounds; grams. */
export interface SteppedAmounts {
  readonly kind: 'steps'
  readonly low: number
  readonly high: number
  readonly step: number
  /** Whether the amount as written may stay where it is no whole number of steps. */
  readonly mayStay: boolean
}

/** Some weights and no other, rising: those of 1, 2, 3 … cloves; at least one. */
export interface ListedAmounts {
  readonly kind: 'listed'
  readonly grams: readonly number[]
}

/** Σ perGram × grams + fixed, by the lines' order. */
export interface LinearSum {
  readonly perGram: readonly number[]
  /** What the lines that stay as they are bring. */
  readonly fixed: number
}

/** A sum, or one sum divided by another, at most or at least `bound`. */
export interface FitRow {
  readonly text: string
  readonly over: LinearSum
  /** Above 0 whatever the amounts; absent for 1. */
  readonly under?: LinearSum
  readonly sense: '<=' | '>='
  readonly bound: number
  /** What a miss is measured against: 0.1 of it is a tenth; above 0, in the unit of the bound. */
  readonly scale: number
}

/** Rows that are held together: one proportion from both sides. */
export interface FitKept {
  readonly text: string
  readonly rows: readonly FitRow[]
}

export function sumValue({perGram, fixed}: LinearSum, grams: readonly number[]): number {
  return perGram.reduce((sum, weight, index) => sum + weight * (grams[index] ?? 0), fixed)
}

/** The value of a row for amounts in grams. */
export function rowValue({over, under}: FitRow, grams: readonly number[]): number {
  return sumValue(over, grams) / (under ? sumValue(under, grams) : 1)
}

/** Noise of doubles, as a share of the row's scale; far below what any scale in a kitchen shows. */
const noise = 1e-8

/** How far a row is missed, in its unit; 0 where it is met. */
export function shortfall(row: FitRow, grams: readonly number[]): number {
  const above = rowValue(row, grams) - row.bound
  const miss = row.sense === '<=' ? above : -above
  return miss > noise * row.scale ? miss : 0
}

/** The sum of what changed, each line as a share of its own amount: what a fit keeps smallest. */
export function changeOf(lines: readonly FitLine[], grams: readonly number[]): number {
  return lines.reduce(
    (sum, line, index) => sum + Math.abs((grams[index] ?? line.grams) - line.grams) / line.grams,
    0,
  )
}

/** The amounts before anything changes. */
export function asWritten({lines}: Pick<FitProblem, 'lines'>): readonly number[] {
  return lines.map(({grams}) => grams)
}
