import {describe, expect, test} from 'vitest'
import {examine} from '../../src/build.ts'
import {asWritten, rowValue} from '../../src/fit/fit-problem.ts'
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
    keepsYield: false,
    servings: [],
    step: 1,
  }
}

function problemOf(text: string, wish: FitWishes) {
  const {computed, cookbook, problems} = examine(kitchen({stew: text}))
  const one = computed.get('stew')
  if (one === undefined) throw new Error(problems.map(({reason}) => reason).join('\n'))
  const read = recipeProblem(one, wish, cookbook.settings)
  if (!read.ok) throw new Error(read.expected)
  return {computed: one, ...read.value}
}

describe('the numbers of a fit', () => {
  test.each([
    'energy <= 500 kcal',
    'protein >= 20 % of energy',
    'fibre >= 3 g per 100 kcal',
    'energy <= 120 kcal per 100 g',
    'protein / carbohydrate >= 1 : 4',
    'water >= 60 g per 100 g',
  ])('foretell what the recipe gives with other amounts: %s', (target) => {
    const before = problemOf(stew(200, 20), wishes(target))
    const after = problemOf(stew(250, 11), wishes(target))
    const grams = asWritten(after.problem)
    const [foretold, given] = [before, after].map(({problem: {rows}}) =>
      rows.map((row) => rowValue(row, grams)),
    )
    expect(foretold?.[0]).toBeCloseTo(given?.[0] ?? Number.NaN, 6)
    // The amounts matter: with those before, it is another figure.
    expect(given?.[0]).not.toBeCloseTo(
      before.problem.rows.map((row) => rowValue(row, asWritten(before.problem)))[0] ?? Number.NaN,
      3,
    )
  })

  test('are refused where what is left behind is another share of a larger batch', () => {
    const text = (rice: number, oil: number) =>
      stew(rice, oil).replace('yield: 900 g', 'yield factor: 0.8')
    for (const target of ['energy <= 500 kcal', 'fat <= 2 g per 100 g', 'water / protein >= 5']) {
      expect(() => problemOf(text(200, 20), wishes(target)), target).toThrow(
        `the weight of the finished batch under \`yield\`, for \`${target}\``,
      )
    }
    // Of two figures in proportion the share cancels.
    const wish = wishes('protein >= 20 % of energy')
    const [before, after] = [problemOf(text(200, 20), wish), problemOf(text(250, 11), wish)]
    const grams = asWritten(after.problem)
    const [foretold = 0, given] = [before, after].flatMap(({problem: {rows}}) =>
      rows.map((row) => rowValue(row, grams)),
    )
    expect(foretold).toBeCloseTo(given ?? Number.NaN, 6)
  })

  test('foretell it where the finished batch grows with what goes in', () => {
    const factored = (rice: number, oil: number) =>
      stew(rice, oil).replace('yield: 900 g\nleft behind: 60 g', 'yield factor: 0.8')
    for (const target of ['energy <= 120 kcal per 100 g', 'water >= 60 g per 100 g']) {
      const before = problemOf(factored(200, 20), wishes(target))
      const after = problemOf(factored(250, 11), wishes(target))
      const grams = asWritten(after.problem)
      const [foretold, given] = [before, after].map(
        ({
          problem: {
            rows: [row],
          },
        }) => row && rowValue(row, grams),
      )
      expect(foretold, target).toBeCloseTo(given ?? Number.NaN, 6)
    }
  })

  test('are those of a serving', () => {
    const {computed, problem} = problemOf(stew(200, 20), wishes('energy <= 500 kcal'))
    const [row] = problem.rows
    const now = row && rowValue(row, asWritten(problem))
    expect(now).toBeCloseTo(computed.perServing?.energy.value ?? Number.NaN, 9)
  })

  test('are those of 100 g', () => {
    const {computed, problem} = problemOf(stew(200, 20), wishes('energy <= 500 kcal per 100 g'))
    const [row] = problem.rows
    const now = row && rowValue(row, asWritten(problem))
    expect(now).toBeCloseTo(computed.per100g?.energy.value ?? Number.NaN, 9)
  })

  test('leave out lines that nobody counts', () => {
    const {problem} = problemOf(stew(200, 20), wishes('energy <= 500 kcal'))
    expect(problem.lines.map(({name}) => name)).toEqual([
      'white rice',
      'carrot',
      'olive oil',
      'salt',
    ])
    expect(problem.lines[0]).toEqual({
      name: 'white rice',
      grams: 200,
      amounts: {kind: 'steps', low: 100, high: 400, step: 1, mayStay: true},
    })
  })

  test('of a weight beside a measure are those of whole measures, and both numbers follow', () => {
    const text = stew(200, 20).replace('6 g (1 tsp)', '6 g (1 tsp)\n  garlic: 9 g (3 cloves)')
    const {lines} = problemOf(text, wishes('energy <= 500 kcal'))
    const [garlic, salt] = ['garlic', 'salt'].map((name) =>
      lines.find(({fitLine}) => fitLine.name === name),
    )
    expect(garlic?.fitLine.amounts).toEqual({kind: 'listed', grams: [6, 9, 12, 15, 18]})
    expect(garlic?.textOf(12, 1)).toBe('12 g (4 cloves)')
    expect(garlic?.textOf(9, 1)).toBe('9 g (3 cloves)')
    // Quarters of a teaspoon at 6 g each, to the gram that was written: 1.5 g is 2 g.
    expect(salt?.fitLine.amounts).toEqual({kind: 'listed', grams: [3, 5, 6, 8, 9, 11, 12]})
    expect(salt?.textOf(5, 1)).toBe('5 g (¾ tsp)')
    expect(salt?.textOf(12, 1)).toBe('12 g (2 tsp)')
  })

  test('for other servings are whole for them as well', () => {
    const wish = {...wishes('energy <= 500 kcal'), servings: [4, 6]}
    const text = stew(200, 20).replace('6 g (1 tsp)', '6 g (1 tsp)\n  garlic: 9 g (3 cloves)')
    const {lines, fixed} = problemOf(text, wish)
    // For 3, 4 and 6 a gram for each of the 3 is the least: amounts for 3 are multiples of 3 g.
    expect(lines[0]?.fitLine.amounts).toMatchObject({step: 3, mayStay: false})
    const garlic = lines.find(({fitLine}) => fitLine.name === 'garlic')
    expect(garlic?.fitLine.amounts).toEqual({kind: 'listed', grams: [9, 18]})
    expect(garlic?.textOf(9, 4 / 3)).toBe('12 g (4 cloves)')
    const few = problemOf(text.replace('olive oil: 20 g', 'olive oil: 1 g'), wish)
    expect(fixed).toEqual([])
    expect(few.fixed).toEqual([
      {name: 'olive oil', because: 'between 0.5 g and 2 g no amount is a whole number of `3 g`'},
    ])
  })

  test('hold the bounds a writer gives, though the amount as written is outside', () => {
    const between = [{name: 'white rice', low: 100, high: 150}]
    const {problem} = problemOf(stew(200, 20), {...wishes('energy <= 500 kcal'), between})
    expect(problem.lines[0]?.amounts).toMatchObject({low: 100, high: 150, mayStay: false})
  })

  test('keep what is mixed, to half a step', () => {
    const {problem, computed} = problemOf(stew(200, 20), {
      ...wishes('energy <= 500 kcal'),
      keepsYield: true,
    })
    const [atMost, atLeast] = problem.kept[0]?.rows ?? []
    const grams = asWritten(problem).map((each, index) => each + (index === 0 ? 10 : 0))
    const after = problemOf(stew(210, 20), wishes('energy <= 500 kcal')).computed
    const moved = after.mixedGrams.value - computed.mixedGrams.value
    expect(atMost && rowValue(atMost, grams)).toBeCloseTo(moved, 9)
    expect([atMost?.bound, atLeast?.bound]).toEqual([0.5, -0.5])
  })
})

describe('a line that cannot change says why', () => {
  test.each([
    ['salt: 1 tsp', '`1 tsp` has no weight beside it'],
    ['salt: 5-7 g', '`5-7 g` is a range'],
    ['salt: 1/4 oz', '`1/4 oz` is not written in grams'],
    ['salt: 6 g (0.2 oz)', '`6 g (0.2 oz)` has a second weight'],
    ['salt: { amount: 6 g, eaten: 2 g, because: drained }', 'the part eaten was weighed'],
    ['salt: { amount: 6 g, trimmed: 2 g }', 'what is cut off was weighed'],
  ])('%s', (line, because) => {
    const {fixed} = problemOf(
      stew(200, 20).replace('salt: 6 g (1 tsp)', line),
      wishes('energy <= 500 kcal'),
    )
    expect(fixed).toEqual([{name: 'salt', because}])
  })
})
