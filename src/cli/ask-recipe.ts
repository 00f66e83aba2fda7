import type {Cookbook} from '../cookbook/cookbook.ts'
import {type Parsed, parsed} from '../units/parsed.ts'
import {type Ask, answer} from './ask.ts'
import {exampleStart, type RecipeStart, type StartLine} from './recipe-start.ts'
import {parseServes, parseTitle, parseYield} from './recipe-values.ts'
import {parseStartLine} from './start-line.ts'

/**
 * Asks what a recipe cannot be started without; an answer that cannot be read is asked for again at
 * once. Without an ingredient, the example stands to be written over.
 * @param title as given with the call; asked for where it is absent
 */
export async function askRecipe(
  ask: Ask,
  {title, cookbook}: {readonly title?: string; readonly cookbook: Cookbook},
): Promise<RecipeStart> {
  const called = title ?? (await answer(ask, {text: 'Title', isOptional: false, read: parseTitle}))
  const serves = await answer(ask, {text: 'Servings (4)', isOptional: true, read: parseServes})
  const lines = await listed<StartLine>(
    ask,
    'Ingredient, such as `pearl barley: 180 g`',
    (written, before) => parseStartLine(written, cookbook, before),
  )
  const start = {title: called ?? '', serves: serves ?? exampleStart.serves}
  if (lines.length === 0) return {...exampleStart, ...start}
  const batch = await answer(ask, {
    text: 'Weight of the finished batch, if it was weighed',
    isOptional: true,
    read: parseYield,
  })
  const steps = await listed<string>(ask, 'Step', parsed)
  return {...start, ...(batch !== undefined && {yield: batch}), lines, steps}
}

/** Answers until an empty line. */
async function listed<T>(
  ask: Ask,
  what: string,
  read: (answer: string, before: readonly T[]) => Parsed<T>,
): Promise<readonly T[]> {
  const all: T[] = []
  for (;;) {
    const text = `${what} (${all.length + 1})`
    const one = await answer(ask, {text, isOptional: true, read: (line) => read(line, all)})
    if (one === undefined) return all
    all.push(one)
  }
}
