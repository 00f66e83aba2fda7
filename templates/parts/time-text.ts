import type {Words} from '../words/en.ts'

/** `20 min`, `1 h 5 min`. @param minutes 0 or more */
export function minutesText(minutes: number, words: Words): string {
  const whole = Math.round(minutes)
  return whole < 60 ? words.minutes(whole) : words.hours(Math.floor(whole / 60), whole % 60)
}

const daysPerWeek = 7
const daysPerMonth = 30

/** Days as a cook says them: `3 days`, `2 weeks`, `3 months`. */
export function daysText(days: number, words: Words): string {
  if (days >= daysPerMonth && days % daysPerMonth === 0) return words.months(days / daysPerMonth)
  if (days > daysPerWeek && days % daysPerWeek === 0) return words.weeks(days / daysPerWeek)
  return words.days(days)
}

/** ISO 8601 duration: `PT1H5M`. @param minutes 0 or more */
export function isoDuration(minutes: number): string {
  const whole = Math.round(minutes)
  const [hours, rest] = [Math.floor(whole / 60), whole % 60]
  return `PT${hours > 0 ? `${hours}H` : ''}${rest > 0 || hours === 0 ? `${rest}M` : ''}`
}
