import type {WorkedRecipe} from './worked-recipe.ts'

/**
 * USDA Food and Nutrient Database for Dietary Studies (FNDDS) 2015-2016, At A Glance files: FNDDS
 * Ingredients, FNDDS Nutrient Values, Portions and Weights (2018), by food code: sauces, puddings
 * and bakes.
 */
export const dietaryStudiesBakes: readonly WorkedRecipe[] = [
  {
    row: '13210710',
    title: 'Pudding, cornmeal, milk, and molasses',
    finished: {grams: 1673.706},
    stated: {energy: 133, protein: 4.1, fat: 3.57, carbohydrate: 21.18},
    ingredients: [
      ['1464 g', 'usda/01077', 'milk, whole'],
      ['138 g', 'sr28/20022', 'cornmeal, degermed'],
      ['164 g', 'usda/19304', 'molasses'],
      ['50 g', 'usda/19335', 'sugars, granulated'],
      ['100 g', 'usda/01123', 'egg, whole'],
      ['1.8 g', 'usda/02021', 'spices, ginger'],
      ['6 g', 'usda/02047', 'salt, table'],
    ],
  },
  {
    row: '13210300',
    title: 'Custard',
    finished: {grams: 564.4206},
    stated: {energy: 95, protein: 5.05, fat: 3.45, carbohydrate: 10.96},
    ingredients: [
      ['488 g', '11100000', 'milk, nfs'],
      ['37.5 g', 'usda/19335', 'sugars, granulated'],
      ['100 g', 'usda/01123', 'egg, whole'],
      ['0.4 g', 'usda/02047', 'salt, table'],
      ['1.234 g', 'sr28/14429', 'water, tap'],
    ],
  },
  {
    row: '13411000',
    title: 'White sauce, milk sauce',
    finished: {grams: 260.55},
    stated: {energy: 147, protein: 3.7, fat: 10.76, carbohydrate: 9.19},
    ingredients: [
      ['15.625 g', 'usda/20081', 'wheat flour, white'],
      ['244 g', '11100000', 'milk, nfs'],
      ['28.375 g', '81102010', 'margarine, stick'],
      ['1.5 g', 'usda/02047', 'salt, table'],
    ],
  },
  {
    row: '14650100',
    title: 'Cheese sauce',
    finished: {grams: 175.7},
    stated: {energy: 160, protein: 3.24, fat: 13.02, carbohydrate: 7.66},
    ingredients: [
      ['15 g', 'usda/01025', 'cheese, monterey'],
      ['18 g', '82101000', 'vegetable oil, nfs'],
      ['17 g', 'usda/20081', 'wheat flour, white'],
      ['115 g', 'usda/14411', 'water, tap'],
      ['2.7 g', 'usda/02047', 'salt, table'],
      ['8 g', '11100000', 'milk, nfs'],
    ],
  },
  {
    row: '52202060',
    title: 'Cornbread',
    finished: {grams: 575.7075},
    stated: {energy: 283, protein: 6.42, fat: 9.42, carbohydrate: 42.74},
    ingredients: [
      ['125 g', 'usda/20081', 'wheat flour, white'],
      ['138 g', 'sr28/20022', 'cornmeal, degermed'],
      ['13.8 g', 'usda/18369', 'leavening agents, baking powder'],
      ['25 g', 'usda/19335', 'sugars, granulated'],
      ['3 g', 'usda/02047', 'salt, table'],
      ['50 g', 'usda/01123', 'egg, whole'],
      ['244 g', '11100000', 'milk, nfs'],
      ['40.875 g', '82101000', 'vegetable oil, nfs'],
    ],
  },
  {
    row: '52404060',
    title: 'Bread, pumpkin',
    finished: {grams: 1016.9216},
    stated: {energy: 300, protein: 4.84, fat: 12.45, carbohydrate: 43.08},
    ingredients: [
      ['250 g', 'usda/20081', 'wheat flour, white'],
      ['13.8 g', 'usda/18369', 'leavening agents, baking powder'],
      ['3 g', 'usda/02047', 'salt, table'],
      ['100 g', 'usda/01123', 'egg, whole'],
      ['244 g', '11100000', 'milk, nfs'],
      ['146.674 g', 'usda/19334', 'sugars, brown'],
      ['109 g', '82101000', 'vegetable oil, nfs'],
      ['4.333 g', 'usda/02052', 'vanilla extract, imitation'],
      ['66.66 g', 'usda/19335', 'sugars, granulated'],
      ['245 g', 'usda/11424', 'pumpkin, canned'],
    ],
  },
  {
    row: '53116350',
    title: 'Cake, pound, Puerto Rican style',
    finished: {grams: 1444.5803},
    stated: {energy: 465, protein: 6.96, fat: 29.01, carbohydrate: 45.26},
    ingredients: [
      ['453.6 g', 'usda/01001', 'butter, salted'],
      ['400 g', 'usda/19335', 'sugars, granulated'],
      ['500 g', 'usda/01123', 'egg, whole'],
      ['327 g', 'usda/20081', 'wheat flour, white'],
      ['1.1 g', 'usda/02025', 'spices, nutmeg'],
    ],
  },
  {
    row: '53206020',
    title: 'Cookie, chocolate chip',
    finished: {grams: 735.4795},
    stated: {energy: 490, protein: 5.8, fat: 28.18, carbohydrate: 59.31},
    ingredients: [
      ['140.625 g', 'usda/20081', 'wheat flour, white'],
      ['2.3 g', 'usda/18372', 'leavening agents, baking soda'],
      ['113.5 g', 'usda/01001', 'butter, salted'],
      ['100 g', 'usda/19335', 'sugars, granulated'],
      ['110 g', 'usda/19334', 'sugars, brown'],
      ['50 g', 'usda/01123', 'egg, whole'],
      ['1.5 g', 'usda/02047', 'salt, table'],
      ['6.5 g', 'usda/02052', 'vanilla extract, imitation'],
      ['168 g', 'usda/19080', 'candies, semisweet chocolate'],
      ['90 g', 'usda/12155', 'nuts, walnuts'],
    ],
  },
]
