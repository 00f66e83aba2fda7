import {parseMarkdown} from '../../src/cookbook/markdown.ts'
import {readMethod, safeBody} from '../../src/cookbook/method.ts'
import type {Problem} from '../../src/cookbook/problem.ts'
import {type Report, reportInto} from '../../src/cookbook/problems.ts'
import type {IngredientLine, Method} from '../../src/cookbook/recipe.ts'
import {htmlText} from '../../src/site/html.ts'

/** A body as read, with its HTML. */
export interface ReadBody {
  readonly method: Method
  readonly html: string
  readonly problems: readonly Problem[]
}

/** Reads the text of a recipe, `recipes/barley-pot.md`, with the ingredients given. */
export function readRecipeBody(text: string, lines: readonly IngredientLine[] = []): ReadBody {
  return read(text, 'recipes/barley-pot.md', (root, source, report) =>
    readMethod(root, {source, lines, report}),
  )
}

/** Reads the text of a page, `pages/about.md`. */
export function readPageBody(text: string): ReadBody {
  return read(text, 'pages/about.md', (root, source, report) => safeBody(root, {source, report}))
}

type ReadRoot = (
  root: NonNullable<ReturnType<typeof parseMarkdown>>,
  source: {readonly path: string; readonly text: string},
  report: Report,
) => Method

function read(text: string, path: string, method: ReadRoot): ReadBody {
  const problems: Problem[] = []
  const report = reportInto(problems, path)
  const root = parseMarkdown(text, report)
  if (!root) throw new Error(`not parsed: ${problems.map(({reason}) => reason).join('; ')}`)
  const read = method(root, {path, text}, report)
  return {method: read, html: htmlText(read.body).trim(), problems}
}

/** The text of the file that a problem points at. */
export function pointedAt(text: string, {place}: Pick<Problem, 'place'>): string {
  return text.slice(place?.start.offset ?? 0, place?.end.offset ?? 0)
}
