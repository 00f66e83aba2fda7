import {formatMinutes} from '../../units/format-duration.ts'
import {leastMinutes, namedTimes, timesInSteps} from '../method/time-in-steps.ts'
import type {Rule} from '../rule.ts'

export const stepsFitTime: Rule = {
  id: 'steps-fit-time',
  severity: 'warning',
  summary: 'The times of the steps fit into the time of the whole dish.',
  why: 'Who starts an hour before supper must not find an hour and a half in the method.',
  *check({recipe}) {
    const {totalMinutes} = recipe
    if (!totalMinutes) return
    const times = timesInSteps(recipe)
    const least = leastMinutes(times)
    if (least <= totalMinutes.value + slackMinutes) return
    const [actual, expected] = [totalMinutes.value, least].map(formatMinutes)
    yield {
      place: totalMinutes.place,
      reason: `Total time \`${actual}\`, expected \`${expected}\` or more: the steps add up to that`,
      ...(actual !== undefined && {actual}),
      ...(expected !== undefined && {expected: [expected]}),
      note: `The longest are ${namedTimes(times)}. What runs beside another step is not added where its sentence says so ("meanwhile", "while").`,
    }
  },
}

/** Seconds and rounded minutes add up to this; the project's choice. */
const slackMinutes = 2
