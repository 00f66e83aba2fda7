import type {Wanted} from '../../src/shopping/shopping-list.ts'

/** What a shopping list is summed from, and what was written below it by hand. */
export interface Asked {
  readonly wanted: readonly Wanted[]
  readonly own: readonly string[]
}

/** No recipe is called so: it names what was added by hand. */
const ownName = '+'

/** The list as the end of an address, so that the address can be kept or handed on; `` for none. */
export function listFragment(wanted: readonly Wanted[], own: readonly string[] = []): string {
  const entries = [
    ...wanted.map(({slug, servings}) => [slug, String(servings)]),
    ...own.map((name) => [ownName, name]),
  ]
  return entries.length === 0 ? '' : `#${new URLSearchParams(entries)}`
}

/** Reads such an address; what it does not understand it leaves out. */
export function askedBy(fragment: string): Asked {
  const entries = [...new URLSearchParams(fragment.replace(/^#/, ''))]
  return {
    wanted: entries
      .map(([slug, servings]) => ({slug, servings: Number(servings)}))
      .filter(({slug, servings}) => slug !== ownName && servings > 0 && Number.isFinite(servings)),
    own: entries.flatMap(([name, text]) => (name === ownName && text.trim() !== '' ? [text] : [])),
  }
}
