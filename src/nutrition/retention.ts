import {rectangular, type Uncertain} from '../units/uncertain.ts'

/**
 * Share of alcohol left after cooking. Source: USDA Table of Nutrient Retention Factors,
 * Release 6 (Dec 2007), alcohol (nutrient 221), codes 5002 and 5004–5009 (code 5009 inferred from
 * its neighbours); figures seen in reproductions of the table, not in the table itself.
 */
const alcoholRows: readonly {readonly fromMinutes: number; readonly percent: number}[] = [
  {fromMinutes: 150, percent: 5},
  {fromMinutes: 120, percent: 10},
  {fromMinutes: 90, percent: 20},
  {fromMinutes: 60, percent: 25},
  {fromMinutes: 30, percent: 35},
  {fromMinutes: 15, percent: 40},
  {fromMinutes: 0, percent: 85},
]

/** The table prints its factors to the nearest 5 %: full width of the rounding interval, as a share. */
const roundingRatio = 0.05

/** Energy of ethanol in USDA SR28, kcal/g, derived from the release (wine 14084). */
export const ethanolKcalPerGram = 6.93

// One source a row, not one a use: the same factor in two dishes is off by the same amount.
const alcoholSteps = alcoholRows.map(({fromMinutes, percent}) => ({
  fromMinutes,
  retained: rectangular(percent / 100, roundingRatio, {
    kind: 'loss',
    subject: `alcohol retention after ${fromMinutes} min`,
  }),
}))

/**
 * Share of the alcohol that is still there, 0 to 1. Between two tabulated times the shorter one
 * counts: the page then never promises less alcohol than the table does.
 * @param minutes time stirred in and simmered or baked, 0 or more; below 15 minutes the row
 *   "stirred into boiling liquid"
 */
export function alcoholRetention(minutes: number): Uncertain {
  const step = alcoholSteps.find(({fromMinutes}) => minutes >= fromMinutes)
  if (step === undefined) throw new RangeError(`minutes must be 0 or more, not ${minutes}`)
  return step.retained
}
