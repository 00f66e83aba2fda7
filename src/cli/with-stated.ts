import {examine} from '../build.ts'
import {statedBlock} from '../check/rules/missing-stated.ts'
import type {SourceText} from '../cookbook/sources.ts'

/** Where the stated figures belong in a text that starts a recipe. */
export const statedPlace = '# stated figures\n'

/**
 * A starting text of a recipe with the figures its ingredients give in this cookbook, so that it
 * passes the checks whatever foods and rules the cookbook has.
 * @param others every other text of the cookbook
 */
export function withStated(recipe: SourceText, others: readonly SourceText[]): string {
  const texts = [...others, recipe]
  const {cookbook, computed} = examine({sources: {texts, images: []}, problems: []})
  const own = [...computed.values()].find((one) => one.recipe.path === recipe.path)
  const block = own && statedBlock(own, cookbook.settings)
  return recipe.text.replace(statedPlace, block === undefined ? '' : `${block}\n`)
}
