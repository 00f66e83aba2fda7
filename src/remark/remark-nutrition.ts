import type {Root} from 'mdast'
import type {VFile} from 'vfile'
import type {Problem} from '../cookbook/problem.ts'
import type {Recipe} from '../cookbook/recipe.ts'
import {computeCookbook, computeRecipes} from '../nutrition/compute-cookbook.ts'
import type {Computed} from '../nutrition/computed.ts'
import './data-map.ts'
import {cookbookWith, withComponents} from './cookbook-with.ts'
import type {CookbookOptions} from './remark-recipe.ts'
import {stamp} from './stamp.ts'

/**
 * Computes the recipe of a file: batch, serving and 100 g become `file.data.computed`. Comes after
 * `remarkRecipe`. The file's own recipe stands for the one of its slug in the cookbook; components
 * come from there.
 */
export function remarkNutrition({cookbook}: CookbookOptions) {
  const {address} = cookbook.settings
  let others: ReadonlyMap<string, Computed> | undefined
  return (_: Root, file: VFile): undefined => {
    const {recipe} = file.data
    if (!recipe) return
    others ??= computeCookbook(cookbook).computed
    const mine = cookbookWith(cookbook, recipe)
    const {computed, problems} = computeRecipes(withComponents(recipe, mine.recipes), mine)
    const result = computed.get(recipe.slug)
    if (result) file.data.computed = result
    for (const problem of result ? ofFile(recipe.path, problems) : whyNot(recipe, problems)) {
      stamp(file, problem, address)
    }
    file.data.computedRecipes = new Map([...others, ...computed])
  }
}

/** Why a recipe could not be computed; what is wrong in a component is the reason here, too. */
function whyNot(recipe: Recipe, problems: readonly Problem[]): readonly Problem[] {
  if (problems.length > 0) {
    return problems.map((problem) => (problem.file === recipe.path ? problem : elsewhere(problem)))
  }
  // A food or a component that could not be understood was told when the cookbook was read.
  return [
    {
      ruleId: 'recipe-computed',
      severity: 'error',
      file: recipe.path,
      place: recipe.frontMatter,
      reason: `Recipe \`${recipe.slug}\` cannot be computed, expected a cookbook without errors in what it uses`,
      note: 'Check the whole cookbook: the food or the component has an error of its own.',
    },
  ]
}

function ofFile(path: string, problems: readonly Problem[]): readonly Problem[] {
  return problems.filter(({file}) => file === path)
}

/** A problem in another file: its place means nothing here, so its file is named. */
function elsewhere({place: _, file, reason, ...problem}: Problem): Problem {
  return {...problem, file, reason: `In \`${file}\`: ${reason}`}
}
