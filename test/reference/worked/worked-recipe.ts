import {expect} from 'vitest'
import type {Cookbook} from '../../../src/cookbook/cookbook.ts'
import type {SourceText} from '../../../src/cookbook/sources.ts'
import {understandCookbook} from '../../../src/cookbook/understand.ts'
import type {Figures} from '../../../src/food/figures.ts'
import {computeCookbook} from '../../../src/nutrition/compute-cookbook.ts'
import type {Computed} from '../../../src/nutrition/computed.ts'
import {mainNutrients} from '../../../src/nutrition/published.ts'
import {sr28Rows} from './sr28-rows.ts'

type MainNutrient = (typeof mainNutrients)[number]

/** A recipe whose publisher gives its weights and the figures that came of them. */
export interface WorkedRecipe {
  /** Card, number, code or title in the publisher's list. */
  readonly row: string
  readonly title: string
  /**
   * What the figures are stated for: one of the servings, or 100 g of the finished weight, which is
   * given or is that of a cooked food of the table.
   */
  readonly finished:
    | {readonly servings: number}
    | {readonly grams: number}
    | {readonly yieldLike: string}
  readonly stated: Partial<Record<MainNutrient, number>>
  readonly ingredients: readonly WorkedLine[]
}

/**
 * `food` is `usda/<NDB number>` of the core table, `sr28/<NDB number>` of the table that comes with
 * the tests, or the row of another worked recipe, used by weight. `conditions` are keys of the line.
 */
type WorkedLine = readonly [amount: string, food: string, name: string, conditions?: string]

/** A worked recipe whose figures do not follow from its weights. */
export interface OffRecipe extends WorkedRecipe {
  /**
   * How far the sum over the release's rows lies from each figure that it does not agree with, in
   * percent of the figure: worked out by hand (a spreadsheet's sum), not by this program.
   */
  readonly gapPercent: Partial<Record<MainNutrient, number>>
  readonly because: string
}

/**
 * Writes the recipes as a writer would, and takes them the whole way from text to figures.
 * @returns what was computed, by row
 */
export function computeWorked(recipes: readonly WorkedRecipe[]): ReadonlyMap<string, Computed> {
  const texts: readonly SourceText[] = [
    // A commercial kitchen's scale; it changes no figure, only how well each is known.
    {path: 'cookbook.yaml', text: 'title: Worked recipes\nscale: 1 g\ncups: us\n'},
    {path: 'tables/sr28.tsv', text: sr28Rows},
    ...recipes.map((recipe) => ({path: `recipes/${slugOf(recipe.row)}.md`, text: written(recipe)})),
  ]
  const {cookbook, problems} = understandCookbook({texts, images: []})
  expect(problems).toEqual([])
  return computeEvery(recipes, cookbook)
}

function computeEvery(
  recipes: readonly WorkedRecipe[],
  cookbook: Cookbook,
): ReadonlyMap<string, Computed> {
  const {computed, problems} = computeCookbook(cookbook)
  expect(problems).toEqual([])
  return new Map(
    recipes.map(({row}) => {
      const one = computed.get(slugOf(row))
      if (one === undefined) throw new Error(`not computed: ${row}`)
      return [row, one]
    }),
  )
}

function slugOf(row: string): string {
  return `row-${row.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-')}`
}

function written({title, finished, ingredients}: WorkedRecipe): string {
  const lines = ingredients.map(([amount, food, name, conditions], index) => {
    const what = food.includes('/') ? `food: ${food}` : `recipe: ${slugOf(food)}`
    const more = conditions === undefined ? '' : `, ${conditions}`
    // Cards list water twice: a number keeps the names apart.
    return `  ${JSON.stringify(`${index + 1} ${name}`)}: { amount: ${amount}, ${what}${more} }`
  })
  return [
    '---',
    `title: ${JSON.stringify(title)}`,
    finishedKey(finished),
    'ingredients:',
    ...lines,
    '---',
    '',
  ].join('\n')
}

function finishedKey(finished: WorkedRecipe['finished']): string {
  if ('servings' in finished) return `serves: ${finished.servings}`
  return 'grams' in finished
    ? `yield: ${finished.grams} g`
    : `serves: 1\nyield factor: ${finished.yieldLike}`
}

/** One figure as the publisher prints it and as it was computed, on the publisher's basis. */
export interface Pair {
  readonly nutrient: MainNutrient
  readonly stated: number
  readonly computed: number
}

export function pairsOf(recipe: WorkedRecipe, computed: Computed): readonly Pair[] {
  const figures: Figures<'serving'> | Figures<'100 g'> | undefined =
    'servings' in recipe.finished ? computed.perServing : computed.per100g
  if (figures === undefined) throw new Error(`no figures on the stated basis: ${recipe.row}`)
  return mainNutrients.flatMap((nutrient) => {
    const stated = recipe.stated[nutrient]
    const {value, missing} = figures[nutrient]
    expect([...missing], recipe.row).toEqual([])
    return stated === undefined ? [] : [{nutrient, stated, computed: value}]
  })
}
