import path from 'node:path'
import {asciiSlug} from '../cookbook/ascii-slug.ts'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {readFolder} from '../cookbook/read-folder.ts'
import {filePathBelow} from '../report/file-path.ts'
import {message} from '../report/message.ts'
import {printable} from '../report/printable.ts'
import {textMessages} from '../report/text-report.ts'
import {paintFor} from './colour.ts'
import {createFiles} from './create-files.ts'
import {type ExitCode, exitCodes} from './exit-codes.ts'
import {print, tell} from './output.ts'
import type {SharedOptions} from './shared-options.ts'
import {statedPlace, withStated} from './with-stated.ts'
import {yamlText} from './yaml-text.ts'

/** Longer titles are sentences, and do not fit into a file name. */
const longestTitle = 80

interface NewRecipeOptions extends SharedOptions {
  readonly content: string
}

/** Starts a recipe in a cookbook that is there. */
export async function newRecipe(
  written: string,
  {content, color}: NewRecipeOptions,
): Promise<ExitCode> {
  const title = written.trim()
  if (title === '' || title.length > longestTitle || printable(title) !== title) {
    throw new EnvironmentFailure(
      `The title is ${title === '' ? 'empty' : `\`${title}\``}, expected one line of up to ${longestTitle} characters`,
    )
  }
  const {sources} = await readFolder(content)
  const file = `recipes/${slugFor(title)}.md`
  const {text, problems} = withStated({path: file, text: startOfRecipe(title)}, sources.texts)
  createFiles(content, new Map([[file, text]]))
  const named = path.join(content, file)
  const filePath = filePathBelow(content)
  const messages = problems.map((problem) => message(problem, filePath))
  for (const line of textMessages(messages, paintFor('stderr', color))) tell(line)
  const state = problems.length === 0 ? 'It passes its checks as it is' : 'Mend what is said above'
  print(`Wrote ${named}. ${state}; put your own ingredients in, then:

  scalepan check ${named}
  scalepan build
`)
  return exitCodes.fine
}

/** A title without a Latin letter or digit gives no address; the file can be renamed at will. */
function slugFor(title: string): string {
  return asciiSlug(title) || 'recipe'
}

function startOfRecipe(title: string): string {
  return `---
title: ${yamlText(title)}
summary: One sentence that makes somebody want to cook it.
serves: 4
yield: 1150 g                 # the finished batch, weighed
time: { hands-on: 10 min, total: 45 min }
ingredients:
  pearl barley: 180 g
  carrot: { amount: 200 g, bought: true }   # as purchased: what the peel weighs comes off
  onion: 100 g
  olive oil: 15 g
  water: 800 g
${statedPlace}---

1. Soften the [onion](#onion) in the [oil](#olive-oil).
2. Add the [barley](#pearl-barley), the [carrot](#carrot) in slices and the [water](#water), and
   simmer until the barley is tender, about 35 minutes.
3. Weigh the finished pot, without the pot, and write the weight after \`yield\`.
`
}
