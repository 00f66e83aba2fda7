import {type EnergyMethod, energyMethods} from '../cookbook/energy-method.ts'
import type {Basis, Figure, Figures} from '../food/figures.ts'
import {kilojoulesPerKilocalorie, type Nutrient} from '../food/nutrients.ts'
import {scaled} from '../units/uncertain.ts'

/** The energy, in kcal, that each method gives. */
export const energyNutrient = {
  foods: 'energy',
  general: 'energyGeneral',
  digestible: 'energyDigestible',
  eu: 'energyEu',
} as const satisfies Readonly<Record<EnergyMethod, Nutrient>>

export type EnergyNutrient = (typeof energyNutrient)[EnergyMethod]

/**
 * An energy in kJ: the EU's from the kJ column of its own factors (Regulation (EU) 1169/2011
 * Annex XIV), which is no fixed multiple of the kcal column; any other × 4.184.
 */
export function kilojoules(figures: Figures<Basis>, energy: EnergyNutrient): Figure {
  if (energy === 'energyEu') return figures.energyEuKilojoules
  const {missing} = figures[energy]
  return {...scaled(figures[energy], kilojoulesPerKilocalorie), missing}
}

/** The method that gives an energy; undefined for what is no energy in kcal. */
export function methodOf(nutrient: Nutrient): EnergyMethod | undefined {
  return energyMethods.find((method) => energyNutrient[method] === nutrient)
}
