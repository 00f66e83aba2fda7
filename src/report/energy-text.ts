import type {EnergyMethod} from '../cookbook/energy-method.ts'
import {methodName} from '../food/method-factors.ts'
import {formatFigure, roundedText} from '../units/format-figure.ts'
import type {EnergyReport} from './explanation.ts'
import {textTable} from './text-table.ts'

/** How an energy is arrived at, in a writer's words. */
export const energyMethodName: Readonly<Record<EnergyMethod, string>> = {
  foods: 'sum of the foods’ own energies',
  general: methodName.energyGeneral,
  digestible: methodName.energyDigestible,
  eu: methodName.energyEu,
}

/** What the stated macros give by each method, which of them fits, and what would explain a gap. */
export function energyRows({energy}: {readonly energy?: EnergyReport}): readonly string[] {
  if (energy === undefined) return []
  const {byMethod, fits, gapPercent, stated, wouldExplain} = energy
  const rows = byMethod.map(({method, value, low, high}) => [
    energyMethodName[method],
    formatFigure(value, 'kcal'),
    `${roundedText(low, 0)} to ${roundedText(high, 0)}`,
    method === fits ? 'fits' : '',
  ])
  return [
    ...textTable(rows),
    `stated: ${formatFigure(stated, 'kcal')}, ${roundedText(gapPercent, 1)} % from the general factors`,
    ...wouldExplain,
  ]
}
