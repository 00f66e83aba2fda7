import {readFolder} from '../cookbook/read-folder.ts'
import type {Food} from '../food/food.ts'
import {hundredsInDish, swapped, type Use, usedInDish} from '../nutrition/swap-food.ts'
import {swapsReport} from '../report/swap-report.ts'
import {swapsText} from '../report/swap-text.ts'
import {examinedFolder} from './examined-folder.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import type {LikeOptions} from './foods-like-command.ts'
import {nearestOfAll} from './nearest-of-all.ts'
import {print} from './output.ts'
import {computedOf, recipeFile, tellUncomputed} from './recipe-file.ts'
import {usedLines} from './used-lines.ts'

/**
 * Prints the foods that would change a recipe's macros least in the place of one it uses, by the
 * amount it uses, and what each would change.
 */
export async function foodsLikeInCommand(
  name: string,
  recipe: string,
  options: LikeOptions,
): Promise<ExitCode> {
  const {content, format, most, aisle} = options
  const folder = await examinedFolder(content, options, () => readFolder(content, [name]))
  const file = recipeFile(recipe, folder)
  const computed = computedOf(file, folder)
  if (computed === undefined) return tellUncomputed(file, folder, options)
  const {foods, settings} = folder.examined.cookbook
  const {scaleGrams} = settings
  const use = usedLines(name, computed, foods)
  const {title, food: own} = usedThing(use)
  const near = await nearestOfAll(usedInDish(use), {
    name,
    most,
    folder: options,
    foods,
    isWanted: (food) => food.id !== own?.id && (aisle === undefined || food.aisle === aisle),
    hundreds: (food) => hundredsInDish(use, scaleGrams, food),
  })
  const swaps = near.map(({food, distanceKcal}) => ({
    ...swapped(use, food, scaleGrams),
    distanceKcal,
  }))
  const report = swapsReport(title, use, swaps, settings)
  if (format === 'json') print(`${JSON.stringify(report, undefined, 2)}\n`)
  else for (const text of swapsText(report)) print(text)
  return exitCodes.fine
}

function usedThing({lines: [first]}: Use): {readonly title: string; readonly food?: Food} {
  if (first === undefined) throw new Error('No line is used')
  const {ingredient} = first
  return ingredient.kind === 'food'
    ? {title: ingredient.food.name, food: ingredient.food}
    : {title: ingredient.recipe.title.value}
}
