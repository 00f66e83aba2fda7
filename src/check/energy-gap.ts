import {
  energyBy,
  energyOfMacros,
  type MacroEnergy,
  type MacroSpans,
} from '../nutrition/energy-of-macros.ts'
import {roundedText} from '../units/format-figure.ts'
import {type Span, spanGap} from '../units/span.ts'

/** A printed energy, kcal, beside the energy of the macros printed with it. */
export interface EnergyGap {
  /** By the general factors, 4-4-9. */
  readonly general: Span
  /** By every method in kcal. */
  readonly byMethod: readonly MacroEnergy[]
  /** The first method whose limits meet the printed energy's; absent when none does. */
  readonly fits?: MacroEnergy['method']
  /** Distance from the general factors, percent of the printed energy, 0 and up. */
  readonly gapPercent: number
  /** What would close the gap, one sentence each. */
  readonly wouldExplain: readonly string[]
}

/**
 * Multiplies printed macros out by every recognised method, each figure within the limits of its
 * rounding, and says how far the printed energy is from them.
 * @param slack kcal that may lie between the limits
 */
export function energyGap(energy: Span, macros: MacroSpans, slack: number): EnergyGap {
  const byMethod = energyOfMacros(macros).filter(({method}) => method !== 'energyEuKilojoules')
  const general = energyBy('energyGeneral', macros)
  const fitting = byMethod.find((one) => spanGap(one.energy, energy) <= slack)
  const gapKcal = energy.value - general.value
  return {
    general,
    byMethod,
    ...(fitting && {fits: fitting.method}),
    gapPercent: energy.value > 0 ? (100 * Math.abs(gapKcal)) / energy.value : 0,
    wouldExplain: wouldExplain(gapKcal),
  }
}

/**
 * Grams of one component that would close the gap alone. What a gram is worth against the 4 kcal
 * of general carbohydrate: fibre and polyols less, alcohol (which the macros leave out) 7 more.
 */
function wouldExplain(gapKcal: number): readonly string[] {
  const grams = (kcalEach: number): string => `${roundedText(Math.abs(gapKcal) / kcalEach, 1)} g`
  return gapKcal < 0
    ? [
        `The stated energy is lower: ${grams(4)} of insoluble fibre (0 kcal/g), ${grams(2)} of other fibre (2 kcal/g) or ${grams(1.6)} of polyols (2.4 kcal/g) within the carbohydrate would explain it.`,
      ]
    : [`The stated energy is higher: ${grams(7)} of alcohol (7 kcal/g) would explain it.`]
}
