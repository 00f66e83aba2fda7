import {sentenceAt, sentencesOf} from '../../cookbook/prose/sentences.ts'
import type {TimeInStep} from './time-in-steps.ts'

/** What a cook does in a stretch of time: works with the hands, or waits with them free. */
export type Occupation = 'work' | 'wait'

/** What is done in a pot, an oven or a bowl by itself; "the boiled potatoes" are not being boiled. */
const waits =
  /\b(?:simmer|bak(?:e|ing)|roast|(?<!the )rest|chill|cool|ris(?:e|ing)|prov(?:e|ing)|proof|soak|leave(?!s\b)|let|stand|marinat|infus|steep|steam|poach|brais|stew|boil|freez|refrigerat|set aside|low heat)(?!\p{L}*d\b)|\bcover/giu

/** What is done by hand, or wants an eye on it. */
const works =
  /\b(?:knead|whisk|beat|stir|fry|brown|toast|sear|soften|sweat|saut|roll|fold|chop|cut|mix|blend|grill|griddl|shape|rub|peel|grat|grind|mash|toss)(?!\p{L}*d\b)/giu

const neverLeft =
  /\bstirring (?:all the time|constantly|continuously|without (?:a )?(?:stop|pause))/i

/** Longer than this nobody stands at the stove for a step that does not say how. Common practice, no source. */
const longestUntoldWorkMinutes = 15

/**
 * Whether the hands are free in the time of a step: the verb nearest before the time decides
 * ("bring to the boil and simmer for 30 min"), then one behind it, then how long it takes.
 */
export function occupationOf({passage, duration}: TimeInStep): Occupation {
  const {text} = passage
  const {from, to, highMinutes} = duration
  const sentence = sentenceAt(sentencesOf(text), from)
  const behind = text.slice(to, sentence?.to)
  if (neverLeft.test(behind)) return 'work'
  const told = nearestTo(text.slice(sentence?.from, from), 'last') ?? nearestTo(behind, 'first')
  return told ?? (highMinutes >= longestUntoldWorkMinutes ? 'wait' : 'work')
}

function nearestTo(text: string, which: 'first' | 'last'): Occupation | undefined {
  const found = [
    ...[...text.matchAll(waits)].map(({index}) => ({index, occupation: 'wait' as const})),
    ...[...text.matchAll(works)].map(({index}) => ({index, occupation: 'work' as const})),
  ].toSorted((left, right) => left.index - right.index)
  return found.at(which === 'last' ? -1 : 0)?.occupation
}
