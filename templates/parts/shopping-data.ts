import type {ShoppingData} from '../../src/shopping/shopping-data.ts'
import type {Wanted} from '../../src/shopping/shopping-list.ts'
import {partCount} from '../../src/shopping/shopping-parts.ts'
import type {Site} from '../site.ts'
import type {Words} from '../words/en.ts'
import {type Indexed, indexed} from './indexed.ts'
import {plainWords} from './plain-words.ts'
import {listWords} from './shopping-list.tsx'
import type {ListWords} from './shopping-text.ts'

/** What the script of the shopping list works with; made by the same build, so that it is trusted. */
export interface ShoppingPageData {
  readonly recipes: RecipeSource
  /** In the order of their buttons. */
  readonly plans: readonly {readonly wanted: readonly Wanted[]}[]
  readonly words: ListWords & Words['shopping']['script']
}

/** Where a recipe's foods are told. */
export type RecipeSource =
  | {readonly kind: 'page'; readonly shopping: ShoppingData}
  /** In so many files; which one, the slug says. */
  | {readonly kind: 'parts'; readonly count: number}

/** Recipes by name, for a reader who looks for one; each list has an entry a recipe. */
export interface ShoppingNames {
  readonly slugs: readonly string[]
  readonly titles: readonly string[]
  /** Null for a component: it is asked for by the batch. */
  readonly serves: readonly (number | null)[]
  readonly words: Indexed
}

/** So many recipes have a field each on the page; the project's choice. */
const mostFields = 200

/** Whether there are too many recipes for one page to hold the data of all. */
export function isInParts({recipes}: ShoppingData): boolean {
  return recipes.length > mostFields
}

export function shoppingPageData(site: Site): ShoppingPageData {
  const {shopping, cookbook, words} = site
  return {
    recipes: isInParts(shopping)
      ? {kind: 'parts', count: partCount(shopping.recipes.length)}
      : {kind: 'page', shopping},
    plans: cookbook.plans.map(({servings}) => ({
      wanted: servings.map(({recipe, servings}) => ({slug: recipe.value, servings})),
    })),
    words: {...listWords(site), ...words.shopping.script},
  }
}

export function shoppingNames({recipes}: ShoppingData): ShoppingNames {
  return {
    slugs: recipes.map(({slug}) => slug),
    titles: recipes.map(({title}) => title),
    serves: recipes.map(({serves}) => serves ?? null),
    words: indexed(recipes.map(({title}) => plainWords(title))),
  }
}
