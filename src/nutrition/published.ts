import type {Settings} from '../cookbook/cookbook.ts'
import type {EnergyMethod} from '../cookbook/energy-method.ts'
import type {Recipe} from '../cookbook/recipe.ts'
import type {Basis, Figure, Figures} from '../food/figures.ts'
import type {Nutrient, PublishedNutrient} from '../food/nutrients.ts'
import {energyNutrient} from './energy-nutrient.ts'

/** The figures every recipe publishes, in the order a reader who logs them looks. */
export const mainNutrients = [
  'energy',
  'protein',
  'carbohydrate',
  'fat',
] as const satisfies readonly PublishedNutrient[]

/** What decides which figure stands under a name; made by `publishedBy` alone. */
export interface Publishing extends Pick<Settings, 'carbohydrate'> {
  readonly energyMethod: EnergyMethod
}

/** Energy method that the recipe, or else the cookbook, asks for; undefined where neither does. */
export function askedEnergyMethod(
  settings: Pick<Settings, 'energyMethod'>,
  recipe: Pick<Recipe, 'energyMethod'> | undefined,
): EnergyMethod | undefined {
  return recipe?.energyMethod?.value ?? settings.energyMethod
}

/**
 * How the figures of a recipe are published, or with no recipe those of a food: energy is the
 * foods' own where nobody asks for a method.
 */
export function publishedBy(
  settings: Pick<Settings, 'carbohydrate' | 'energyMethod'>,
  recipe?: Pick<Recipe, 'energyMethod'>,
): Publishing {
  return {
    carbohydrate: settings.carbohydrate,
    energyMethod: askedEnergyMethod(settings, recipe) ?? 'foods',
  }
}

/** The internal nutrient that is published under a name. */
export function internalNutrient(
  nutrient: PublishedNutrient,
  {carbohydrate, energyMethod}: Publishing,
): Nutrient {
  if (nutrient === 'energy') return energyNutrient[energyMethod]
  return nutrient === 'carbohydrate' && carbohydrate === 'available'
    ? 'availableCarbohydrate'
    : nutrient
}

/** The figure a page shows for a nutrient: its carbohydrate and energy are those that were chosen. */
export function publishedFigure<B extends Basis>(
  figures: Figures<B>,
  nutrient: PublishedNutrient,
  publishing: Publishing,
): Figure {
  return figures[internalNutrient(nutrient, publishing)]
}
