import type {ShoppingData} from '../../src/shopping/shopping-data.ts'
import type {Wanted} from '../../src/shopping/shopping-list.ts'
import type {Site} from '../site.ts'
import type {Words} from '../words/en.ts'
import {listWords} from './shopping-list.tsx'
import type {ListWords} from './shopping-text.ts'

/** What the script of the shopping list works with; made by the same build, so that it is trusted. */
export interface ShoppingPageData {
  readonly shopping: ShoppingData
  /** In the order of their buttons. */
  readonly plans: readonly {readonly wanted: readonly Wanted[]}[]
  readonly words: ListWords & Words['shopping']['script']
}

export function shoppingPageData(site: Site): ShoppingPageData {
  const {shopping, cookbook, words} = site
  return {
    shopping,
    plans: cookbook.plans.map(({servings}) => ({
      wanted: servings.map(({recipe, servings}) => ({slug: recipe.value, servings})),
    })),
    words: {...listWords(site), ...words.shopping.script},
  }
}
