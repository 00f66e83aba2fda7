import type {Settings} from '../cookbook/cookbook.ts'
import type {Recipe} from '../cookbook/recipe.ts'
import {type EnergyNutrient, energyNutrient} from '../nutrition/energy-nutrient.ts'
import {askedEnergyMethod} from '../nutrition/published.ts'

type Energies = readonly [EnergyNutrient, ...EnergyNutrient[]]

const anyMethod: Energies = ['energy', 'energyGeneral', 'energyDigestible', 'energyEu']

/**
 * The energies a stated one may be held to: the method the recipe or the cookbook names, or else
 * every recognised one. 21 CFR 101.9(c)(1)(i) lets a publisher choose, and two honest methods
 * differ by a tenth for vegetables and fruit.
 */
export function energyNutrients(
  recipe: Recipe,
  settings: Pick<Settings, 'energyMethod'>,
): Energies {
  const method = askedEnergyMethod(settings, recipe)
  return method ? [energyNutrient[method]] : anyMethod
}
