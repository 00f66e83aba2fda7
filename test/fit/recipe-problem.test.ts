import {describe, expect, test} from 'vitest'
import {examine} from '../../src/build.ts'
import {rowValue} from '../../src/fit/fit-problem.ts'
import {type FitWishes, recipeProblem} from '../../src/fit/recipe-problem.ts'
import {parseTarget} from '../../src/fit/target.ts'
import {kitchen} from '../preview/kitchen.ts'

function stew(rice: number, oil: number): string {
  return `---
title: Stew
serves: 3
yield: 900 g
left behind: 60 g
ingredients:
  white rice: ${rice} g
  carrot: { amount: 300 g, bought: true }
  olive oil: ${oil} g
  salt: 6 g (1 tsp)
  parsley: { amount: 10 g, optional: true }
---

Cook.
`
}

function wishes(...targets: readonly string[]): FitWishes {
  return {
    targets: targets.map((text) => {
      const read = parseTarget(text)
      if (!read.ok) throw new Error(read.expected)
      return read.value
    }),
    change: [],
    keep: [],
    between: [],
    keepRatio: [],
    step: 1,
  }
}

function problemOf(text: string, wish: FitWishes) {
  const {computed, cookbook, problems} = examine(kitchen({stew: text}))
  const one = computed.get('stew')
  if (one === undefined) throw new Error(problems.map(({reason}) => reason).join('\n'))
  const read = recipeProblem(one, wish, cookbook.settings)
  if (!read.ok) throw new Error(read.expected)
  return {computed: one, problem: read.value.problem}
}

describe('the numbers of a fit', () => {
  test.each(['energy <= 500 kcal', 'protein >= 20 % of energy', 'fibre >= 3 g per 100 kcal'])(
    'foretell what the recipe gives with other amounts: %s',
    (target) => {
      const before = problemOf(stew(200, 20), wishes(target))
      const after = problemOf(stew(250, 11), wishes(target))
      const grams = after.problem.lines.map((line) => line.grams)
      const [foretold, given] = [before, after].map(({problem: {rows}}) =>
        rows.map((row) => rowValue(row, grams)),
      )
      expect(foretold?.[0]).toBeCloseTo(given?.[0] ?? Number.NaN, 6)
    },
  )

  test('are those of a serving', () => {
    const {computed, problem} = problemOf(stew(200, 20), wishes('energy <= 500 kcal'))
    const [row] = problem.rows
    const now =
      row &&
      rowValue(
        row,
        problem.lines.map((line) => line.grams),
      )
    expect(now).toBeCloseTo(computed.perServing?.energy.value ?? Number.NaN, 9)
  })

  test('leave out lines whose weight stands beside a measure, and those nobody counts', () => {
    const {problem} = problemOf(stew(200, 20), wishes('energy <= 500 kcal'))
    expect(problem.lines.map(({name}) => name)).toEqual(['white rice', 'carrot', 'olive oil'])
    expect(problem.lines[0]).toEqual({name: 'white rice', grams: 200, low: 100, high: 400, step: 1})
  })
})
