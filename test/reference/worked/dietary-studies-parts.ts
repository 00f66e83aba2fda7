import type {WorkedRecipe} from './worked-recipe.ts'

/**
 * USDA Food and Nutrient Database for Dietary Studies (FNDDS) 2015-2016, At A Glance files: FNDDS
 * Ingredients, FNDDS Nutrient Values, Portions and Weights (2018), by food code: drinks, mixes,
 * and what other rows use.
 */
export const dietaryStudiesParts: readonly WorkedRecipe[] = [
  {
    row: '93301200',
    title: 'Pina Colada',
    finished: {grams: 238},
    stated: {energy: 151, protein: 0.36, fat: 2.13, carbohydrate: 19.5},
    ingredients: [
      ['56 g', 'usda/14037', 'alcoholic beverage, distilled'],
      ['30 g', 'usda/12116', 'nuts, coconut cream'],
      ['139.5 g', 'usda/09273', 'pineapple juice, canned or bottled'],
      ['12.5 g', 'usda/19335', 'sugars, granulated'],
    ],
  },
  {
    row: '11531500',
    title: 'Eggnog, lowfat / light',
    finished: {grams: 1210.333},
    stated: {energy: 74, protein: 4.74, fat: 3.17, carbohydrate: 6.51},
    ingredients: [
      ['976 g', 'usda/01174', 'milk, reduced fat'],
      ['200 g', 'usda/01123', 'egg, whole'],
      ['30 g', 'usda/19336', 'sugars, powdered'],
      ['4.333 g', 'usda/02052', 'vanilla extract, imitation'],
    ],
  },
  {
    row: '11100000',
    title: 'Milk, NFS',
    finished: {grams: 100},
    stated: {energy: 51, protein: 3.27, fat: 2.04, carbohydrate: 4.85},
    ingredients: [
      ['35 g', 'usda/01077', 'milk, whole'],
      ['37 g', 'sr28/01079', 'milk, reduced fat'],
      ['17 g', 'sr28/01082', 'milk, lowfat'],
      ['11 g', 'sr28/01085', 'milk, nonfat'],
    ],
  },
  {
    row: '81102010',
    title: 'Margarine, stick, salted',
    finished: {grams: 100},
    stated: {energy: 717, protein: 0.16, fat: 80.71, carbohydrate: 0.7},
    ingredients: [
      ['85 g', 'usda/04610', 'margarine, regular'],
      ['15 g', 'sr28/04691', 'margarine, regular'],
    ],
  },
  {
    row: '82101000',
    title: 'Vegetable oil, NFS',
    finished: {grams: 100},
    stated: {energy: 886, protein: 0, fat: 100, carbohydrate: 0},
    ingredients: [
      ['50 g', 'usda/04044', 'oil, soybean'],
      ['10 g', 'usda/04518', 'oil, corn'],
      ['15 g', 'usda/04582', 'oil, canola'],
      ['25 g', 'usda/04053', 'oil, olive'],
    ],
  },
  {
    row: '81100000',
    title: 'Table fat, NFS',
    finished: {grams: 100},
    stated: {energy: 643, protein: 0.58, fat: 72.59, carbohydrate: 0.38},
    ingredients: [
      ['25 g', 'usda/04613', 'margarine-like, vegetable oil spre'],
      ['60 g', 'usda/01001', 'butter, salted'],
      ['15 g', 'sr28/04694', 'margarine-like, vegetable oil spre'],
    ],
  },
  {
    row: '81200100',
    title: 'Oil or table fat, NFS',
    finished: {grams: 100},
    stated: {energy: 764, protein: 0.29, fat: 86.3, carbohydrate: 0.19},
    ingredients: [
      ['50 g', '81100000', 'table fat, nfs'],
      ['50 g', '82101000', 'vegetable oil, nfs'],
    ],
  },
  {
    row: '21500100',
    title: 'Ground beef, cooked',
    finished: {grams: 100.84},
    stated: {energy: 260, protein: 25.54, fat: 16.82, carbohydrate: 0},
    ingredients: [
      ['40 g', 'usda/23578', 'beef, ground'],
      ['30 g', 'usda/23573', 'beef, ground'],
      ['15 g', 'usda/23568', 'beef, ground'],
      ['15 g', 'usda/23563', 'beef, ground'],
      ['0.84 g', 'usda/02047', 'salt, table'],
    ],
  },
  {
    row: '74410110',
    title: 'Puerto Rican seasoning with ham',
    finished: {grams: 657.342},
    stated: {energy: 258, protein: 4.02, fat: 24.29, carbohydrate: 7.35},
    ingredients: [
      ['56.7 g', 'sr28/10141', 'pork, cured'],
      ['226.8 g', 'usda/11333', 'peppers, sweet'],
      ['182 g', 'usda/11529', 'tomatoes, red'],
      ['226.8 g', 'usda/11282', 'onions, raw'],
      ['18 g', 'usda/11215', 'garlic, raw'],
      ['108 g', 'usda/04053', 'oil, olive'],
      ['8.8 g', 'usda/11165', 'coriander leaves, raw'],
      ['4.5 g', 'usda/02027', 'spices, oregano'],
      ['56.7 g', 'usda/10165', 'pork, cured'],
    ],
  },
  {
    row: '93201000',
    title: 'Cordial or liqueur',
    finished: {grams: 100},
    stated: {energy: 371, protein: 0, fat: 0.3, carbohydrate: 41.6},
    ingredients: [['100 g', 'usda/14034', 'alcoholic beverage, creme de menth']],
  },
]
