import path from 'node:path'
import process from 'node:process'
import {asciiSlug} from '../cookbook/ascii-slug.ts'
import type {Cookbook} from '../cookbook/cookbook.ts'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {readFolder} from '../cookbook/read-folder.ts'
import {understandCookbook} from '../cookbook/understand.ts'
import {filePathBelow} from '../report/file-path.ts'
import {message} from '../report/message.ts'
import {textMessages} from '../report/text-report.ts'
import type {Parsed} from '../units/parsed.ts'
import {askRecipe} from './ask-recipe.ts'
import {paintFor} from './colour.ts'
import {createFiles} from './create-files.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print, tell} from './output.ts'
import {exampleStart, type RecipeStart, recipeText, type StartLine} from './recipe-start.ts'
import {parseServes, parseTitle, parseYield} from './recipe-values.ts'
import type {SharedOptions} from './shared-options.ts'
import {parseStartLine} from './start-line.ts'
import {onTerminal} from './terminal-questions.ts'
import {withStated} from './with-stated.ts'

/** What the call says of the recipe; nothing of it: it is asked for on a terminal. */
export interface RecipeWords {
  readonly summary?: string
  readonly serves?: string
  readonly yield?: string
  /** `pearl barley: 180 g`. */
  readonly ingredient: readonly string[]
  readonly step: readonly string[]
}

interface NewRecipeOptions extends SharedOptions, RecipeWords {
  readonly content: string
}

/** Starts a recipe in a cookbook that is there. */
export async function newRecipe(
  written: string | undefined,
  options: NewRecipeOptions,
): Promise<ExitCode> {
  const {content, color, quiet} = options
  const title = written === undefined ? undefined : taken('title', written, parseTitle)
  const {sources} = await readFolder(content)
  const start = await startOf(title, options, understandCookbook(sources).cookbook)
  const file = `recipes/${slugFor(start.title)}.md`
  const {text, problems} = withStated({path: file, text: recipeText(start)}, sources.texts)
  createFiles(content, new Map([[file, text]]))
  const named = path.join(content, file)
  const filePath = filePathBelow(content)
  const told = problems.filter(({severity}) => severity === 'error' || !quiet)
  const messages = told.map((problem) => message(problem, filePath))
  for (const line of textMessages(messages, paintFor('stderr', color))) tell(line)
  const state = problems.length === 0 ? 'It passes its checks as it is' : 'Mend what is said above'
  const isOwn = start.lines !== exampleStart.lines
  if (!quiet)
    print(`Wrote ${named}. ${state}; ${isOwn ? 'go on writing' : 'put your own ingredients in'}, then:

  scalepan check ${named}
  scalepan build
`)
  return exitCodes.fine
}

async function startOf(
  title: string | undefined,
  words: RecipeWords,
  cookbook: Cookbook,
): Promise<RecipeStart> {
  const {summary, serves, yield: batch, ingredient, step} = words
  const isTold = [summary, serves, batch, ...ingredient, ...step].some((one) => one !== undefined)
  if (!isTold && process.stdin.isTTY === true) {
    tell('An empty line passes a question over.\n')
    return onTerminal((ask) => askRecipe(ask, {cookbook, ...(title !== undefined && {title})}))
  }
  if (title === undefined) {
    throw new EnvironmentFailure(
      'A recipe wants a title, and there is no terminal to ask for it',
      'Give it with the call: scalepan new recipe "Barley pot"',
    )
  }
  const lines: StartLine[] = []
  for (const one of ingredient) {
    lines.push(taken('ingredient', one, (line) => parseStartLine(line, cookbook, lines)))
  }
  return {
    ...(lines.length === 0 ? exampleStart : {serves: exampleStart.serves, lines, steps: step}),
    ...(step.length > 0 && {steps: step}),
    title,
    ...(summary !== undefined && {summary}),
    ...(serves !== undefined && {serves: taken('number of servings', serves, parseServes)}),
    ...(batch !== undefined && {yield: taken('yield', batch, parseYield)}),
  }
}

/** What the call says, where it can be read; else the call is at fault. */
function taken<T>(what: string, written: string, read: (text: string) => Parsed<T>): T {
  const value = read(written)
  if (value.ok) return value.value
  const shown = written.trim() === '' ? 'empty' : `\`${written}\``
  throw new EnvironmentFailure(`The ${what} is ${shown}, expected ${value.expected}`)
}

/** A title without a Latin letter or digit gives no address; the file can be renamed at will. */
function slugFor(title: string): string {
  return asciiSlug(title) || 'recipe'
}
