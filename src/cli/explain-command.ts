import {explain} from '../report/explain.ts'
import {textExplanation} from '../report/text-explanation.ts'
import {paintFor} from './colour.ts'
import {examinedFolder} from './examined-folder.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print} from './output.ts'
import {computedOf, recipeFile, tellUncomputed} from './recipe-file.ts'
import type {SharedOptions} from './shared-options.ts'

interface ExplainOptions extends SharedOptions {
  readonly content: string
  readonly format: 'text' | 'json'
}

/** Shows where a recipe's figures come from. */
export async function explainCommand(
  name: string,
  {content, format, ...options}: ExplainOptions,
): Promise<ExitCode> {
  const folder = await examinedFolder(content, options)
  const {examined, filePath, messages} = folder
  const file = recipeFile(name, folder)
  const computed = computedOf(file, folder)
  if (computed === undefined) return tellUncomputed(file, folder, options)
  const explanation = explain(computed, examined, {filePath, messages})
  if (format === 'json') print(`${JSON.stringify(explanation, undefined, 2)}\n`)
  else
    for (const text of textExplanation(explanation, paintFor('stdout', options.color))) print(text)
  return exitCodes.fine
}
