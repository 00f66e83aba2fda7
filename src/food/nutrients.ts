/** The nutrients a figure can be about, in the order pages list them, with unit and name. */

/**
 * Internal names. `carbohydrate` is total carbohydrate by difference, fibre included (US);
 * `availableCarbohydrate` is without fibre (EU 1169/2011 Annex I). A cookbook publishes one of
 * them as its carbohydrate.
 */
export const nutrients = [
  'energy',
  'protein',
  'fat',
  'saturated',
  'trans',
  'cholesterol',
  'carbohydrate',
  'availableCarbohydrate',
  'fibre',
  'sugars',
  'addedSugars',
  'polyols',
  'alcohol',
  'salt',
  'sodium',
  'potassium',
  'calcium',
  'iron',
  'vitaminD',
  'water',
] as const

export type Nutrient = (typeof nutrients)[number]

/** The nutrients as pages and JSON name them: one carbohydrate, the one the cookbook publishes. */
export type PublishedNutrient = Exclude<Nutrient, 'availableCarbohydrate'>

export const publishedNutrients: readonly PublishedNutrient[] = nutrients.filter(
  (nutrient) => nutrient !== 'availableCarbohydrate',
)

export type NutrientUnit = 'kcal' | 'g' | 'mg' | 'µg'

/** The unit every figure of the nutrient has inside the program. */
export const nutrientUnit: Readonly<Record<Nutrient, NutrientUnit>> = {
  energy: 'kcal',
  protein: 'g',
  fat: 'g',
  saturated: 'g',
  trans: 'g',
  cholesterol: 'mg',
  carbohydrate: 'g',
  availableCarbohydrate: 'g',
  fibre: 'g',
  sugars: 'g',
  addedSugars: 'g',
  polyols: 'g',
  alcohol: 'g',
  salt: 'g',
  sodium: 'mg',
  potassium: 'mg',
  calcium: 'mg',
  iron: 'mg',
  vitaminD: 'µg',
  water: 'g',
}

/** The nutrient in a writer's words, as messages and front matter have it. */
export const nutrientName: Readonly<Record<Nutrient, string>> = {
  energy: 'energy',
  protein: 'protein',
  fat: 'fat',
  saturated: 'saturated',
  trans: 'trans',
  cholesterol: 'cholesterol',
  carbohydrate: 'carbohydrate',
  availableCarbohydrate: 'carbohydrate without fibre',
  fibre: 'fibre',
  sugars: 'sugars',
  addedSugars: 'added sugars',
  polyols: 'polyols',
  alcohol: 'alcohol',
  salt: 'salt',
  sodium: 'sodium',
  potassium: 'potassium',
  calcium: 'calcium',
  iron: 'iron',
  vitaminD: 'vitamin D',
  water: 'water',
}

/** Salt equivalent of sodium: Regulation (EU) 1169/2011 Annex I point 11, salt = sodium × 2.5. */
export const saltGramsPerSodiumMilligram = 2.5 / 1000

/** Thermochemical calorie: 1 kcal = 4.184 kJ exactly. */
export const kilojoulesPerKilocalorie = 4.184
