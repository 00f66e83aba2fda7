import type {Settings} from '../cookbook/cookbook.ts'
import type {Basis, Figure, Figures} from '../food/figures.ts'
import type {Nutrient, PublishedNutrient} from '../food/nutrients.ts'

/** The figures every recipe publishes, in the order a reader who logs them looks. */
export const mainNutrients = [
  'energy',
  'protein',
  'carbohydrate',
  'fat',
] as const satisfies readonly PublishedNutrient[]

/** The internal nutrient that the cookbook publishes under a name. */
export function internalNutrient(
  nutrient: PublishedNutrient,
  settings: Pick<Settings, 'carbohydrate'>,
): Nutrient {
  return nutrient === 'carbohydrate' && settings.carbohydrate === 'available'
    ? 'availableCarbohydrate'
    : nutrient
}

/** The figure a page shows for a nutrient: its carbohydrate is the one the cookbook chose. */
export function publishedFigure<B extends Basis>(
  figures: Figures<B>,
  nutrient: PublishedNutrient,
  settings: Pick<Settings, 'carbohydrate'>,
): Figure {
  return figures[internalNutrient(nutrient, settings)]
}
