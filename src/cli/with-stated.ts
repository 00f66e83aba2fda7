import {examine} from '../build.ts'
import {statedBlock} from '../check/rules/missing-stated.ts'
import type {Problem} from '../cookbook/problem.ts'
import type {SourceText} from '../cookbook/sources.ts'

/** Where the stated figures belong in a text that starts a recipe. */
export const statedPlace = '# stated figures\n'

/** A starting recipe, and what its cookbook finds wrong with it: nothing, if the cookbook is sound. */
export interface StartedRecipe {
  readonly text: string
  readonly problems: readonly Problem[]
}

/**
 * A starting text of a recipe with the figures its ingredients give in this cookbook, so that it
 * passes the checks whatever foods and rules the cookbook has.
 * @param others every other text of the cookbook
 */
export function withStated(recipe: SourceText, others: readonly SourceText[]): StartedRecipe {
  const {cookbook, computed} = examineTexts([...others, recipe])
  const own = [...computed.values()].find((one) => one.recipe.path === recipe.path)
  const block = own && statedBlock(own, cookbook.settings)
  const text = recipe.text.replace(statedPlace, block === undefined ? '' : `${block}\n`)
  const {problems} = examineTexts([...others, {path: recipe.path, text}])
  return {text, problems: problems.filter(({file}) => file === recipe.path)}
}

function examineTexts(texts: readonly SourceText[]) {
  return examine({sources: {texts, images: []}, problems: []})
}
