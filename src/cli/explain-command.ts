import path from 'node:path'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import type {Recipe} from '../cookbook/recipe.ts'
import {explain} from '../report/explain.ts'
import {textExplanation} from '../report/text-explanation.ts'
import {textMessages} from '../report/text-report.ts'
import {nearest} from '../units/nearest.ts'
import {paintFor} from './colour.ts'
import {type ExaminedFolder, examinedFolder} from './examined-folder.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print, tell} from './output.ts'
import type {SharedOptions} from './shared-options.ts'

interface ExplainOptions extends SharedOptions {
  readonly content: string
  readonly format: 'text' | 'json'
}

/** Shows where a recipe's figures come from. */
export async function explainCommand(
  name: string,
  {content, format, color}: ExplainOptions,
): Promise<ExitCode> {
  const folder = await examinedFolder(content)
  const {examined, filePath, messages} = folder
  const file = recipeFile(name, folder)
  const computed = [...examined.computed.values()].find(
    ({recipe}) => filePath(recipe.path) === file,
  )
  if (computed === undefined) {
    const inFile = messages.filter((one) => one.file === file)
    for (const text of textMessages(inFile, paintFor('stderr', color))) tell(text)
    tell(`\nThe figures of ${file} cannot be computed until this is mended.\n`)
    return exitCodes.errorsFound
  }
  const explanation = explain(computed, examined, {filePath, messages})
  if (format === 'json') print(`${JSON.stringify(explanation, undefined, 2)}\n`)
  else for (const text of textExplanation(explanation, paintFor('stdout', color))) print(text)
  return exitCodes.fine
}

/** The file that a slug, title or path means; a miss suggests, it never guesses. */
function recipeFile(name: string, {read, examined, filePath}: ExaminedFolder): string {
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
  const meant = nearest(name, [...slugs, ...recipes.map((recipe) => recipe.title.value)])
  throw new EnvironmentFailure(
    `No recipe is called ${name}`,
    meant === undefined
      ? `There are ${files.length}; a recipe is called by its file, slug or title`
      : `Did you mean ${meant}?`,
  )
}

function title(recipe: Recipe): string {
  return recipe.title.value.toLowerCase()
}
