import {isComplete} from '../food/figures.ts'
import {bakersPercentages} from '../nutrition/baking/bakers-percentages.ts'
import type {Computed} from '../nutrition/computed.ts'
import type {BakingReport} from './explanation.ts'
import {withoutNoise} from './figure-report.ts'

/** A recipe's baker's percentages; undefined where there is no flour to speak of. */
export function bakingReport(computed: Computed): BakingReport | undefined {
  const formula = bakersPercentages(computed)
  if (formula === undefined) return undefined
  const {flourGrams, rows, hydrationPercent, effectiveHydration} = formula
  return {
    flourGrams: withoutNoise(flourGrams),
    rows: rows.map(({food: {id, name}, grams, percent}) => ({
      food: id,
      name,
      grams: withoutNoise(grams),
      percent: withoutNoise(percent),
    })),
    hydrationPercent: withoutNoise(hydrationPercent),
    effectiveHydrationPercent: withoutNoise(effectiveHydration.value),
    ...(!isComplete(effectiveHydration) && {atLeast: true}),
  }
}
