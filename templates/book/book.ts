import type {Computed} from '../../src/nutrition/computed.ts'
import {cookbookPath, recipePath, textPagePath} from '../addresses.ts'
import type {Site} from '../site.ts'

/** The page of the printed book on which an id stands; undefined before anybody has printed it. */
export type PageOf = (id: string) => string | undefined

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
  readonly pageOf: PageOf
}

export function bookOf(site: Site, pageOf: PageOf): Book {
  const {pages} = site.cookbook
  return {
    site,
    sections: sectionsOf(site),
    places: new Map([
      [cookbookPath, 'cover'],
      ...[...site.computed.values()].map((one) => [recipePath(slug(one)), recipeId(one)] as const),
      ...pages.map((page) => [textPagePath(page.slug), textId(page.slug)] as const),
    ]),
    pageOf,
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
 * The sections: one for each tag that some recipe names first, in the order of the alphabet; what
 * is made for other recipes comes last.
 */
function sectionsOf({computed, words}: Site): readonly BookSection[] {
  const recipes = [...computed.values()]
  const titles = new Set(recipes.filter(isDish).map(sectionTitle(words.book.untagged)))
  const dishes = [...titles].sort().map((title) => ({
    title,
    recipes: recipes.filter(
      (one) => isDish(one) && sectionTitle(words.book.untagged)(one) === title,
    ),
  }))
  const components = {
    title: words.index.components,
    recipes: recipes.filter((one) => !isDish(one)),
  }
  return [...dishes, components]
    .filter((section) => section.recipes.length > 0)
    .map((section, index) => ({...section, id: `section-${index + 1}`}))
}

function isDish({recipe}: Computed): boolean {
  return recipe.serves !== undefined
}

function sectionTitle(untagged: string): (computed: Computed) => string {
  return ({recipe}) => {
    const [tag] = recipe.tags
    return tag === undefined
      ? untagged
      : `${tag.value.slice(0, 1).toUpperCase()}${tag.value.slice(1)}`
  }
}
