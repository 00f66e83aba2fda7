import {type Parsed, parsed, refused} from '../units/parsed.ts'

/** Reads a day of the calendar, `2026-10-03`, and gives it back as written. */
export function parseDay(text: string): Parsed<string> {
  const expected = 'a day as year, month, day, such as `2026-10-03`'
  const form = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text)
  if (!form) return refused(expected)
  const [year, month, day] = form.slice(1).map(Number)
  if (year === undefined || month === undefined || day === undefined) return refused(expected)
  // A day that does not exist, such as 31 April, comes back as another one.
  const date = new Date(Date.UTC(year, month - 1, day))
  const isReal = date.getUTCMonth() === month - 1 && date.getUTCDate() === day
  return isReal ? parsed(text) : refused('a day that the month has')
}
