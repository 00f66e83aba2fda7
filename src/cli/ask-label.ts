import type {LabelEntry} from '../cookbook/label-entry.ts'
import {type Parsed, parsed} from '../units/parsed.ts'
import {type Ask, answer, type Question} from './ask.ts'
import {
  allergenWords,
  nameQuestion,
  originWords,
  panelQuestions,
  soldQuestions,
  wordAmong,
} from './label-questions.ts'

/**
 * Asks for a packet line by line; an answer that cannot be read is asked for again at once.
 * @param name as given with the call; asked for where it is absent
 * @param today the day the packet is read, `2026-11-25`
 */
export async function askLabel(
  ask: Ask,
  {name, today}: {readonly name?: string; readonly today: string},
): Promise<LabelEntry> {
  const called = name ?? (await answer(ask, nameQuestion)) ?? ''
  const panel = await answers(ask, panelQuestions)
  const contains = await words(ask, 'Contains (allergens, or none)', allergenWords)
  const mayContain = await words(ask, 'May contain traces of', allergenWords)
  const madeFrom = await words(ask, 'Made from', originWords)
  const sold = await answers(ask, soldQuestions)
  return {
    name: called,
    panel: new Map([...panel, ['read', today]]),
    ...(contains && {contains}),
    ...(mayContain && {mayContain}),
    ...(madeFrom && {madeFrom}),
    sold,
  }
}

async function answers(ask: Ask, questions: readonly Question[]): Promise<Map<string, string>> {
  const given = new Map<string, string>()
  for (const question of questions) {
    const value = await answer(ask, question)
    if (value !== undefined) given.set(question.key, value)
  }
  return given
}

/** `none` says there are none; an empty line says nothing. */
async function words(
  ask: Ask,
  text: string,
  choices: readonly string[],
): Promise<readonly string[] | undefined> {
  const written = await answer(ask, {
    text,
    isOptional: true,
    read: (line) => (line.toLowerCase() === 'none' ? parsed('') : listOf(line, choices)),
  })
  return written === undefined ? undefined : splitWords(written)
}

function listOf(line: string, choices: readonly string[]): Parsed<string> {
  const read = splitWords(line).map((word) => wordAmong(word, choices))
  const wrong = read.find((word) => !word.ok)
  return wrong ?? parsed(read.flatMap((word) => (word.ok ? word.value : [])).join(','))
}

/** The words of `milk, egg`. */
function splitWords(text: string): readonly string[] {
  return text
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '')
}
