import {fileURLToPath} from 'node:url'
import {beforeAll, describe, expect, test} from 'vitest'
import {examine} from '../../src/build.ts'
import {readCookbook} from '../../src/cookbook/read-folder.ts'
import {fitted} from '../../src/fit/fit.ts'
import {
  changeOf,
  type FitProblem,
  type FitRow,
  rowValue,
  shortfall,
} from '../../src/fit/fit-problem.ts'
import {recipeProblem} from '../../src/fit/recipe-problem.ts'
import {loadSolver, type Solver} from '../../src/fit/solver.ts'
import {parseTarget} from '../../src/fit/target.ts'
import {seededRandom} from '../seeded-random.ts'

let solve: Solver

beforeAll(async () => {
  solve = await loadSolver()
})

/** Every amount a line may become: as written, or a whole number of steps between its bounds. */
function choices({grams, low, high, step}: FitProblem['lines'][number]): readonly number[] {
  const steps = Array.from({length: Math.floor(high / step) + 1}, (_, count) => count * step)
  return [grams, ...steps.filter((one) => one >= low)]
}

/** The least change of all amounts that meet the targets, by trying every one of them. */
function triedOut(problem: FitProblem): number | undefined {
  let least: number | undefined
  function walk(grams: readonly number[]): void {
    const line = problem.lines[grams.length]
    if (line !== undefined) {
      for (const choice of choices(line)) walk([...grams, choice])
      return
    }
    if ([...problem.rows, ...problem.kept].some((row) => shortfall(row, grams) > 0)) return
    const change = changeOf(problem.lines, grams)
    if (least === undefined || change < least) least = change
  }
  walk([])
  return least
}

function randomProblem(seed: number): FitProblem {
  const random = seededRandom(seed)
  const between = (low: number, high: number) => low + random() * (high - low)
  const step = random() < 0.5 ? 5 : 10
  const lines = Array.from({length: 3}, (_, index) => {
    const grams = Math.round(between(20, 80))
    return {name: `line ${index}`, grams, low: grams / 2, high: grams * 2, step}
  })
  const rows = Array.from({length: 2}, (_, index): FitRow => {
    const perGram = lines.map(() => between(0, 4))
    const now = lines.reduce((sum, {grams}, at) => sum + grams * (perGram[at] ?? 0), 0)
    const sense = index === 0 ? '<=' : '>='
    return {
      text: `row ${index}`,
      perGram,
      fixed: 0,
      sense,
      bound: now * between(0.6, 1.4),
      scale: now,
    }
  })
  return {lines, rows, kept: []}
}

describe('on small cases', () => {
  test('no amounts do better, tried out one by one', () => {
    let feasible = 0
    for (let seed = 1; seed <= 40; seed++) {
      const problem = randomProblem(seed)
      const least = triedOut(problem)
      const found = fitted(problem, solve)
      const isMet = found.rows.every((row) => row.shortfall === 0)
      expect(isMet, `seed ${seed}`).toBe(least !== undefined)
      for (const [index, line] of problem.lines.entries()) {
        expect(choices(line)).toContain(found.grams[index])
      }
      if (least === undefined) continue
      feasible += 1
      expect(found.change, `seed ${seed}`).toBeCloseTo(least, 6)
    }
    expect(feasible).toBeGreaterThan(10)
    expect(feasible).toBeLessThan(40)
  })

  const two: FitProblem['lines'] = [
    {name: 'water', grams: 650, low: 325, high: 1300, step: 1},
    {name: 'flour', grams: 1000, low: 500, high: 2000, step: 1},
  ]
  const energy = (bound: number): FitRow => ({
    text: 'energy',
    perGram: [0, 3.5],
    fixed: 10,
    sense: '<=',
    bound,
    scale: bound,
  })

  test('a proportion is kept to half a step', () => {
    const kept = (['<=', '>='] as const).map(
      (sense): FitRow => ({
        text: 'hydration',
        perGram: [1, -0.65],
        fixed: 0,
        sense,
        bound: sense === '<=' ? 0.5 : -0.5,
        scale: 1,
      }),
    )
    const {grams} = fitted({lines: two, rows: [energy(3010)], kept}, solve)
    // 3,000 kcal at 3.5 kcal/g are 857.1 g of flour; 65 % of 857 g is 557.05 g of water.
    expect(grams).toEqual([557, 857])
  })

  test('what cannot be met is told, alone and beside the others', () => {
    const least: FitRow = {...energy(1000), sense: '>=', text: 'more', bound: 5000}
    const found = fitted({lines: two, rows: [energy(1000), least], kept: []}, solve)
    const [tooMuch, tooLittle] = found.rows
    // Half the flour brings 1,760 kcal, twice the flour 7,010: the second can be met alone.
    expect(tooMuch?.alone).toBeCloseTo(1760, 6)
    expect((tooMuch?.shortfall ?? 0) + (tooLittle?.shortfall ?? 0)).toBeGreaterThan(0)
  })

  test('what a target costs is what is saved without it', () => {
    const found = fitted({lines: two, rows: [energy(3010), energy(3400)], kept: []}, solve)
    // 857 g of 1,000 g is a change of 0.143; 968 g meet the second, a change of 0.032.
    expect(found.change).toBeCloseTo(0.143, 9)
    expect(found.rows.map(({changeWithout}) => changeWithout?.toFixed(3))).toEqual([
      '0.032',
      '0.143',
    ])
  })

  test('an amount that is no whole step may stay, or becomes whole', () => {
    const lines = [{name: 'garlic', grams: 9, low: 4.5, high: 18, step: 5}]
    const atMost = (bound: number): FitRow => ({
      text: 'at most',
      perGram: [1],
      fixed: 0,
      sense: '<=',
      bound,
      scale: 10,
    })
    expect(fitted({lines, rows: [atMost(9)], kept: []}, solve).grams).toEqual([9])
    expect(fitted({lines, rows: [atMost(8)], kept: []}, solve).grams).toEqual([5])
  })
})

describe('every recipe of the demo cookbook', () => {
  test('loses 2 % of its energy, within a gram of the optimum', async () => {
    const folder = fileURLToPath(new URL('../../content', import.meta.url))
    const {computed, cookbook} = examine(await readCookbook(folder))
    expect(computed.size).toBeGreaterThan(20)
    for (const [slug, one] of computed) {
      const now = (one.perServing ?? one.batch).energy.value
      const target = parseTarget(`energy <= ${(now * 0.98).toFixed(2)} kcal`)
      if (!target.ok) throw new Error(target.expected)
      const read = recipeProblem(
        one,
        {targets: [target.value], change: [], keep: [], between: [], keepRatio: [], step: 1},
        cookbook.settings,
      )
      if (!read.ok) throw new Error(`${slug}: ${read.expected}`)
      const {problem} = read.value
      const found = fitted(problem, solve)
      const [row] = problem.rows
      if (row === undefined) throw new Error('No row')
      expect(rowValue(row, found.grams), slug).toBeLessThanOrEqual(row.bound + 1e-6)
      const optimum = freely(problem, row)
      expect(found.change, slug).toBeGreaterThanOrEqual(optimum.change - 1e-6)
      expect(found.change, slug).toBeLessThanOrEqual(optimum.change + 1 / optimum.grams)
    }
  })
})

/**
 * The optimum without whole grams, for one target at most: the lines that bring most are cut first,
 * for a share of any line costs the same (the fractional knapsack, by greed).
 */
function freely(
  {lines}: FitProblem,
  row: FitRow,
): {readonly change: number; readonly grams: number} {
  const brought = lines.map((line, index) => ({
    line,
    brings: line.grams * (row.perGram[index] ?? 0),
  }))
  let over =
    rowValue(
      row,
      lines.map(({grams}) => grams),
    ) - row.bound
  let change = 0
  for (const {line, brings} of brought.toSorted((left, right) => right.brings - left.brings)) {
    const most = 1 - line.low / line.grams
    const share = Math.min(most, over / brings)
    change += share
    over -= share * brings
    if (over <= 1e-9) return {change, grams: line.grams}
  }
  throw new Error('No amounts do')
}
