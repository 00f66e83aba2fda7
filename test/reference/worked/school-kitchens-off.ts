import type {OffRecipe} from './worked-recipe.ts'

/**
 * USDA standardized recipes for schools, Child Nutrition Recipe Box (Institute of Child
 * Nutrition), undated; Mississippi Recipes for Success, MRS 1114 (2015), MRS 5695 (2021), MRS 8265
 * (2023).
 */
export const schoolKitchensOff: readonly OffRecipe[] = [
  {
    row: 'Baking Powder Biscuits, dry milk by its weight',
    title: 'Baking powder biscuits (dry milk by stated weight)',
    finished: {servings: 50},
    stated: {energy: 153, protein: 6, fat: 3, carbohydrate: 27},
    gapPercent: {energy: 7.7, protein: 19.5, carbohydrate: 8.4},
    because: 'the recipe contradicts itself: 10 oz of dry milk beside 1 1/4 cups (85 g)',
    ingredients: [
      ['1757.67 g', 'usda/20080', 'whole-wheat flour'],
      ['10 oz', 'sr28/01092', 'instant nonfat dry milk'],
      ['1 1/2 oz', 'usda/18369', 'baking powder'],
      ['9 g', 'usda/02047', 'salt'],
      ['2 lb', 'usda/01055', 'low-fat sour cream'],
      ['829.5 g', 'usda/14411', 'water'],
    ],
  },
  {
    row: 'Cream of Potato Soup',
    title: 'Cream of potato soup',
    finished: {servings: 50},
    stated: {energy: 127, protein: 5, fat: 3, carbohydrate: 20},
    gapPercent: {energy: 11.7, fat: 63.2},
    because: 'the margarine was a lower-fat spread',
    ingredients: [
      ['8 lb', 'usda/11355', 'potatoes, red or white'],
      ['2839 g', 'usda/14411', 'water'],
      ['6 g', 'usda/02047', 'salt'],
      ['8 oz', 'usda/04610', 'margarine, trans-fat free'],
      ['5 oz', 'usda/20080', 'flour, whole-wheat'],
      ['4514 g', 'sr28/01082', 'milk, low-fat'],
      ['12 g', 'usda/02047', 'salt'],
      ['4.6 g', 'usda/02030', 'pepper'],
      ['15 oz', 'usda/11178', 'corn, frozen'],
      ['6 oz', 'usda/11291', 'green onions'],
      ['474 g', 'usda/14411', 'water'],
      ['40 g', 'usda/06080', 'chicken base'],
    ],
  },
  {
    row: 'MRS 8265',
    title: 'Cheese sauce (made)',
    finished: {servings: 64},
    stated: {energy: 47, protein: 1.88, fat: 3.17, carbohydrate: 2.42},
    gapPercent: {energy: 15.7, fat: 21.7, carbohydrate: 29.9},
    because: 'the cup of flour or the milk was weighed otherwise, a margarine with less fat',
    ingredients: [
      ['6 oz', 'usda/04610', 'margarine, bulk'],
      ['125 g', 'usda/20081', 'flour, all purpose'],
      ['1952 g', 'sr28/01079', 'milk, reduced fat'],
      ['1/2 lb', 'sr28/01042', 'cheese, american'],
    ],
  },
  {
    row: 'MRS 5695',
    title: 'Creamy coleslaw',
    finished: {servings: 100},
    stated: {energy: 74, protein: 0.74, fat: 3.14, carbohydrate: 11.71},
    gapPercent: {energy: -13.5, protein: -17, fat: -34.9},
    because: 'light mayonnaise is not one food: the one used was fatter',
    ingredients: [
      ['178.5 g', 'usda/02053', 'vinegar, white'],
      ['800 g', 'usda/19335', 'sugar'],
      ['900 g', 'usda/04641', 'mayonnaise, reduced calorie'],
      ['10 lb', 'usda/11109', 'slaw mix, shredded'],
    ],
  },
  {
    row: 'MRS 1114',
    title: 'Confetti coleslaw',
    finished: {servings: 100},
    stated: {energy: 22, protein: 0.74, fat: 0.15, carbohydrate: 5.65},
    gapPercent: {protein: -20.9, fat: -68.8, carbohydrate: -17.4},
    because: 'the cabbage mix holds carrot, and the dressing is partly drained',
    ingredients: [
      ['10 lb', 'usda/11109', 'slaw mix, shredded'],
      ['1190 g', 'usda/02053', 'vinegar, white'],
      ['200 g', 'usda/19335', 'sugar'],
      ['18 g', 'usda/02047', 'celery salt'],
      ['18 g', 'usda/02047', 'salt'],
      ['4.6 g', 'usda/02030', 'pepper'],
    ],
  },
]
