import type {ShoppingData} from '../../../src/shopping/shopping-data.ts'
import {joinedParts, partOfSlug} from '../../../src/shopping/shopping-parts.ts'
import {shoppingPartPath} from '../../addresses.ts'
import type {RecipeSource} from '../../parts/shopping-data.ts'
import {loadData} from '../page/load-data.ts'

/** What the page knows of the recipes so far. */
export interface Recipes {
  /** Of the recipes that were fetched, or of all. */
  readonly data: () => ShoppingData
  /** Whether nothing has to be fetched to sum this recipe. */
  readonly isThere: (slug: string) => boolean
  /** Fetches what is not there; rejects where that cannot be. */
  readonly fetch: (slug: string) => Promise<void>
}

/** Way from the page to the site's folder. */
export const siteRoot = '../'

export function recipesFrom(source: RecipeSource): Recipes {
  return source.kind === 'page' ? inPage(source.shopping) : inParts(source.count)
}

function inPage(shopping: ShoppingData): Recipes {
  return {data: () => shopping, isThere: () => true, fetch: async () => undefined}
}

function inParts(count: number): Recipes {
  const parts = new Map<number, ShoppingData>()
  return {
    data: () => joinedParts([...parts.values()]),
    isThere: (slug) => parts.has(partOfSlug(slug, count)),
    async fetch(slug) {
      const number = partOfSlug(slug, count)
      const part = await loadData(shoppingPartPath(number), siteRoot)
      if (!isShoppingData(part)) throw new Error(`Part ${number} holds no recipes`)
      parts.set(number, part)
    },
  }
}

function isShoppingData(data: unknown): data is ShoppingData {
  return typeof data === 'object' && data !== null && 'recipes' in data && 'foods' in data
}
