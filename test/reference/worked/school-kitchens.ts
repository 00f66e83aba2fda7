import type {WorkedRecipe} from './worked-recipe.ts'

/**
 * USDA standardized recipes for schools, Child Nutrition Recipe Box (Institute of Child
 * Nutrition), 50 servings, undated.
 */
export const schoolKitchens: readonly WorkedRecipe[] = [
  {
    row: 'Baking Powder Biscuits, dry milk by its measure',
    title: 'Baking powder biscuits (dry milk by stated measure)',
    finished: {servings: 50},
    stated: {energy: 153, protein: 6, fat: 3, carbohydrate: 27},
    ingredients: [
      ['1757.67 g', 'usda/20080', 'whole-wheat flour'],
      ['85 g', 'sr28/01092', 'instant nonfat dry milk'],
      ['1 1/2 oz', 'usda/18369', 'baking powder'],
      ['9 g', 'usda/02047', 'salt'],
      ['2 lb', 'usda/01055', 'low-fat sour cream'],
      ['829.5 g', 'usda/14411', 'water'],
    ],
  },
]
