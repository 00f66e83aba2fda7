import type {Position} from 'unist'
import type {Figures} from './figures.ts'
import type {Label} from './label.ts'

/** The living thing (or mineral) a food is made from: what diets and cautions ask about. */
export const origins = [
  'beef',
  'pork',
  'lamb',
  'veal',
  'game',
  'poultry',
  'fish',
  'crustacean',
  'mollusc',
  'egg',
  'dairy',
  'gelatine',
  'honey',
  'plant',
  'fungus',
  'mineral',
] as const

export type Origin = (typeof origins)[number]

/** How the food comes: `raw` is uncooked or fresh, `ready` is eaten or used as it is. */
export const foodStates = ['raw', 'cooked', 'dry', 'canned', 'ready'] as const

export type FoodState = (typeof foodStates)[number]

export const traits = [
  'ground',
  'flour',
  'yeast',
  'leavening',
  'sugar',
  'sweetener',
  'salt',
  'fat',
  'alcohol',
  'liquid',
  'rice',
  'kidney bean',
  'garlic',
  'cured',
  'smoked',
  'stock',
  'offal',
  'frozen',
  'tomato',
  'protein powder',
  'nut',
  'herb',
  'spice',
  'juice',
] as const

export type Trait = (typeof traits)[number]

/** A substance some law makes the seller declare; src/food/allergens.ts says which law groups it how. */
export const allergens = [
  'wheat',
  'rye',
  'barley',
  'oats',
  'milk',
  'egg',
  'fish',
  'crustacean',
  'mollusc',
  'peanut',
  'soy',
  'sesame',
  'celery',
  'mustard',
  'lupin',
  'sulphites',
  'almond',
  'hazelnut',
  'walnut',
  'cashew',
  'pecan',
  'brazil nut',
  'pistachio',
  'macadamia',
  'pine nut',
] as const

export type Allergen = (typeof allergens)[number]

/** The shelf a shopper walks to; also the file of the core table the food stands in. */
export const aisles = [
  'vegetables',
  'fruit',
  'herbs and spices',
  'dairy',
  'eggs',
  'meat',
  'poultry',
  'fish',
  'fats',
  'breads',
  'grains',
  'pulses',
  'baking',
  'sweeteners',
  'nuts',
  'condiments',
  'prepared',
  'drinks',
  'other',
] as const

export type Aisle = (typeof aisles)[number]

/** Specific energy factors, kcal per gram. Source of the method: Merrill & Watt, USDA AH-74 (1973). */
export interface EnergyFactors {
  readonly protein: number | null
  readonly fat: number | null
  readonly carbohydrate: number | null
}

/** Where a food's figures come from, for the page that lists sources. */
export type Provenance =
  | {readonly kind: 'table'; readonly table: string; readonly row: string}
  | {readonly kind: 'regulation'; readonly document: string}
  | {readonly kind: 'label'; readonly file: string; readonly place: Position}

/** A pack as it is sold. */
export interface Pack {
  readonly grams: number
  /** In the cookbook's currency; absent when the writer gave none. */
  readonly price?: number
}

/** Something with a composition per 100 g edible portion. */
export interface Food {
  /** `usda/20081` for the core table, `<table>/<id>` for a brought one, `own/<name>` for a label. */
  readonly id: string
  readonly name: string
  readonly also: readonly string[]
  readonly aisle: Aisle
  readonly from: readonly Origin[]
  readonly state?: FoodState
  readonly traits: ReadonlySet<Trait>
  readonly contains: ReadonlySet<Allergen>
  readonly mayContain: ReadonlySet<Allergen>
  /** False where nobody has said which allergens the food holds (a brought table says nothing). */
  readonly allergensKnown: boolean
  /** Share of the purchased weight that is thrown away, 0 to below 1. */
  readonly refuseRatio: number
  /** Grams, edible portion, of one measure: `cup`, `tbsp`, `medium`, `clove` … */
  readonly measures: ReadonlyMap<string, number>
  /** Millilitres of those `measures` that the writer filled with their own cups and spoons; the table's are US customary. */
  readonly filledMillilitres?: ReadonlyMap<string, number>
  readonly factors?: EnergyFactors
  readonly per100g: Figures<'100 g'>
  /** The panel the figures were read from, as printed. */
  readonly label?: Label
  /** Grams per 100 g; only for checking that mass is conserved. */
  readonly ashGrams?: number
  readonly provenance: Provenance
  /** Where its name stands in foods.yaml; absent for a food that only a table has. */
  readonly named?: {readonly file: string; readonly place: Position}
  readonly sold?: Pack
}
