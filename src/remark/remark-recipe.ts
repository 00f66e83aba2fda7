import type {Root} from 'mdast'
import type {VFile} from 'vfile'
import type {Cookbook} from '../cookbook/cookbook.ts'
import {readParsedRecipe} from '../cookbook/read-recipe.ts'
import {recipeReader} from '../cookbook/recipe-fields.ts'
import {kitchenOf} from '../cookbook/understand.ts'
import {withoutByteOrderMark} from '../cookbook/yaml/yaml-source.ts'
import './data-map.ts'
import {stamp} from './stamp.ts'

/** The cookbook a plugin works with. */
export interface CookbookOptions {
  /** From `understandCookbook`: settings, foods and the other recipes. */
  readonly cookbook: Cookbook
}

/**
 * Reads the recipe in a Markdown file: front matter and method become `file.data.recipe`, and what
 * is wrong becomes messages. Comes after remark-parse and remark-frontmatter; leaves the tree as
 * it is. The file's name gives the slug, wherever the file stands.
 */
export function remarkRecipe({cookbook}: CookbookOptions) {
  const reader = recipeReader(kitchenOf(cookbook.settings, cookbook.foods))
  return (root: Root, file: VFile): undefined => {
    const source = {path: recipePathOf(file), text: withoutByteOrderMark(String(file))}
    const {recipe, problems} = readParsedRecipe({...source, root}, reader)
    for (const problem of problems) stamp(file, problem, cookbook.settings.address)
    if (recipe) file.data.recipe = recipe
  }
}

/** Where the file would stand in a cookbook: links in it are relative to there. */
function recipePathOf(file: VFile): string {
  return `recipes/${file.stem ?? 'recipe'}.md`
}
