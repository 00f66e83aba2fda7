/** I/O: the solver HiGHS, loaded from its package. */

import {createRequire} from 'node:module'
import loadHighs, {type Highs} from 'highs'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {type FitLine, type FitProblem, shortfall} from './fit-problem.ts'
import {type Aim, choiceName, programText, staysApart} from './program-text.ts'

/** Grams by line, or that no amounts within the bounds do. */
export type Solved = readonly number[] | 'infeasible'

export type Solver = (problem: FitProblem, aim: Aim) => Solved

/** So long a fit may take, seconds; recipes of thirty lines take well under one. */
const patienceSeconds = 20

/** Loads the solver; a part of the command that only a fit needs. */
export async function loadSolver(): Promise<Solver> {
  const file = createRequire(import.meta.url).resolve('highs/runtime')
  // The types tell of the package's CommonJS form; its module gives the loader itself.
  const load: unknown = loadHighs
  if (typeof load !== 'function') throw new Error('The solver has no loader')
  const highs: Highs = await load({locateFile: () => file})
  return (problem, aim) => {
    const {Status, Columns} = highs.solve(programText(problem, aim), {
      output_flag: false,
      time_limit: patienceSeconds,
      mip_rel_gap: 0,
      mip_abs_gap: 1e-7,
      mip_feasibility_tolerance: 1e-9,
      primal_feasibility_tolerance: 1e-9,
    })
    if (Status === 'Infeasible') return 'infeasible'
    if (Status === 'Time limit reached') {
      throw new EnvironmentFailure(
        `No best amounts were found in ${patienceSeconds} s`,
        'Name fewer lines with `--change`, or a larger `--step`',
      )
    }
    if (Status !== 'Optimal') throw new Error(`The solver ended with: ${Status}`)
    const primal = (name: string): number => {
      const column = Columns[name]
      return column !== undefined && 'Primal' in column ? column.Primal : 0
    }
    const grams = problem.lines.map((line, index) => solvedGrams(line, index, primal))
    if (problem.kept.some(({rows}) => rows.some((row) => shortfall(row, grams) > 0))) {
      throw new Error('The solver broke a proportion it had to keep')
    }
    return grams
  }
}

/** The grams behind a line's variables, which are whole numbers but for the solver's tolerance. */
function solvedGrams(
  {grams, amounts}: FitLine,
  index: number,
  primal: (name: string) => number,
): number {
  if (amounts.kind === 'listed') {
    const taken = amounts.grams.find((_, choice) => primal(choiceName(index, choice)) > 0.5)
    if (taken === undefined) throw new Error('The solver took no amount of a list')
    return taken
  }
  if (staysApart(grams, amounts) && primal(`s${index}`) > 0.5) return grams
  // 7 × 0.1 is 0.7000000000000001 in doubles, and no change of 0.7.
  return Number((Math.round(primal(`n${index}`)) * amounts.step).toPrecision(12))
}
