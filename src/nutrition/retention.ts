import {type CookingMethod, cookingMethods, type Retention} from '../food/cooking-methods.ts'
import {type Nutrient, nutrients} from '../food/nutrients.ts'
import {rectangular, type Uncertain} from '../units/uncertain.ts'

/**
 * Alcohol left after simmering or baking in the dish. Source: USDA Table of Nutrient Retention
 * Factors, Release 6 (Dec 2007), alcohol (nutrient 221), codes 5002 and 5004–5009 (code 5009
 * inferred from its neighbours); figures seen in reproductions of the table, not in the table.
 */
const simmeredRows: readonly {readonly fromMinutes: number; readonly percent: number}[] = [
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

/** The share of a nutrient that is left, 0 to 1, for the nutrients that lose any. */
export type Retained = ReadonlyMap<Nutrient, Uncertain>

// One source a row, not one a use: the same factor in two dishes is off by the same amount.
function retained(preparation: string, percent: Retention['percent']): Retained {
  const rows = nutrients.flatMap((nutrient): [Nutrient, Uncertain][] => {
    const left = percent[nutrient]
    if (left === undefined) return []
    const subject = `${nutrient} kept when ${preparation}`
    return [[nutrient, rectangular(left / 100, roundingRatio, {kind: 'loss', subject})]]
  })
  return new Map(rows)
}

const simmeredSteps = simmeredRows.map(({fromMinutes, percent}) => ({
  fromMinutes,
  retained: retained(`simmered ${fromMinutes} min or longer`, {alcohol: percent}),
}))

const byMethod: ReadonlyMap<string, Retained> = new Map(
  Object.entries(cookingMethods).map(([name, {percent}]) => [name, retained(name, percent)]),
)

const all: Retained = new Map()

/**
 * What simmering leaves of the alcohol. Between two tabulated times the shorter one counts: the
 * page then never promises less alcohol than the table does.
 * @param minutes time stirred in and simmered or baked, 0 or more; below 15 minutes the row
 *   "stirred into boiling liquid"
 */
export function retainedAfterSimmering(minutes: number): Retained {
  return simmeredSteps.find(({fromMinutes}) => minutes >= fromMinutes)?.retained ?? all
}

/** What a way of cooking leaves of each nutrient it takes from. */
export function retainedAfter(method: CookingMethod): Retained {
  return byMethod.get(method) ?? all
}
