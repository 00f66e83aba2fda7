import type {PublishedNutrient} from '../food/nutrients.ts'
import {type OptionalField, optional} from './yaml/collection-readers.ts'
import type {Reader} from './yaml/reader.ts'

/**
 * The nutrients as keys, by the names messages and pages use.
 * @param reader of what stands behind the key of one nutrient
 */
export function nutrientFields<T>(reader: (nutrient: PublishedNutrient) => Reader<T>) {
  const field = (nutrient: PublishedNutrient, description: string): OptionalField<T> =>
    optional(reader(nutrient), description)
  return {
    energy: field('energy', 'Energy, in kcal or kJ'),
    protein: field('protein', 'Protein, in g'),
    fat: field('fat', 'Fat, in g'),
    saturated: field('saturated', 'Saturated fat, in g'),
    trans: field('trans', 'Trans fat, in g'),
    cholesterol: field('cholesterol', 'Cholesterol, in mg'),
    carbohydrate: field(
      'carbohydrate',
      'Carbohydrate, in g: with fibre or without, as cookbook.yaml says',
    ),
    fibre: field('fibre', 'Fibre, in g'),
    sugars: field('sugars', 'Sugars, in g'),
    'added sugars': field('addedSugars', 'Added sugars, in g'),
    polyols: field('polyols', 'Polyols (sugar alcohols), in g'),
    alcohol: field('alcohol', 'Alcohol, in g'),
    salt: field('salt', 'Salt, in g: sodium × 2.5'),
    sodium: field('sodium', 'Sodium, in mg'),
    potassium: field('potassium', 'Potassium, in mg'),
    calcium: field('calcium', 'Calcium, in mg'),
    iron: field('iron', 'Iron, in mg'),
    'vitamin D': field('vitaminD', 'Vitamin D, in µg'),
    water: field('water', 'Water, in g'),
  }
}
