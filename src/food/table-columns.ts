import type {Nutrient} from './nutrients.ts'

/** Columns of a brought table behind `id` and `name`; figures are per 100 g edible portion. */
export const tableColumns = [
  'group',
  'refuse_pct',
  'serving_g',
  'serving_ml',
  'water_g',
  'energy_kcal',
  'protein_g',
  'fat_g',
  'saturated_g',
  'trans_g',
  'cholesterol_mg',
  'carbohydrate_g',
  'fibre_g',
  'sugars_g',
  'added_sugars_g',
  'polyols_g',
  'alcohol_g',
  'ash_g',
  'sodium_mg',
  'potassium_mg',
  'calcium_mg',
  'iron_mg',
  'vitamin_d_ug',
] as const

export type TableColumn = (typeof tableColumns)[number]

/** The column of a nutrient; salt and carbohydrate without fibre follow from others. */
export const columnOfNutrient: Readonly<Partial<Record<Nutrient, TableColumn>>> = {
  water: 'water_g',
  energy: 'energy_kcal',
  protein: 'protein_g',
  fat: 'fat_g',
  saturated: 'saturated_g',
  trans: 'trans_g',
  cholesterol: 'cholesterol_mg',
  carbohydrate: 'carbohydrate_g',
  fibre: 'fibre_g',
  sugars: 'sugars_g',
  addedSugars: 'added_sugars_g',
  polyols: 'polyols_g',
  alcohol: 'alcohol_g',
  sodium: 'sodium_mg',
  potassium: 'potassium_mg',
  calcium: 'calcium_mg',
  iron: 'iron_mg',
  vitaminD: 'vitamin_d_ug',
}

export type FigureColumn = Exclude<TableColumn, 'group'>
