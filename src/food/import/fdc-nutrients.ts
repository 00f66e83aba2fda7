import type {FigureColumn} from '../table-columns.ts'

/** A nutrient of USDA FoodData Central downloads. */
export interface FdcNutrient {
  readonly column: FigureColumn
  /** As nutrient.csv has it. */
  readonly unit: 'KCAL' | 'G' | 'MG' | 'UG'
}

/**
 * By the id of nutrient.csv; of several for one column the first counts. Foundation foods have
 * their energy by Atwater factors, specific (2048) or general (2047), where 1008 is missing. All
 * ids from memory of the published download, seen on no copy of it.
 */
export const fdcNutrients: ReadonlyMap<string, FdcNutrient> = new Map([
  ['1008', {column: 'energy_kcal', unit: 'KCAL'}],
  ['2048', {column: 'energy_kcal', unit: 'KCAL'}],
  ['2047', {column: 'energy_kcal', unit: 'KCAL'}],
  ['1051', {column: 'water_g', unit: 'G'}],
  ['1003', {column: 'protein_g', unit: 'G'}],
  ['1004', {column: 'fat_g', unit: 'G'}],
  ['1258', {column: 'saturated_g', unit: 'G'}],
  ['1257', {column: 'trans_g', unit: 'G'}],
  ['1253', {column: 'cholesterol_mg', unit: 'MG'}],
  ['1005', {column: 'carbohydrate_g', unit: 'G'}],
  ['1079', {column: 'fibre_g', unit: 'G'}],
  ['2000', {column: 'sugars_g', unit: 'G'}],
  ['1063', {column: 'sugars_g', unit: 'G'}],
  ['1235', {column: 'added_sugars_g', unit: 'G'}],
  ['1086', {column: 'polyols_g', unit: 'G'}],
  ['1018', {column: 'alcohol_g', unit: 'G'}],
  ['1007', {column: 'ash_g', unit: 'G'}],
  ['1093', {column: 'sodium_mg', unit: 'MG'}],
  ['1092', {column: 'potassium_mg', unit: 'MG'}],
  ['1087', {column: 'calcium_mg', unit: 'MG'}],
  ['1089', {column: 'iron_mg', unit: 'MG'}],
  ['1114', {column: 'vitamin_d_ug', unit: 'UG'}],
])

/** Columns of the table that comes of it, in order. */
export const fdcColumns: readonly FigureColumn[] = [
  ...new Set(Array.from(fdcNutrients.values(), ({column}) => column)),
]
