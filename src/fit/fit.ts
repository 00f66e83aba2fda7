import {
  asWritten,
  changeOf,
  type FitKept,
  type FitProblem,
  type FitRow,
  rowValue,
  shortfall,
} from './fit-problem.ts'
import type {Solver} from './solver.ts'

/** The smallest change that meets the targets, or comes nearest. */
export interface Fit {
  /** By line. */
  readonly grams: readonly number[]
  /** Sum of the lines' changes, each as a share of its own amount. */
  readonly change: number
  readonly rows: readonly FittedRow[]
  readonly kept: readonly FittedKept[]
}

export interface FittedRow {
  readonly row: FitRow
  readonly before: number
  readonly after: number
  /** How far it is missed, 0 where it is met. */
  readonly shortfall: number
  /** As far as the amounts let it go, where it is missed: with no other target in the way. */
  readonly alone?: number
  /** What would be left of the change without this target, where all are met. */
  readonly changeWithout?: number
}

export interface FittedKept {
  readonly kept: FitKept
  /** What would be left of the change without keeping it, where all targets are met. */
  readonly changeWithout?: number
}

/**
 * Fits amounts to targets; shortfalls come first, where there must be any.
 * @returns nothing where no amounts at all hold what is to be kept
 */
export function fitted(problem: FitProblem, solve: Solver): Fit | undefined {
  const met = solve(problem, {kind: 'change'})
  const grams = met === 'infeasible' ? nearest(problem, solve) : met
  if (grams === undefined) return undefined
  const changeOfOther = (part: Partial<FitProblem>) =>
    met !== 'infeasible' && {
      changeWithout: changeOf(
        problem.lines,
        feasible(solve({...problem, ...part}, {kind: 'change'})),
      ),
    }
  return {
    grams,
    change: changeOf(problem.lines, grams),
    rows: problem.rows.map((row) => {
      const missed = shortfall(row, grams)
      return {
        row,
        before: rowValue(row, asWritten(problem)),
        after: rowValue(row, grams),
        shortfall: missed,
        ...(missed > 0 && {alone: farthest(row, problem, solve)}),
        ...changeOfOther({rows: problem.rows.filter((other) => other !== row)}),
      }
    }),
    kept: problem.kept.map((kept) => ({
      kept,
      ...changeOfOther({kept: problem.kept.filter((other) => other !== kept)}),
    })),
  }
}

/** The least shortfall, and of all that have it the smallest change. */
function nearest(problem: FitProblem, solve: Solver): readonly number[] | undefined {
  const first = solve(problem, {kind: 'shortfall'})
  if (first === 'infeasible') return undefined
  // Targets are moved to where they can be met; then it is a fit as any other.
  const rows = problem.rows.map((row) =>
    shortfall(row, first) > 0 ? {...row, bound: rowValue(row, first)} : row,
  )
  const again = solve({...problem, rows}, {kind: 'change'})
  return again === 'infeasible' ? first : again
}

/** More rounds than a quotient of sums ever took. */
const mostRounds = 20

/**
 * The row's value as low (or high) as the amounts let it go. A quotient is a sum again once its
 * value is guessed, and each guess is better than the last (Dinkelbach, "On nonlinear fractional
 * programming", Management Science 13, 1967).
 */
function farthest(row: FitRow, problem: FitProblem, solve: Solver): number {
  let value = row.bound
  for (let round = 0; round < mostRounds; round++) {
    const grams = feasible(solve(problem, {kind: 'row', row: {...row, bound: value}}))
    const next = rowValue(row, grams)
    if (row.under === undefined || Math.abs(next - value) < 1e-9 * row.scale) return next
    value = next
  }
  return value
}

/** What is asked less of has a solution where the whole has one. */
function feasible(solved: ReturnType<Solver>): readonly number[] {
  if (solved === 'infeasible') throw new Error('A part of a fit has no solution though it has one')
  return solved
}
