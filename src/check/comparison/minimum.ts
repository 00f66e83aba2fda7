import type {LabelRules} from '../../food/label-rules.ts'
import type {PublishedNutrient} from '../../food/nutrients.ts'

/**
 * The reduction a law wants before it lets "reduced" or "less" be said, 0 to 1. US: 25 %, 21 CFR
 * 101.60–.62. EU: 30 %, and 25 % for sodium or salt, Regulation (EC) 1924/2006 Annex. Seen in
 * secondary summaries.
 */
export function leastReduction(nutrient: PublishedNutrient, rules: LabelRules): number {
  if (rules === 'us' || nutrient === 'sodium' || nutrient === 'salt') return 0.25
  return 0.3
}
