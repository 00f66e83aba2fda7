import {type DurationMention, durationsIn} from '../../cookbook/prose/durations.ts'
import {sentencesOf} from '../../cookbook/prose/sentences.ts'
import type {Passage, Recipe} from '../../cookbook/recipe.ts'
import {remembered} from '../../units/remembered.ts'
import {stepsOf} from './ingredient-mentions.ts'

/** A time that a step takes, with the sentence it stands in. */
export interface TimeInStep {
  readonly passage: Passage
  readonly duration: DurationMention
  readonly sentence: string
}

/** Happens beside something else, so it adds nothing. */
const beside =
  /\b(?:meanwhile|in the meantime|at the same time|while|whilst|as (?:it|they|the \w+) (?:cooks?|bakes?|simmers?|rests?))\b/i
/** Is done on another day, or only by who wants to. */
const otherwise =
  /\b(?:optional(?:ly)?|if you (?:like|have|want|prefer|can|are)|re-?heat\w*|thaw\w*|defrost\w*|left-?overs?|freez\w+|stor(?:e|es|ed|ing)|keeps?|(?:day|night|evening|week) (?:before|ahead)|ahead of time|in advance|beforehand|alternatively|slow cooker|pressure cooker)\b/i
const keepsDoing = /\bkeep(?:ing)?s? (?:\w+ing|it|them|the|warm|hot|covered|an eye)\b/gi

/**
 * The times that follow one another in the method and add up: of two with an "or" between them the
 * shorter one. Where there are steps, paragraphs beside them are remarks.
 */
export const timesInSteps = remembered((recipe: Recipe): readonly TimeInStep[] =>
  timesWhere(recipe, (sentence) => !beside.test(sentence)),
)

/** The times of sentences that say that they run beside something else: "meanwhile", "while". */
export function timesBeside(recipe: Recipe): readonly TimeInStep[] {
  return timesWhere(recipe, (sentence) => beside.test(sentence))
}

/** What is done in order: the items of lists, or every paragraph where there is no list. */
export function orderedSteps(recipe: Recipe): readonly Passage[] {
  const all = stepsOf(recipe)
  const steps = all.filter(({kind}) => kind === 'step')
  return steps.length > 0 ? steps : all
}

function timesWhere(recipe: Recipe, isMeant: (sentence: string) => boolean): readonly TimeInStep[] {
  return orderedSteps(recipe).flatMap((passage) => {
    const durations = durationsIn(passage.text).filter(({role}) => role === 'spent')
    return sentencesOf(passage.text).flatMap(({from, to}) => {
      const sentence = passage.text.slice(from, to)
      if (!isMeant(sentence) || otherwise.test(sentence.replace(keepsDoing, ''))) return []
      const within = durations.filter((each) => each.from >= from && each.from < to)
      return shortestOf(within, passage.text).map((duration) => ({passage, duration, sentence}))
    })
  })
}

function shortestOf(within: readonly DurationMention[], text: string): readonly DurationMention[] {
  const kept: DurationMention[] = []
  for (const duration of within) {
    const last = kept.at(-1)
    const between = last && text.slice(last.to, duration.from)
    const isAlternative =
      between !== undefined &&
      (/\bor\b(?! until)|\bup to\b|\bbut (?:preferably|ideally)\b/i.test(between) ||
        /^[\s,(]*(?:(?:or|about|for|at least|that is)\s*)*$/i.test(between))
    if (!last || !isAlternative) kept.push(duration)
    else if (duration.lowMinutes < last.lowMinutes) kept.splice(-1, 1, duration)
  }
  return kept
}

/** Minutes that the steps take at least. */
export function leastMinutes(times: readonly TimeInStep[]): number {
  return times.reduce((sum, {duration}) => sum + duration.lowMinutes, 0)
}

/** The longest times, for a note. */
export function namedTimes(times: readonly TimeInStep[]): string {
  return times
    .toSorted((left, right) => right.duration.lowMinutes - left.duration.lowMinutes)
    .slice(0, 4)
    .map(({duration}) => `\`${duration.text}\``)
    .join(', ')
}
