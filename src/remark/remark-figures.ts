import type {Root} from 'mdast'
import type {VFile} from 'vfile'
import './data-map.ts'
import {figureList} from './figure-list.ts'
import type {CookbookOptions} from './remark-recipe.ts'
import {showAmounts} from './show-amounts.ts'

/**
 * Makes what was computed part of the Markdown: each link to an ingredient becomes its words with
 * the amount, and the figures follow at the end. Comes after `remarkNutrition`; changes the tree.
 */
export function remarkFigures({cookbook}: CookbookOptions) {
  return (root: Root, file: VFile): undefined => {
    const {recipe, computed} = file.data
    if (recipe) showAmounts(root, recipe)
    if (computed) root.children.push(...figureList(computed, cookbook.settings))
  }
}
