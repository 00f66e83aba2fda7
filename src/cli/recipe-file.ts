import path from 'node:path'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {Recipe} from '../cookbook/recipe.ts'
import type {Computed} from '../nutrition/computed.ts'
import {textMessages} from '../report/text-report.ts'
import {nearest} from '../units/nearest.ts'
import {paintFor} from './colour.ts'
import type {ExaminedFolder} from './examined-folder.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {tell} from './output.ts'
import type {SharedOptions} from './shared-options.ts'

/** The file that a slug, title or path means; a miss suggests, it never guesses. */
export function recipeFile(name: string, {read, examined, filePath}: ExaminedFolder): string {
  const files = read.sources.texts
    .map((source) => source.path)
    .filter((file) => file.startsWith('recipes/'))
  const slugs = files.map((file) => path.posix.basename(file, '.md'))
  const recipes = [...examined.cookbook.recipes.values()]
  const byPath = files.find((file) => path.resolve(filePath(file)) === path.resolve(name))
  const bySlug = files.find((file) => path.posix.basename(file, '.md') === name)
  const byTitle = recipes.find((recipe) => title(recipe) === name.toLowerCase())?.path
  const found = byPath ?? bySlug ?? byTitle
  if (found !== undefined) return filePath(found)
  const meant =
    nearest(name, [...slugs, ...recipes.map((recipe) => recipe.title.value)]) ??
    onlyOneWith(name, slugs)
  throw new EnvironmentFailure(
    `No recipe is called ${name}`,
    meant === undefined
      ? `There are ${files.length}; a recipe is called by its file, slug or title`
      : `Did you mean ${meant}?`,
  )
}

/** The slug that part of a name means: `barley` for `barley-pot`, where no other recipe has any. */
function onlyOneWith(part: string, slugs: readonly string[]): string | undefined {
  const [only, ...others] = slugs.filter((slug) => slug.includes(part.toLowerCase()))
  return others.length === 0 ? only : undefined
}

function title(recipe: Recipe): string {
  return recipe.title.value.toLowerCase()
}

/** The recipe of a file, computed; undefined where something in it has to be mended first. */
export function computedOf(
  file: string,
  {examined, filePath}: ExaminedFolder,
): Computed | undefined {
  return [...examined.computed.values()].find(({recipe}) => filePath(recipe.path) === file)
}

/** Tells what keeps a recipe from being computed. */
export function tellUncomputed(
  file: string,
  {messages}: ExaminedFolder,
  {color}: SharedOptions,
): ExitCode {
  const inFile = messages.filter((one) => one.file === file)
  for (const text of textMessages(inFile, paintFor('stderr', color))) tell(text)
  tell(`\nThe figures of ${file} cannot be computed until this is mended.\n`)
  return exitCodes.errorsFound
}
