import {fileURLToPath} from 'node:url'
import {beforeAll, describe, expect, test} from 'vitest'
import type {Cookbook} from '../../src/cookbook/cookbook.ts'
import type {Located} from '../../src/cookbook/problem.ts'
import {readFolder} from '../../src/cookbook/read-folder.ts'
import type {IngredientLine, Recipe} from '../../src/cookbook/recipe.ts'
import {understandCookbook} from '../../src/cookbook/understand.ts'
import {figuresOf} from '../../src/food/figures.ts'
import type {Food} from '../../src/food/food.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import type {Amount, CountAmount, Measured, WeightAmount} from '../../src/units/amount.ts'
import type {Source, Uncertain} from '../../src/units/uncertain.ts'
import {seededRandom} from '../seeded-random.ts'

// JCGM 101:2008 (Supplement 1 to the GUM): draw every input from its distribution, run the whole
// model on each draw, and the spread of the results is their standard uncertainty. Where the model is
// nearly linear it agrees with the propagated figure (JCGM 100:2008, 5.1.2). Each draw computes the
// demo cookbook again from weights and figures without any uncertainty, so that nothing of the
// propagation is used on this side.

const content = fileURLToPath(new URL('../../content', import.meta.url))
const draws = 800
const random = seededRandom(20_240_611)
const nutrients = ['energy', 'protein', 'fat', 'availableCarbohydrate'] as const

/** From −½ to ½ with equal chance. */
function unit(): number {
  return random() - 0.5
}

/** A reading is anywhere in the step of the scale, the finer digit written, or the range given. */
function drawnMeasured({value, halfRange, increment}: Measured, scaleGrams: number): Measured {
  const width = Math.max(2 * halfRange, Math.min(scaleGrams, increment))
  return {value: value + width * unit(), halfRange: 0, increment: 0}
}

function drawnWeight(amount: Located<WeightAmount>, scaleGrams: number): Located<WeightAmount> {
  const grams = drawnMeasured(amount.value.grams, scaleGrams)
  return {...amount, value: {...amount.value, grams}}
}

/** Pieces called alike differ by a fifth; counts and weights are all the demo uses. */
const pieceWidthRatio = 0.2

function drawnCount(amount: CountAmount): CountAmount {
  const value = amount.count.value * (1 + pieceWidthRatio * unit())
  return {...amount, count: {value, halfRange: 0, increment: 0}}
}

function drawnAmount(amount: Amount, scaleGrams: number): Amount {
  switch (amount.kind) {
    case 'weight':
      return {...amount, grams: drawnMeasured(amount.grams, scaleGrams)}
    case 'count':
      return drawnCount(amount)
    case 'batch':
      return amount
    case 'volume':
      throw new Error(`No way to draw ${amount.text}`)
  }
}

function drawnLine(line: IngredientLine, scaleGrams: number): IngredientLine {
  const {amount, eaten, pouredOff, trimmed} = line
  return {
    ...line,
    amount: {...amount, value: drawnAmount(amount.value, scaleGrams)},
    ...(eaten && {eaten: {...eaten, amount: drawnWeight(eaten.amount, scaleGrams)}}),
    ...(pouredOff?.kind === 'weighed' && {
      pouredOff: {...pouredOff, amount: drawnWeight(pouredOff.amount, scaleGrams)},
    }),
    ...(trimmed && {trimmed: drawnWeight(trimmed, scaleGrams)}),
    instead: [],
  }
}

function drawnRecipe(recipe: Recipe, scaleGrams: number): Recipe {
  const {batch, leftBehind, groups} = recipe
  return {
    ...recipe,
    ...(batch && {batch: drawnWeight(batch, scaleGrams)}),
    ...(leftBehind && {leftBehind: drawnWeight(leftBehind, scaleGrams)}),
    groups: groups.map((group) => ({
      ...group,
      lines: group.lines.map((line) => drawnLine(line, scaleGrams)),
    })),
  }
}

/** The same foods with each printed figure drawn once for the whole cookbook. */
function drawnFoods(foods: Cookbook['foods']): Cookbook['foods'] {
  const units = new Map<Source, number>()
  const drawn = new Map<string, Food>()
  const drawOf = (source: Source): number => {
    const known = units.get(source) ?? unit()
    units.set(source, known)
    return known
  }
  const drawFood = (food: Food): Food => {
    const per100g = figuresOf<'100 g'>((nutrient) => {
      const {value, parts, missing} = food.per100g[nutrient]
      let shift = 0
      for (const [source, part] of parts) shift += part * Math.sqrt(12) * drawOf(source)
      return {value: value + shift, parts: new Map(), missing}
    })
    return {...food, per100g}
  }
  return {
    ...foods,
    lookUp(name) {
      const food = foods.lookUp(name)
      if (food === undefined) return undefined
      const again = drawn.get(food.id) ?? drawFood(food)
      drawn.set(food.id, again)
      return again
    },
  }
}

function drawnCookbook(cookbook: Cookbook): Cookbook {
  const {scaleGrams} = cookbook.settings
  return {
    ...cookbook,
    foods: drawnFoods(cookbook.foods),
    recipes: new Map(
      [...cookbook.recipes].map(([slug, recipe]) => [slug, drawnRecipe(recipe, scaleGrams)]),
    ),
  }
}

/** Retention factors are no input of the cookbook: they stay as printed, and so does their part. */
function propagated(figure: Uncertain): number {
  let variance = 0
  for (const [{kind}, part] of figure.parts) if (kind !== 'loss') variance += part ** 2
  return Math.sqrt(variance)
}

interface Spread {
  readonly name: string
  readonly value: number
  readonly propagated: number
  readonly mean: number
  readonly deviation: number
}

/** Figures of a recipe by name: of the batch, and of 100 g where the batch was weighed. */
function figuresShown({batch, per100g}: Computed): ReadonlyMap<string, Uncertain> {
  const shown = new Map<string, Uncertain>()
  for (const nutrient of nutrients) {
    shown.set(nutrient, batch[nutrient])
    if (per100g) shown.set(`${nutrient} of 100 g`, per100g[nutrient])
  }
  return shown
}

/** The cookbook weighed on a scale that tells a twentieth: weights then matter more than figures. */
function weighedCoarsely(cookbook: Cookbook): Cookbook {
  const coarse = (amount: WeightAmount): WeightAmount => ({
    ...amount,
    grams: {...amount.grams, increment: amount.grams.value / 20},
  })
  const recipes = [...cookbook.recipes].map(([slug, recipe]): [string, Recipe] => [
    slug,
    {
      ...recipe,
      ...(recipe.batch && {batch: {...recipe.batch, value: coarse(recipe.batch.value)}}),
      groups: recipe.groups.map(({lines, ...group}) => ({
        ...group,
        lines: lines.map((line) => {
          const {value} = line.amount
          return value.kind === 'weight'
            ? {...line, amount: {...line.amount, value: coarse(value)}}
            : line
        }),
      })),
    },
  ])
  const settings = {...cookbook.settings, scaleGrams: 1e6}
  return {...cookbook, settings, recipes: new Map(recipes)}
}

function spreads(cookbook: Cookbook): readonly Spread[] {
  const {computed} = computeCookbook(cookbook)
  const sums = new Map<string, {readonly figure: Uncertain; sum: number; squares: number}>()
  for (const [slug, one] of computed) {
    for (const [name, figure] of figuresShown(one)) {
      sums.set(`${slug} ${name}`, {figure, sum: 0, squares: 0})
    }
  }
  for (let draw = 0; draw < draws; draw++) {
    for (const [slug, one] of computeCookbook(drawnCookbook(cookbook)).computed) {
      for (const [name, {value}] of figuresShown(one)) {
        const entry = sums.get(`${slug} ${name}`)
        if (entry === undefined) throw new Error(`not in the cookbook: ${slug}`)
        entry.sum += value - entry.figure.value
        entry.squares += (value - entry.figure.value) ** 2
      }
    }
  }
  return [...sums].map(([name, {figure, sum, squares}]) => ({
    name,
    value: figure.value,
    propagated: propagated(figure),
    mean: figure.value + sum / draws,
    deviation: Math.sqrt((squares - sum ** 2 / draws) / (draws - 1)),
  }))
}

/**
 * How far off one of about a thousand comparisons may be. At 4 standard errors one in 16 of such
 * tests would fail with nothing wrong, whenever a food or a recipe changes the draws; figures that
 * share the food fail together. At 5 it is one in 1,700.
 */
const standardErrors = 5

const ways: readonly (readonly [string, (cookbook: Cookbook) => Cookbook])[] = [
  ['as it stands', (cookbook) => cookbook],
  ['weighed to a twentieth', weighedCoarsely],
]

describe.each(ways)('The ± of the demo cookbook, %s, against a seeded Monte Carlo', (_, change) => {
  let found: readonly Spread[] = []

  beforeAll(async () => {
    const {cookbook} = understandCookbook((await readFolder(content)).sources)
    found = spreads(change(cookbook))
    // Hundreds of cookbooks take some seconds, and more on a busy machine.
  }, 120_000)

  test('covers every recipe and figure', () => {
    expect(found.length).toBeGreaterThan(100)
    for (const {name, propagated} of found) expect(propagated, name).toBeGreaterThan(0)
  })

  // The deviation of n draws of a normal quantity is itself uncertain by 1/√(2n), 2.5 % for 800.
  test('the deviation of the draws is the propagated standard uncertainty', () => {
    const allowedRatio = standardErrors / Math.sqrt(2 * draws)
    const off = found.filter(
      ({propagated, deviation}) => !(Math.abs(deviation / propagated - 1) <= allowedRatio),
    )
    expect(off).toEqual([])
  })

  test('together they show no lean to either side', () => {
    // The mean of the ratios; they share foods, so it is held to one ratio's 1/√(2n).
    const ratios = found.map(({propagated, deviation}) => deviation / propagated)
    const mean = ratios.reduce((total, ratio) => total + ratio, 0) / ratios.length
    expect(Math.abs(mean - 1)).toBeLessThan(1 / Math.sqrt(2 * draws))
  })

  test('the mean of the draws is the computed figure', () => {
    const off = found.filter(
      ({value, mean, propagated}) =>
        !(Math.abs(mean - value) <= (standardErrors * propagated) / Math.sqrt(draws)),
    )
    expect(off).toEqual([])
  })
})
