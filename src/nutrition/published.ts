import type {Settings} from '../cookbook/cookbook.ts'
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

/** What of the settings decides which figure stands under a name. */
type Choice = Pick<Settings, 'carbohydrate' | 'energyMethod'>

/** The internal nutrient that the cookbook publishes under a name. */
export function internalNutrient(
  nutrient: PublishedNutrient,
  {carbohydrate, energyMethod}: Choice,
): Nutrient {
  if (nutrient === 'energy') return energyNutrient[energyMethod ?? 'foods']
  return nutrient === 'carbohydrate' && carbohydrate === 'available'
    ? 'availableCarbohydrate'
    : nutrient
}

/** The figure a page shows for a nutrient: its carbohydrate and energy are those the cookbook chose. */
export function publishedFigure<B extends Basis>(
  figures: Figures<B>,
  nutrient: PublishedNutrient,
  choice: Choice,
): Figure {
  return figures[internalNutrient(nutrient, choice)]
}
