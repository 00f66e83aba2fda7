import {readMarkdownFile} from './markdown-file.ts'
import {readMethod} from './method.ts'
import type {Problem} from './problem.ts'
import {reportInto} from './problems.ts'
import type {Recipe} from './recipe.ts'
import type {RecipeValues} from './recipe-fields.ts'
import {recipeHead} from './recipe-values.ts'
import {slugOf} from './slug.ts'
import type {SourceText} from './sources.ts'
import type {Reader} from './yaml/reader.ts'

/**
 * Reads a recipe. Its figures are only worth checking when all of its front matter was understood,
 * so one slip there leaves the recipe out; a slip in the method is told and does not.
 * @param reader of the front matter, `recipeReader`: made once for a cookbook
 */
export function readRecipe(
  source: SourceText,
  reader: Reader<RecipeValues>,
): {readonly recipe?: Recipe; readonly problems: readonly Problem[]} {
  const problems: Problem[] = []
  const report = reportInto(problems, source.path)
  const slug = slugOf(source.path, 'recipes', report)
  const file = readMarkdownFile(source, reader, report)
  if (!file) return {problems}
  const head = recipeHead(file, report)
  const isUnderstood = problems.every(({severity}) => severity !== 'error')
  const method = readMethod(file.root, {
    source: {path: source.path, text: file.text},
    lines: head.groups.flatMap(({lines}) => lines),
    report,
  })
  if (slug === undefined || !isUnderstood) return {problems}
  return {recipe: {slug, path: source.path, ...head, method}, problems}
}
