/** The nutrients a figure can be about, in the order pages list them, with unit and name. */

/**
 * Internal names. `carbohydrate` is total carbohydrate by difference, fibre included (US);
 * `availableCarbohydrate` is without fibre (EU 1169/2011 Annex I). A cookbook publishes one of
 * them as its carbohydrate. `energy` is the food's own; the other energies are worked out from its
 * macros by the methods of src/food/method-energy.ts.
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
  'energyGeneral',
  'energyDigestible',
  'energyEu',
  'energyEuKilojoules',
] as const

export type Nutrient = (typeof nutrients)[number]

/** Energy by a method, where it is not the foods' own. */
export const methodEnergies = [
  'energyGeneral',
  'energyDigestible',
  'energyEu',
  'energyEuKilojoules',
] as const satisfies readonly Nutrient[]

export type MethodEnergy = (typeof methodEnergies)[number]

type Internal = 'availableCarbohydrate' | MethodEnergy

/** The nutrients as pages and JSON name them: one energy, and the carbohydrate that is published. */
export type PublishedNutrient = Exclude<Nutrient, Internal>

const internal: ReadonlySet<Nutrient> = new Set<Internal>([
  'availableCarbohydrate',
  ...methodEnergies,
])

export const publishedNutrients: readonly PublishedNutrient[] = nutrients.filter(
  (nutrient): nutrient is PublishedNutrient => !internal.has(nutrient),
)

export type NutrientUnit = 'kcal' | 'kJ' | 'g' | 'mg' | 'µg'

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
  energyGeneral: 'kcal',
  energyDigestible: 'kcal',
  energyEu: 'kcal',
  energyEuKilojoules: 'kJ',
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
  energyGeneral: 'energy by general factors',
  energyDigestible: 'energy with fibre and polyols at their own factors',
  energyEu: 'energy by the EU factors',
  energyEuKilojoules: 'energy by the EU factors',
}

/** Salt equivalent of sodium: Regulation (EU) 1169/2011 Annex I point 11, salt = sodium × 2.5. */
export const saltGramsPerSodiumMilligram = 2.5 / 1000

/** Thermochemical calorie: 1 kcal = 4.184 kJ exactly. */
export const kilojoulesPerKilocalorie = 4.184
