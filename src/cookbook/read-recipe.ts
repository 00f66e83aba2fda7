import type {Root} from 'mdast'
import {isReadable} from './markdown.ts'
import {type MarkdownFile, readMarkdownFile, readTree} from './markdown-file.ts'
import {readMethod} from './method.ts'
import type {Located, Problem} from './problem.ts'
import {type Report, reportInto} from './problems.ts'
import type {Recipe} from './recipe.ts'
import type {RecipeValues} from './recipe-fields.ts'
import {recipeHead} from './recipe-values.ts'
import {slugOf} from './slug.ts'
import type {SourceText} from './sources.ts'
import type {Reader} from './yaml/reader.ts'

/** A recipe, where it could be understood. */
export interface RecipeRead {
  readonly recipe?: Recipe
  readonly problems: readonly Problem[]
}

/**
 * Reads a recipe. Its figures are only worth checking when all of its front matter was understood,
 * so one slip there leaves the recipe out; a slip in the method is told and does not.
 * @param reader of the front matter, `recipeReader`: made once for a cookbook
 */
export function readRecipe(source: SourceText, reader: Reader<RecipeValues>): RecipeRead {
  return recipeIn(source.path, (report) => readMarkdownFile(source, reader, report))
}

/** Reads a recipe that another pipeline has parsed: `root` is the tree of `text`. */
export function readParsedRecipe(
  {path, text, root}: SourceText & {readonly root: Root},
  reader: Reader<RecipeValues>,
): RecipeRead {
  return recipeIn(path, (report) =>
    isReadable(text, report) ? readTree({text, root}, reader, report) : undefined,
  )
}

function recipeIn(
  path: string,
  read: (report: Report) => MarkdownFile<RecipeValues> | undefined,
): RecipeRead {
  const problems: Problem[] = []
  const report = reportInto(problems, path)
  const slug = slugOf(path, 'recipes', report)
  const file = read(report)
  if (!file) return {problems}
  const head = recipeHead(file, report)
  const isUnderstood = problems.every(({severity}) => severity !== 'error')
  const isListWhole = !problems.some((problem) => isWithin(problem, file.values.ingredients))
  const method = readMethod(file.root, {
    source: {path, text: file.text},
    lines: head.groups.flatMap(({lines}) => lines),
    // A link to a line that was refused leads nowhere yet: that slip is told once, at the line.
    report: isListWhole
      ? report
      : (problem) => problem.ruleId !== 'unknown-ingredient-link' && report(problem),
  })
  if (slug === undefined || !isUnderstood) return {problems}
  return {recipe: {slug, path, ...head, method}, problems}
}

function isWithin({place}: Problem, {place: outer}: Located<unknown>): boolean {
  const offset = place?.start.offset
  if (offset === undefined) return false
  return offset >= (outer.start.offset ?? 0) && offset <= (outer.end.offset ?? 0)
}
