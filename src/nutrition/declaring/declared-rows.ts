import type {LabelRules} from '../../food/label-rules.ts'
import type {Nutrient} from '../../food/nutrients.ts'

/** What either law has a line for. */
export type DeclaredNutrient = Exclude<
  Nutrient,
  'alcohol' | 'water' | 'energyGeneral' | 'energyDigestible' | 'energyEu'
>

/** A nutrient's line in a declaration. */
export interface RowPlan {
  readonly nutrient: DeclaredNutrient
  /** How often it is "of which": 1 for sugars, 2 for added sugars. */
  readonly depth: 0 | 1 | 2
  /** Whether the line may be left out: where there is nothing to tell, or too little. */
  readonly isWhenPresent?: true
}

/**
 * The nutrients a law declares, in its order, energy apart.
 * EU: Regulation (EU) 1169/2011 Annex XV; carbohydrate without fibre, polyols where there are any,
 * vitamins and minerals only in significant amounts (Annex XIII part A point 2).
 * US: 21 CFR 101.9(c)(2)–(8), the mandatory lines of the rule of 2016; order from memory.
 */
export const declaredRows: Readonly<Record<LabelRules, readonly RowPlan[]>> = {
  eu: [
    {nutrient: 'fat', depth: 0},
    {nutrient: 'saturated', depth: 1},
    {nutrient: 'availableCarbohydrate', depth: 0},
    {nutrient: 'sugars', depth: 1},
    {nutrient: 'polyols', depth: 1, isWhenPresent: true},
    {nutrient: 'fibre', depth: 0},
    {nutrient: 'protein', depth: 0},
    {nutrient: 'salt', depth: 0},
    {nutrient: 'vitaminD', depth: 0, isWhenPresent: true},
    {nutrient: 'potassium', depth: 0, isWhenPresent: true},
    {nutrient: 'calcium', depth: 0, isWhenPresent: true},
    {nutrient: 'iron', depth: 0, isWhenPresent: true},
  ],
  us: [
    {nutrient: 'fat', depth: 0},
    {nutrient: 'saturated', depth: 1},
    {nutrient: 'trans', depth: 1},
    {nutrient: 'cholesterol', depth: 0},
    {nutrient: 'sodium', depth: 0},
    {nutrient: 'carbohydrate', depth: 0},
    {nutrient: 'fibre', depth: 1},
    {nutrient: 'sugars', depth: 1},
    {nutrient: 'addedSugars', depth: 2},
    {nutrient: 'polyols', depth: 1, isWhenPresent: true},
    {nutrient: 'protein', depth: 0},
    {nutrient: 'vitaminD', depth: 0},
    {nutrient: 'calcium', depth: 0},
    {nutrient: 'iron', depth: 0},
    {nutrient: 'potassium', depth: 0},
  ],
}

/**
 * Share of the nutrient reference value in 100 g from which a vitamin or mineral may stand in an EU
 * table: Regulation (EU) 1169/2011 Annex XIII part A point 2, foods other than drinks.
 */
export const significantRatio = 0.15
