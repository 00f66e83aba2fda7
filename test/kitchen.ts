/** Typed-in recipes, foods and cookbooks for tests that need no file. */
import type {Position} from 'unist'
import type {Cookbook, Settings} from '../src/cookbook/cookbook.ts'
import type {Located} from '../src/cookbook/problem.ts'
import type {IngredientLine, Recipe} from '../src/cookbook/recipe.ts'
import {figuresOf, known, unknown} from '../src/food/figures.ts'
import type {Food} from '../src/food/food.ts'
import type {FoodIndex} from '../src/food/food-index.ts'
import {type Nutrient, saltGramsPerSodiumMilligram} from '../src/food/nutrients.ts'
import type {WeightAmount} from '../src/units/amount.ts'
import {rectangular, scaled} from '../src/units/uncertain.ts'

export const nowhere: Position = {
  start: {line: 1, column: 1, offset: 0},
  end: {line: 1, column: 1, offset: 0},
}

export function at<T>(value: T): Located<T> {
  return {value, place: nowhere}
}

export const settings: Settings = {
  title: 'Test kitchen',
  description: '',
  language: 'en',
  currency: 'EUR',
  scaleGrams: 1,
  rules: 'us',
  carbohydrate: 'total',
  tolerance: 'household',
  tolerances: new Map(),
  cups: 'us',
  severities: new Map(),
  checks: [],
  print: {paper: 'A4', cards: 'A6'},
}

/** A weight written to the gram. */
export function grams(value: number, increment = 1): WeightAmount {
  return {kind: 'weight', text: `${value} g`, grams: {value, halfRange: 0, increment}}
}

/** A food with the figures given, per 100 g, each printed to `increment`; the others unknown. */
export function food(
  name: string,
  figures: Partial<Record<Nutrient, number>>,
  more: Partial<Food> & {readonly increment?: number} = {},
): Food {
  const {increment = 0.01, ...rest} = more
  const sodium = figures.sodium
  const sodiumSource = {kind: 'table', subject: `sodium of ${name}`} as const
  return {
    id: `test/${name}`,
    name,
    also: [],
    aisle: 'other',
    from: ['plant'],
    traits: new Set(),
    contains: new Set(),
    mayContain: new Set(),
    allergensKnown: true,
    refuseRatio: 0,
    measures: new Map(),
    provenance: {kind: 'table', table: 'test', row: name},
    per100g: figuresOf((nutrient) => {
      if (nutrient === 'salt' && sodium !== undefined) {
        return known(
          scaled(rectangular(sodium, increment, sodiumSource), saltGramsPerSodiumMilligram),
        )
      }
      const value = figures[nutrient]
      if (value === undefined) return unknown(name)
      const source =
        nutrient === 'sodium'
          ? sodiumSource
          : ({kind: 'table', subject: `${nutrient} of ${name}`} as const)
      return known(rectangular(value, increment, source))
    }),
    ...rest,
  }
}

/** One counted line of a food or, with `recipe`, of a component. */
export function line(
  name: string,
  amount: number | IngredientLine['amount']['value'],
  more: Partial<IngredientLine> = {},
): IngredientLine {
  return {
    name: at(name),
    anchor: name.replaceAll(' ', '-'),
    amount: at(typeof amount === 'number' ? grams(amount) : amount),
    isBought: false,
    isOptional: false,
    instead: [],
    ...more,
  }
}

export function recipe(
  slug: string,
  lines: readonly IngredientLine[],
  more: Partial<Recipe> = {},
): Recipe {
  return {
    slug,
    path: `recipes/${slug}.md`,
    title: at(slug),
    tags: [],
    groups: [{lines}],
    claims: [],
    freeFrom: [],
    suits: [],
    accepted: [],
    frontMatter: nowhere,
    frontMatterEnd: nowhere,
    method: {
      body: {type: 'root', children: []},
      ingredientLinks: [],
      passages: [],
      images: [],
      links: [],
    },
    ...more,
  }
}

export function foodIndex(foods: readonly Food[]): FoodIndex {
  return {
    own: [],
    lookUp: (name) => foods.find((each) => each.name === name || each.id === name),
    nearest: () => [],
    isRefused: () => false,
    all: () => foods,
  }
}

export function cookbook(
  foods: readonly Food[],
  recipes: readonly Recipe[],
  more: Partial<Settings> = {},
): Cookbook {
  return {
    settings: {...settings, ...more},
    foods: foodIndex(foods),
    recipes: new Map(recipes.map((each) => [each.slug, each])),
    plans: [],
    pages: [],
    images: new Set(),
    refusedRecipes: new Set(),
  }
}
