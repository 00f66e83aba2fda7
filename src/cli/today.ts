import process from 'node:process'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'

/**
 * The day of a call, UTC, as `2026-11-25`: the one SOURCE_DATE_EPOCH names, seconds since 1970,
 * where it is set (Reproducible Builds, "SOURCE_DATE_EPOCH", version 1.1), else the clock's.
 */
export function today(): string {
  return (sourceDate() ?? new Date()).toISOString().slice(0, 10)
}

/** The time SOURCE_DATE_EPOCH names; undefined where it is not set. */
export function sourceDate(): Date | undefined {
  const epoch = process.env.SOURCE_DATE_EPOCH
  if (epoch === undefined || epoch === '') return undefined
  const date = new Date(/^\d+$/.test(epoch) ? Number(epoch) * 1000 : Number.NaN)
  if (!Number.isNaN(date.getTime())) return date
  throw new EnvironmentFailure(
    `SOURCE_DATE_EPOCH is \`${epoch}\`, expected the seconds since the start of 1970`,
  )
}
