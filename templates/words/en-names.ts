import type {Verdict} from '../../src/check/verdict.ts'
import type {ToleranceName} from '../../src/cookbook/cookbook.ts'
import type {Severity} from '../../src/cookbook/problem.ts'
import type {Basis} from '../../src/food/figures.ts'
import type {Aisle} from '../../src/food/food.ts'
import type {PublishedNutrient} from '../../src/food/nutrients.ts'

/** English names of the things that data has keys for: nutrients, verdicts, aisles. */

export const nutrient: Readonly<Record<PublishedNutrient, string>> = {
  energy: 'Energy',
  protein: 'Protein',
  fat: 'Fat',
  saturated: 'Saturated fat',
  trans: 'Trans fat',
  cholesterol: 'Cholesterol',
  // A soft hyphen, for the narrow columns of a phone.
  carbohydrate: 'Carbo\u00adhydrate',
  fibre: 'Fibre',
  sugars: 'Sugars',
  addedSugars: 'Added sugars',
  polyols: 'Polyols',
  alcohol: 'Alcohol',
  salt: 'Salt',
  sodium: 'Sodium',
  potassium: 'Potassium',
  calcium: 'Calcium',
  iron: 'Iron',
  vitaminD: 'Vitamin D',
  water: 'Water',
}

/** The names of what stands below the nutrient it is part of. */
export const nutrientPart: Readonly<Partial<Record<PublishedNutrient, string>>> = {
  saturated: 'of which saturated',
  trans: 'of which trans',
  sugars: 'of which sugars',
  addedSugars: 'of which added',
}

/** The same names in running text. */
export const nutrientName: Readonly<Record<PublishedNutrient, string>> = {
  energy: 'energy',
  protein: 'protein',
  fat: 'fat',
  saturated: 'saturated fat',
  trans: 'trans fat',
  cholesterol: 'cholesterol',
  carbohydrate: 'carbohydrate',
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

export const basis: Readonly<Record<Basis, string>> = {
  serving: 'one serving',
  '100 g': '100 g',
  batch: 'whole batch',
}

export const verdict: Readonly<Record<Verdict, string>> = {
  agrees: 'agrees',
  tolerated: 'within tolerance',
  drift: 'does not follow',
  unknown: 'cannot be told',
}

export const verdictMeaning: Readonly<Record<Verdict, string>> = {
  agrees: 'the stated figure lies within the uncertainty of the computed one',
  tolerated: 'it lies outside the uncertainty, but within the tolerance this cookbook allows',
  drift: 'it lies outside both; a page with such a figure is not published',
  unknown: 'a food lacks the figure, so the computed one is only a lower bound',
}

export const severity: Readonly<Record<Severity, string>> = {
  error: 'stops the build',
  warning: 'warns',
  note: 'notes',
}

export const aisle: Readonly<Record<Aisle, string>> = {
  vegetables: 'Vegetables',
  fruit: 'Fruit',
  'herbs and spices': 'Herbs and spices',
  dairy: 'Dairy',
  eggs: 'Eggs',
  meat: 'Meat',
  poultry: 'Poultry',
  fish: 'Fish',
  fats: 'Oils and fats',
  breads: 'Bread',
  grains: 'Grains and pasta',
  pulses: 'Pulses',
  baking: 'Baking',
  sweeteners: 'Sugar and sweeteners',
  nuts: 'Nuts and seeds',
  condiments: 'Condiments',
  prepared: 'Prepared foods',
  drinks: 'Drinks',
  other: 'Everything else',
}

export const tolerance: Readonly<Record<ToleranceName, string>> = {
  household: 'that of a household kitchen',
  us: 'that of US labelling (21 CFR 101.9(g))',
  'us both ways': 'that of US labelling (21 CFR 101.9(g)), on both sides',
  eu: 'that of the EU guidance of December 2012',
  strict: 'none: only the uncertainty counts',
}
