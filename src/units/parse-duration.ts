import {numberAtStart} from './number-text.ts'
import {type Parsed, parsed, refused} from './parsed.ts'

/** Minutes in one of the unit. A month is 30 days, a year 365: keeping times are round figures. */
const minutesPerUnit: ReadonlyMap<string, number> = new Map(
  Object.entries({
    min: 1,
    mins: 1,
    minute: 1,
    minutes: 1,
    h: 60,
    hr: 60,
    hrs: 60,
    hour: 60,
    hours: 60,
    day: 24 * 60,
    days: 24 * 60,
    week: 7 * 24 * 60,
    weeks: 7 * 24 * 60,
    month: 30 * 24 * 60,
    months: 30 * 24 * 60,
    year: 365 * 24 * 60,
    years: 365 * 24 * 60,
  }),
)

const expected = 'a time such as `20 min`, `1 h 30 min` or `3 days`'

/**
 * Reads a stretch of time: `20 min`, `1 h 30 min`, `1½ h`, `3 days`, `3 months`, `1 year`.
 * @returns minutes, above 0
 */
export function parseMinutes(text: string): Parsed<number> {
  let minutes = 0
  let rest = text.trim()
  do {
    const start = numberAtStart(rest)
    if (!start.ok) return rest.includes(',') ? start : refused(expected)
    if (start.value.number.halfRange > 0) return refused('one time, not a range')
    const word = /^\s*(\p{Letter}+)\s*/u.exec(start.value.rest)
    const each = minutesPerUnit.get(word?.[1]?.toLowerCase() ?? '')
    if (!word || each === undefined) return refused(expected)
    minutes += start.value.number.value * each
    rest = start.value.rest.slice(word[0].length)
  } while (rest !== '')
  return minutes > 0 ? parsed(minutes) : refused('a time above `0`')
}

/** @returns days, above 0: `3 days`, `3 months`, `12 h` is half a day */
export function parseDays(text: string): Parsed<number> {
  const minutes = parseMinutes(text)
  return minutes.ok ? parsed(minutes.value / (24 * 60)) : minutes
}
