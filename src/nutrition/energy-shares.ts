import {type Basis, type Figures, isComplete} from '../food/figures.ts'
import {euFactors} from '../food/method-factors.ts'

export type EnergySource = 'protein' | 'carbohydrate' | 'fat' | 'fibre' | 'polyols' | 'alcohol'

export interface EnergyShare {
  readonly source: EnergySource
  /** 0–1; the shares add up to 1. */
  readonly ratio: number
}

/**
 * Shares of the energy by the general factors (EU 1169/2011 Annex XIV, which names fibre and
 * polyols too). Shares show proportions; the energy itself comes from the foods' own figures.
 * @returns undefined where protein, fat or carbohydrate is not fully known, or there is no energy
 */
export function energyShares(figures: Figures<Basis>): readonly EnergyShare[] | undefined {
  const {protein, fat, carbohydrate, availableCarbohydrate, fibre, polyols, alcohol} = figures
  if (![protein, fat, carbohydrate].every(isComplete)) return undefined
  // Where a food's fibre is unknown, fibre cannot be told from the rest of the carbohydrate.
  const isFibreKnown = isComplete(availableCarbohydrate) && isComplete(fibre)
  const digestible = isFibreKnown ? availableCarbohydrate : carbohydrate
  const kcal: readonly (readonly [EnergySource, number])[] = [
    ['protein', protein.value * euFactors.protein],
    ['carbohydrate', Math.max(0, digestible.value - polyols.value) * euFactors.carbohydrate],
    ['fat', fat.value * euFactors.fat],
    ['fibre', isFibreKnown ? fibre.value * (euFactors.fibre?.value ?? 0) : 0],
    ['polyols', polyols.value * (euFactors.polyols?.value ?? 0)],
    ['alcohol', alcohol.value * euFactors.ethanol],
  ]
  const total = kcal.reduce((sum, [, part]) => sum + part, 0)
  if (total <= 0) return undefined
  return kcal
    .filter(([, part]) => part > 0)
    .map(([source, part]) => ({source, ratio: part / total}))
}
