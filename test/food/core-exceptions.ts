/**
 * Rows of the core table that do not add up, with what can be seen of why. The figures are those of
 * USDA SR28; "no reason given" means the release says nothing and its own figures do not close.
 */

/** Water, protein, fat, carbohydrate, ash and alcohol are more than 2 g from 100 g. */
export const massExceptions: ReadonlyMap<string, string> = new Map([
  ['18372', 'carbon dioxide and water bound in bicarbonate are in no column; ash is what is left'],
  ['02053', 'about 5 g of acetic acid is in no column'],
  ['02048', 'about 5 g of acetic acid is in no column'],
  ['02068', 'about 5 g of acetic acid is in no column'],
  ['02069', 'about 6 g of acetic acid is in no column'],
  ['02030', 'black pepper, carbohydrate does not close; no reason given'],
  ['02032', 'white pepper, carbohydrate does not close; no reason given'],
  ['02034', 'a blend with pepper in it, 97.94 g; no reason given'],
  ['04602', 'figures of the salted butter but for the salt, which leaves 102.1 g'],
  ['05157', 'carbohydrate is set to 0 and the parts make 102.2 g'],
  ...['15046', '15047', '15076', '15077', '15117', '15209'].map(
    (ndb) =>
      [ndb, 'carbohydrate of fish is set to 0; water and fat are of different samples'] as const,
  ),
])

/** The energy is more than 1 kcal from the row's own factors. */
export const specificEnergyExceptions: ReadonlyMap<string, string> = new Map([
  ['01157', 'goat cheese, 355 kcal for 364; no reason given'],
  ['01226', 'egg substitute, 51 kcal for 48; no reason given'],
  ['02035', 'a blend, 340.9 kcal for 342; no reason given'],
  ['04135', 'dressing computed as a recipe, 452 kcal for 449'],
  ['04576', 'goose fat, energy at 9.02 kcal/g and the factor 8.84 printed beside it'],
  ['05167', 'turkey, 114.6 kcal for 112; no reason given'],
  ['06068', 'soup computed as a recipe, 56.8 kcal for 59'],
  ['06112', 'rice wine in it, whose alcohol the row gives as 0'],
  ['06125', 'gravy, 47.9 kcal for 51; no reason given'],
  ['06165', 'sauce computed as a recipe, 103.2 kcal for 105'],
  ['06166', 'sauce computed as a recipe, 144.4 kcal for 147'],
  ['06167', 'sauce computed as a recipe, 182.4 kcal for 186'],
  ['06189', 'rice wine in it, whose alcohol the row gives as 0'],
  ['09238', 'peaches in juice, 45.2 kcal for 44; no reason given'],
  ['09292', 'stewed prunes, 105.7 kcal for 107; no reason given'],
  ['13323', 'kidney, 103 kcal for 99; no reason given'],
  ['14096', 'red wine, 83.9 kcal for 85; no reason given'],
  ['15041', 'pickled herring, 260.3 kcal for 262; no reason given'],
  ['18060', 'rye bread, 257.9 kcal for 259: factors printed to 0.1'],
  ['18224', 'rusks, 405.9 kcal for 407: factors printed to 0.1'],
  ['18374', 'yeast, 102.7 kcal for 105: factors printed to 0.1'],
  ['19294', 'apple butter, 174.1 kcal for 173: factors printed whole'],
  ['20061', 'rice flour, 368 kcal for 366; no reason given'],
  ['20133', 'rice noodles, 361 kcal for 364; no reason given'],
])

/**
 * The row has no factors of its own, and its energy is more than 2 kcal and 2 % from general
 * factors (4, 9, 4; alcohol 7).
 */
export const generalEnergyExceptions: ReadonlyMap<string, string> = new Map([
  ['16055', 'fibre (39.8 g) counts nothing in it'],
  ['19310', 'pectin, factor 3.6 for its carbohydrate and none for the rest'],
  ['18348', 'factors of wholemeal cereals, 3.59, 8.37 and 3.78, give 264 kcal for 266'],
  ['18338', 'factors of white flour, 4.05, 8.37 and 4.12, give 296 kcal for 299'],
  ['18368', 'factors of white flour, 4.05, 8.37 and 4.12, give 291 kcal'],
  ['06961', 'factors of vegetables, 2.44, 8.37 and 3.57, give 21 kcal'],
  ['06962', 'factors of vegetables, 2.44, 8.37 and 3.57, give 20 kcal'],
  ['02053', 'acetic acid has the energy and is in no column'],
  ['02048', 'acetic acid has the energy and is in no column'],
  ['02068', 'acetic acid has the energy and is in no column'],
  ['02069', 'acetic acid has the energy and is in no column'],
  ['04601', 'factors of milk, 4.27, 8.79 and 3.87, give 498 kcal'],
  ['04602', 'factors of milk, 4.27, 8.79 and 3.87, give 498 kcal'],
  ['43275', '175.4 kcal for 180; no reason given'],
  ['43589', '173.1 kcal for 179; no reason given'],
  ['06970', 'from a label'],
  ['06981', 'from a label'],
  ['42193', 'between the energy with its fibre and without'],
  ['43021', 'lower factors of its ingredients'],
  ['43016', 'lower factors of its ingredients'],
  ['14293', '3.87 kcal/g of sucrose gives 40'],
  ['09156', 'factors of lemon flesh, 3.36, 8.37 and 2.48, give 47 kcal'],
  ['09110', 'fibre 13 g; no reason given'],
  ['09178', 'no reason given'],
  ['09423', 'no reason given'],
  ['09426', 'no reason given'],
  ['20113', 'from a label'],
  ['11414', 'computed as a recipe; no reason given'],
  ['42259', 'fibre 10 g; no reason given'],
  ['43216', '3.68 kcal/g of crystalline fructose'],
  ['19918', 'steviol glycosides are not used as energy'],
])
