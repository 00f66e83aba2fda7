import type {Root} from 'mdast'
import type {VFile} from 'vfile'
import {checkRecipe} from '../check/check-cookbook.ts'
import './data-map.ts'
import {cookbookWith} from './cookbook-with.ts'
import type {CookbookOptions} from './remark-recipe.ts'
import {stamp} from './stamp.ts'

/**
 * Checks the recipe of a file by every rule about recipes: what they find becomes messages. Comes
 * after `remarkNutrition`; a recipe that could not be computed is not checked.
 */
export function remarkChecks({cookbook}: CookbookOptions) {
  return (_: Root, file: VFile): undefined => {
    const {computed, computedRecipes} = file.data
    if (!computed || !computedRecipes) return
    const mine = cookbookWith(cookbook, computed.recipe)
    for (const problem of checkRecipe(computed, mine, computedRecipes)) {
      if (problem.file === computed.recipe.path) stamp(file, problem, cookbook.settings.address)
    }
  }
}
