import type {Located} from '../../cookbook/problem.ts'
import {type DurationMention, durationsIn} from '../../cookbook/prose/durations.ts'
import type {Recipe} from '../../cookbook/recipe.ts'
import {formatMinutes} from '../../units/format-duration.ts'
import {leastMinutes, timesInSteps} from '../method/time-in-steps.ts'
import {placeInWritten} from '../place-in-written.ts'
import type {Rule} from '../rule.ts'

/** A round time is not held to the minute: the project's choice, a tenth, and 2 minutes at least. */
const slack = {ratio: 0.1, minutes: 2} as const

export const timeInSummary: Rule = {
  id: 'time-in-summary',
  severity: 'warning',
  summary: 'A time for the whole dish in title, summary or tags is the one that it takes.',
  why: 'Who reads "ready in 15 minutes" starts 15 minutes before supper.',
  *check({recipe}) {
    const takes = takenMinutes(recipe)
    if (takes === undefined) return
    const {title, summary, tags} = recipe
    for (const written of [title, ...(summary ? [summary] : []), ...tags]) {
      for (const said of wholeTimes(written)) {
        const isLimit = atMost.test(written.value.slice(0, said.from))
        if (!isWrong(said, isLimit, takes)) continue
        const expected = formatMinutes(takes.minutes)
        const [or, from] = takes.isLeast
          ? [' or more', 'the steps add up to that']
          : ['', '`time` says so']
        yield {
          place: placeInWritten(written, said),
          reason: `Text says \`${said.text}\`, expected \`${expected}\`${or}: ${from}`,
          actual: said.text,
          expected: [expected],
          note: 'Write the time of the whole dish, or say what the time is for.',
        }
      }
    }
  },
}

interface Taken {
  readonly minutes: number
  /** Nobody states the whole time: what the steps add up to. */
  readonly isLeast: boolean
}

function takenMinutes(recipe: Recipe): Taken | undefined {
  if (recipe.totalMinutes) return {minutes: recipe.totalMinutes.value, isLeast: false}
  const minutes = leastMinutes(timesInSteps(recipe))
  return minutes > 0 ? {minutes, isLeast: true} : undefined
}

/** Words right before a time that is for the whole dish: "ready in just under". */
const before =
  /\b(?:ready|done|made|cooked|finished|served|plate|table|together|supper|dinner|lunch|breakfast|all|start to finish)(?: \w+){0,2} (?:in|within)(?: (?:just|only|about|around|under|less than|no more than|at most))*\s*$|\btakes(?: (?:just|only|about|around|under|less than|no more than|at most))*\s*$/i

/** And right behind it: "15-minute supper". */
const behind =
  /^[\s-]*(?:in all|altogether|in total|from start to finish|start to finish)\b|^\s+(?:\w+ )?(?:meals?|suppers?|dinners?|lunch(?:es)?|breakfasts?|dish(?:es)?|pasta|curr(?:y|ies)|soups?|salads?|recipes?)\b/i

/** Of the work, the oven or the rest alone. */
const ofPart =
  /^\s*(?:of|in the|on the|at|hands?|more|per|each|before|after)\b|\b(?:hands[- ]on|prep\w*|work|oven|active)\b[^.]*$/i

function wholeTimes({value}: Located<string>): readonly DurationMention[] {
  return durationsIn(value).filter(({from, to}) => {
    const [left, right] = [value.slice(0, from), value.slice(to)]
    return (before.test(left) && !ofPart.test(right)) || behind.test(right)
  })
}

const atMost = /\b(?:under|less than|no more than|at most|within|up to)\s*$/i

function isWrong(
  {highMinutes, lowMinutes}: DurationMention,
  isLimit: boolean,
  {minutes, isLeast}: Taken,
): boolean {
  const room = Math.max(slack.minutes, slack.ratio * minutes)
  if (minutes > highMinutes + room) return true
  return !isLeast && !isLimit && minutes < lowMinutes - room
}
