import {changeOf, type FitProblem, type FitRow, rowValue, shortfall} from './fit-problem.ts'
import type {Solver} from './solver.ts'

/** The smallest change that meets the targets, or comes nearest. */
export interface Fit {
  /** By line. */
  readonly grams: readonly number[]
  /** Sum of the lines' changes, each as a share of its own amount. */
  readonly change: number
  readonly rows: readonly FittedRow[]
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

/** Fits amounts to targets; shortfalls come first, where there must be any. */
export function fitted(problem: FitProblem, solve: Solver): Fit {
  const solved = solve(problem, {kind: 'change'})
  const grams = solved === 'infeasible' ? nearest(problem, solve) : solved
  return {
    grams,
    change: changeOf(problem.lines, grams),
    rows: problem.rows.map((row) => {
      const missed = shortfall(row, grams)
      const isBinding = solved !== 'infeasible'
      return {
        row,
        before: rowValue(row, asWritten(problem)),
        after: rowValue(row, grams),
        shortfall: missed,
        ...(missed > 0 && {alone: rowValue(row, feasible(solve(problem, {kind: 'row', row})))}),
        ...(isBinding && {changeWithout: changeWithout(row, problem, solve)}),
      }
    }),
  }
}

/** The least shortfall, and of all that have it the smallest change. */
function nearest(problem: FitProblem, solve: Solver): readonly number[] {
  const first = feasible(solve(problem, {kind: 'shortfall'}))
  // Targets are moved to where they can be met; then it is a fit as any other.
  const rows = problem.rows.map((row) => {
    const missed = shortfall(row, first)
    return {...row, bound: row.bound + (row.sense === '<=' ? missed : -missed)}
  })
  const again = solve({...problem, rows}, {kind: 'change'})
  return again === 'infeasible' ? first : again
}

function changeWithout(row: FitRow, problem: FitProblem, solve: Solver): number {
  const rows = problem.rows.filter((other) => other !== row)
  if (rows.length === 0) return 0
  return changeOf(problem.lines, feasible(solve({...problem, rows}, {kind: 'change'})))
}

function asWritten({lines}: FitProblem): readonly number[] {
  return lines.map(({grams}) => grams)
}

/** The amounts as written keep every proportion, so that without targets there is a solution. */
function feasible(solved: ReturnType<Solver>): readonly number[] {
  if (solved === 'infeasible') throw new Error('The amounts as written break a kept proportion')
  return solved
}
