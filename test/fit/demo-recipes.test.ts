/** Every recipe of the demo cookbook, against an optimum that no solver had a part in. */

import {fileURLToPath} from 'node:url'
import {beforeAll, expect, test} from 'vitest'
import {type Examined, examine} from '../../src/build.ts'
import {readCookbook} from '../../src/cookbook/read-folder.ts'
import {type Fit, fitted} from '../../src/fit/fit.ts'
import {
  asWritten,
  changeOf,
  type FitLine,
  type FitProblem,
  type FitRow,
  rowValue,
  sumValue,
} from '../../src/fit/fit-problem.ts'
import {type FitWishes, recipeProblem} from '../../src/fit/recipe-problem.ts'
import {loadSolver, type Solver} from '../../src/fit/solver.ts'
import {parseTarget, type Target} from '../../src/fit/target.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {triedOut} from './tried-out.ts'

let solve: Solver
let examined: Examined

beforeAll(async () => {
  solve = await loadSolver()
  const folder = fileURLToPath(new URL('../../content', import.meta.url))
  examined = examine(await readCookbook(folder))
  expect(examined.computed.size).toBeGreaterThan(20)
})

function target(text: string): Target {
  const read = parseTarget(text)
  if (!read.ok) throw new Error(read.expected)
  return read.value
}

function problemOf(one: Computed, wishes: Partial<FitWishes>): FitProblem {
  const all = {
    targets: [],
    change: [],
    keep: [],
    between: [],
    keepRatio: [],
    keepsYield: false,
    servings: [],
    step: 1,
    ...wishes,
  }
  const read = recipeProblem(one, all, examined.cookbook.settings)
  if (!read.ok) throw new Error(`${one.recipe.slug}: ${read.expected}`)
  return read.value.problem
}

function fitOf(problem: FitProblem, slug: string): Fit {
  const found = fitted(problem, solve)
  if (found === undefined) throw new Error(`${slug}: nothing holds what is kept`)
  return found
}

function energyNow(one: Computed): number {
  return (one.perServing ?? one.batch).energy.value
}

test('each loses 2 % of its energy, within a gram of the optimum without whole grams', () => {
  for (const [slug, one] of examined.computed) {
    const energy = target(`energy <= ${(energyNow(one) * 0.98).toFixed(2)} kcal`)
    const problem = problemOf(one, {targets: [energy]})
    const found = fitOf(problem, slug)
    const [row] = problem.rows
    if (row === undefined) throw new Error('No row')
    expect(rowValue(row, found.grams), slug).toBeLessThanOrEqual(row.bound + 1e-6)
    // What comes in pieces might take any weight for the lower limit, and stays for the upper one.
    const least = freely(problem, row, problem.lines)
    const whole = problem.lines.filter(({amounts}) => amounts.kind === 'steps')
    const most = freely(problem, row, whole)
    expect(found.change, slug).toBeGreaterThanOrEqual(least.change - 1e-6)
    expect(found.change, slug).toBeLessThanOrEqual(most.change + 1 / most.grams)
  }
})

/**
 * The optimum without whole grams, for one target at most: the lines that bring most are cut first,
 * to half at most, for a share of any line costs the same (the fractional knapsack, by greed).
 */
function freely(
  {lines}: FitProblem,
  {over: sum, bound}: FitRow,
  moving: readonly FitLine[],
): {readonly change: number; readonly grams: number} {
  const brought = moving.map((line) => ({
    line,
    brings: line.grams * (sum.perGram[lines.indexOf(line)] ?? 0),
  }))
  let over = sumValue(sum, asWritten({lines})) - bound
  let change = 0
  for (const {line, brings} of brought.toSorted((left, right) => right.brings - left.brings)) {
    const share = Math.min(0.5, over / brings)
    change += share
    over -= share * brings
    if (over <= 1e-9) return {change, grams: line.grams}
  }
  throw new Error('No amounts do')
}

/** Grams a line may move in the trial; its cube is tried out for each recipe. */
const reach = 14

test('each meets three targets at once, and no amounts tried one by one do better', () => {
  let changed = 0
  for (const [slug, one] of examined.computed) {
    const all = problemOf(one, {})
    const most = all.lines
      .filter(({amounts}) => amounts.kind === 'steps')
      .toSorted((left, right) => right.grams - left.grams)
      .slice(0, 3)
    const names = most.map(({name}) => name)
    const {protein, energy} = one.perServing ?? one.batch
    const problem = problemOf(one, {
      change: names,
      between: most.map(({name, grams}) => ({
        name,
        low: Math.max(1, grams - reach),
        high: grams + reach,
      })),
      targets: [
        target(`energy <= ${(energy.value * 0.995).toFixed(2)} kcal`),
        target(`protein >= ${(protein.value * 0.992).toFixed(3)} g`),
        target(
          `protein >= ${((protein.value / energy.value) * 400 * 0.998).toFixed(3)} % of energy`,
        ),
      ],
    })
    const found = fitOf(problem, slug)
    const least = triedOut(problem)
    const isMet = found.rows.every((row) => row.shortfall === 0)
    expect(isMet, slug).toBe(least !== undefined)
    if (least === undefined) continue
    changed += 1
    expect(found.change, slug).toBeCloseTo(changeOf(problem.lines, least), 9)
  }
  expect(changed).toBeGreaterThan(examined.computed.size * 0.7)
})

test('each for half as many and twice as many has whole grams for all of them', () => {
  for (const [slug, one] of examined.computed) {
    const serves = one.recipe.serves?.value
    if (serves === undefined) continue
    const others = [serves + 2, serves * 2]
    const energy = target(`energy <= ${(energyNow(one) * 0.95).toFixed(2)} kcal`)
    const problem = problemOf(one, {targets: [energy], servings: others})
    const found = fitOf(problem, slug)
    expect(
      found.rows.every((row) => row.shortfall === 0),
      slug,
    ).toBe(true)
    for (const [index, {amounts, name}] of problem.lines.entries()) {
      if (amounts.kind === 'listed') continue
      const grams = found.grams[index] ?? Number.NaN
      for (const other of others) {
        expect(Number.isInteger((grams * other) / serves), `${slug}: ${name} for ${other}`).toBe(
          true,
        )
      }
    }
  }
})

test('each keeps the weight of what is mixed, where that is asked', () => {
  let met = 0
  for (const [slug, one] of examined.computed) {
    const energy = target(`energy <= ${(energyNow(one) * 0.98).toFixed(2)} kcal`)
    const problem = problemOf(one, {targets: [energy], keepsYield: true})
    const found = fitOf(problem, slug)
    const [row] = problem.kept[0]?.rows ?? []
    expect(Math.abs(row ? rowValue(row, found.grams) : Number.NaN), slug).toBeLessThanOrEqual(
      0.5 + 1e-6,
    )
    met += found.rows.every((each) => each.shortfall === 0) ? 1 : 0
  }
  expect(met).toBeGreaterThan(examined.computed.size * 0.8)
})
