import type {OffRecipe} from './worked-recipe.ts'

/**
 * Armed Forces Recipe Service, TM 10-412 / NAVSUP P-7 / AFM 146-12 Vol. 2 / MCO P10110.42B (2003):
 * sandwiches of raw, fatty meat whose rendered fat the cards do not weigh.
 */
export const armedForcesMeatOff: readonly OffRecipe[] = [
  {
    row: 'N 003 00',
    title: 'Steak and cheese submarine',
    finished: {servings: 100},
    stated: {energy: 475, protein: 32, fat: 29, carbohydrate: 20},
    gapPercent: {energy: 18.7, protein: -15.3, fat: 42.8},
    because: 'raw formed steaks: the fat that runs out on the grill is counted',
    ingredients: [
      ['25 lb', 'sr28/13342', 'beef, steak'],
      ['2 oz', 'sr28/04679', 'cooking spray, nonstick'],
      ['6 1/4 lb', 'sr28/01042', 'cheese, american'],
      ['8 3/8 lb', 'sr28/18349', 'roll, french'],
    ],
  },
  {
    row: 'N 003 01',
    title: 'Steak, cheese and onion submarine',
    finished: {servings: 100},
    stated: {energy: 510, protein: 33, fat: 29, carbohydrate: 27},
    gapPercent: {energy: 17.7, protein: -14.8, fat: 43.1, carbohydrate: 7.5},
    because: 'raw formed steaks: the fat that runs out on the grill is counted',
    ingredients: [
      ['20 lb', 'usda/11282', 'onions, fresh'],
      ['2 oz', 'sr28/04679', 'cooking spray, nonstick'],
      ['25 lb', 'sr28/13342', 'beef, steak'],
      ['6 1/4 lb', 'sr28/01042', 'cheese, american'],
      ['8 3/8 lb', 'sr28/18349', 'roll, french'],
    ],
  },
  {
    row: 'N 007 03',
    title: 'English muffin with sausage, egg and cheese',
    finished: {servings: 100},
    stated: {energy: 459, protein: 24, fat: 27, carbohydrate: 28},
    gapPercent: {energy: 19.8, protein: 20.4, fat: 32.3},
    because:
      'raw sausage: 18 3/4 lb listed where 100 patties of 2 oz are 12 1/2 lb, and fat runs out',
    ingredients: [
      ['18 3/4 lb', 'usda/07063', 'sausage patty, pork'],
      ['12 5/8 lb', 'usda/18258', 'english muffins, split or cut'],
      ['10 lb', 'usda/01171', 'eggs, whole'],
      ['2 oz', 'sr28/04679', 'cooking spray, nonstick'],
      ['6 1/4 lb', 'sr28/01042', 'cheese, american'],
    ],
  },
]
