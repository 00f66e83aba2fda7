import {dailyValue} from '../daily-values.ts'
import type {LabelRules} from '../label-rules.ts'
import type {Nutrient} from '../nutrients.ts'

/** Vitamins and minerals, whose percentages a US panel gives in steps. */
const inSteps: ReadonlySet<Nutrient> = new Set(['vitaminD', 'calcium', 'iron', 'potassium'])

/**
 * Share of an adult's day in percent, as the law rounds it: to the whole percent, and US vitamins
 * and minerals to 2 up to 10 %, to 5 up to 50 %, to 10 above (21 CFR 101.9(c)(8)(iii), seen in
 * secondary texts; below 2 % it allows 0). The EU guidance of 2012 does not say how: whole percents
 * are common practice.
 * @param amount 0 or more, in the nutrient's own unit; as declared, so that a reader who divides it
 *   finds the same
 * @returns undefined where the law has no reference value; and for US protein, whose percentage
 *   needs the quality of the protein (21 CFR 101.9(c)(7)), which no table here has
 */
export function percentOfDay(
  rules: LabelRules,
  nutrient: Nutrient,
  amount: number,
): number | undefined {
  const day = dailyValue[rules][nutrient]
  if (day === undefined || (rules === 'us' && nutrient === 'protein')) return undefined
  const percent = (100 * amount) / day
  const step = rules === 'us' ? percentStep(nutrient, percent) : undefined
  if (step === undefined) return Math.round(percent)
  return percent < 2 ? 0 : Math.round(percent / step) * step
}

/** The step of a US percentage of that size; undefined for what is given to the whole percent. */
export function percentStep(nutrient: Nutrient, percent: number): number | undefined {
  if (!inSteps.has(nutrient)) return undefined
  return percent <= 10 ? 2 : percent <= 50 ? 5 : 10
}
