import type {Computed} from '../../src/nutrition/computed.ts'
import {cookbookPath, recipePath, textPagePath} from '../addresses.ts'
import type {Site} from '../site.ts'

/** What printing tells about the book. */
export interface Layout {
  /** The page on which an id stands; undefined before anybody has printed it. */
  readonly pageOf: (id: string) => string | undefined
  /** Whether a part is set closer, so that it ends on the page on which it begins. */
  readonly isClose: (id: string) => boolean
}

export const notYetPrinted: Layout = {pageOf: () => undefined, isClose: () => false}

/** Recipes that stand together in the book. */
export interface BookSection {
  readonly id: string
  readonly title: string
  readonly recipes: readonly Computed[]
}

/** What every part of the book sees. */
export interface Book {
  readonly site: Site
  readonly sections: readonly BookSection[]
  /** Ids in the book by the path of the page that each stands for. */
  readonly places: ReadonlyMap<string, string>
  readonly layout: Layout
}

export function bookOf(site: Site, layout: Layout): Book {
  const {pages} = site.cookbook
  return {
    site,
    sections: sectionsOf(site),
    places: new Map([
      [cookbookPath, 'cover'],
      ...[...site.computed.values()].map((one) => [recipePath(slug(one)), recipeId(one)] as const),
      ...pages.map((page) => [textPagePath(page.slug), textId(page.slug)] as const),
    ]),
    layout,
  }
}

/** No slug of a recipe meets the id of a text or of a part of the book. */
export function recipeId(computed: Computed): string {
  return `recipe-${slug(computed)}`
}

export function textId(slug: string): string {
  return `text-${slug}`
}

function slug({recipe}: Computed): string {
  return recipe.slug
}

/**
 * The sections. A dish stands in the first of the cookbook's sections whose tag it has, else in one
 * named after its first tag; those follow in the order of the alphabet. What is made for other
 * recipes comes last.
 */
function sectionsOf({computed, cookbook, words}: Site): readonly BookSection[] {
  const named = cookbook.settings.print.sections ?? []
  const dishes = new Map<string, Computed[]>(named.map((tag) => [tag, []]))
  const components: Computed[] = []
  for (const one of computed.values()) {
    const {serves, tags} = one.recipe
    const own = tags.map(({value}) => value)
    const tag = named.find((name) => own.includes(name)) ?? own[0] ?? words.book.untagged
    if (serves === undefined) components.push(one)
    else dishes.set(tag, [...(dishes.get(tag) ?? []), one])
  }
  const others = [...dishes.keys()].filter((tag) => !named.includes(tag)).sort()
  return [
    ...[...named, ...others].map((tag) => ({
      title: capitalised(tag),
      recipes: dishes.get(tag) ?? [],
    })),
    {title: words.index.components, recipes: components},
  ]
    .filter(({recipes}) => recipes.length > 0)
    .map((section, index) => ({...section, id: `section-${index + 1}`}))
}

function capitalised(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`
}
