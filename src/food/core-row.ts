import type {Allergen, FoodState, Origin, Trait} from './food.ts'

/** One food of the core table, as the aisle files write it. */
export interface CoreRow {
  /** Nutrient Database number in USDA SR28. */
  readonly ndb: string
  readonly name: string
  readonly also?: readonly string[]
  readonly from: readonly Origin[]
  readonly state: FoodState
  readonly traits?: readonly Trait[]
  readonly contains?: readonly Allergen[]
  /** Grams, edible portion, of one measure. */
  readonly measures?: Readonly<Record<string, number>>
  /** Share of the purchased weight thrown away, 0–100. */
  readonly refusePercent?: number
  /** Specific energy factors for protein, fat and carbohydrate, kcal/g; null where the release has none. */
  readonly factors?: readonly [number | null, number | null, number | null]
  /** Per 100 g edible portion, in the order of `coreColumns`; null is unknown. */
  readonly figures: readonly (number | null)[]
}

/** What the numbers of `figures` are, with the unit step the release prints them to. */
export const coreColumns = [
  {nutrient: 'water', increment: 0.01},
  {nutrient: 'energy', increment: 1},
  {nutrient: 'protein', increment: 0.01},
  {nutrient: 'fat', increment: 0.01},
  {nutrient: 'saturated', increment: 0.001},
  {nutrient: 'trans', increment: 0.001},
  {nutrient: 'cholesterol', increment: 1},
  {nutrient: 'carbohydrate', increment: 0.01},
  {nutrient: 'fibre', increment: 0.1},
  {nutrient: 'sugars', increment: 0.01},
  {nutrient: 'addedSugars', increment: 0.1},
  {nutrient: 'alcohol', increment: 0.1},
  {nutrient: 'ash', increment: 0.01},
  {nutrient: 'sodium', increment: 1},
  {nutrient: 'potassium', increment: 1},
  {nutrient: 'calcium', increment: 1},
  {nutrient: 'iron', increment: 0.01},
  {nutrient: 'vitaminD', increment: 0.1},
] as const
