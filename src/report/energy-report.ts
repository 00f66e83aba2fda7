import {reconcile} from '../check/reconcile-energy.ts'
import type {Settings} from '../cookbook/cookbook.ts'
import type {Computed} from '../nutrition/computed.ts'
import {methodOf} from '../nutrition/energy-nutrient.ts'
import type {MacroEnergy} from '../nutrition/energy-of-macros.ts'
import {spanGap, spanOfRounded} from '../units/span.ts'
import type {EnergyReport, MethodReport} from './explanation.ts'
import {withoutNoise} from './figure-report.ts'

/** Stated energy beside the energy of the stated macros; undefined unless all four are stated. */
export function energyReport(computed: Computed, settings: Settings): EnergyReport | undefined {
  const found = reconcile(computed.recipe, computed, settings)
  if (found === undefined) return undefined
  const {stated, general, byMethod, fits, gapPercent, wouldExplain} = found
  const fitting = fits && methodOf(fits)
  const isApart = spanGap(general, spanOfRounded(stated.value, stated.increment)) > 0
  return {
    stated: withoutNoise(stated.value),
    byMethod: byMethod.flatMap((one) => methodReport(one)),
    ...(fitting && {fits: fitting}),
    gapPercent: withoutNoise(gapPercent),
    wouldExplain: isApart ? wouldExplain : [],
  }
}

function methodReport({method: nutrient, energy}: MacroEnergy): readonly MethodReport[] {
  const method = methodOf(nutrient)
  if (method === undefined) return []
  const {value, low, high} = energy
  return [{method, value: withoutNoise(value), low: withoutNoise(low), high: withoutNoise(high)}]
}
