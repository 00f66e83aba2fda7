import type {EnergyMethod} from '../../src/cookbook/energy-method.ts'
import type {DeclaredNutrient} from '../../src/nutrition/declaring/declared-rows.ts'

/** Names of an EU table, Regulation (EU) 1169/2011 Annex XV; of others, where it has no line. */
const euName: Readonly<Record<DeclaredNutrient, string>> = {
  energy: 'Energy',
  energyEuKilojoules: 'Energy',
  fat: 'Fat',
  saturated: 'of which saturates',
  trans: 'of which trans',
  cholesterol: 'Cholesterol',
  carbohydrate: 'Carbohydrate',
  availableCarbohydrate: 'Carbohydrate',
  sugars: 'of which sugars',
  addedSugars: 'of which added',
  polyols: 'of which polyols',
  fibre: 'Fibre',
  protein: 'Protein',
  salt: 'Salt',
  sodium: 'Sodium',
  vitaminD: 'Vitamin D',
  potassium: 'Potassium',
  calcium: 'Calcium',
  iron: 'Iron',
}

/** Names of a US panel, 21 CFR 101.9(c), where it has others. */
const usName: Readonly<Record<DeclaredNutrient, string>> = {
  ...euName,
  energy: 'Calories',
  fat: 'Total Fat',
  saturated: 'Saturated Fat',
  trans: 'Trans Fat',
  carbohydrate: 'Total Carbohydrate',
  fibre: 'Dietary Fiber',
  sugars: 'Total Sugars',
  addedSugars: 'Added Sugars',
  polyols: 'Sugar Alcohol',
}

const energyMethod: Readonly<Record<EnergyMethod, string>> = {
  foods: 'the sum of the foods’ own',
  general: 'by the general factors 4-4-9',
  digestible: 'by 4-4-9, with fibre and polyols at their own factors',
  eu: 'by the EU factors',
}

export const declared = {
  name: {eu: euName, us: usName},
  energyMethod,
  title: {
    eu: 'Nutrition declaration, rounded as EU labels are',
    us: 'Nutrition panel, rounded as US labels are',
  },
  reference: {eu: '% RI, one serving', us: '% DV, one serving'},
  referenceOf100g: {eu: '% RI, 100 g', us: '% DV, 100 g'},
  referenceNote: {
    eu: 'RI: reference intake of an average adult (8400 kJ/2000 kcal).',
    us: 'DV: Daily Value for adults and children of 4 years and more, on 2,000 calories a day.',
  },
  lessThan: (amount: string) => `< ${amount}`,
  energyNote: (method: string) => `Energy is ${method}.`,
  otherEnergyNote:
    'On packets EU law asks for the factors of Regulation (EU) 1169/2011 Annex XIV instead.',
  roundedNote:
    'These figures are rounded for a label and for nothing else: the ones above are what everything is summed from.',
  missing: (names: string) =>
    `Not a whole declaration: no figure for ${names}. The foods that lack it are named above.`,
  notKnown: 'not known',

  netCarbohydrate: (figures: string) => `Net carbohydrate: ${figures}.`,
  netCarbohydrateMeans:
    'Net carbohydrate here is carbohydrate without fibre and without polyols: a convention of readers that no law defines. Who doses insulin by it should ask those who treat them.',
  each: (amount: string, basis: string) => `${amount} in ${basis}`,

  /** As 21 CFR 101.9(d) has them; not to be put in other words. */
  panel: {
    heading: 'Nutrition Facts',
    perContainer: (servings: number) =>
      servings === 1 ? '1 serving per container' : `${servings} servings per container`,
    servingSize: 'Serving size',
    share: (servings: number) => (servings === 1 ? '1 recipe' : `1/${servings} recipe`),
    amountPerServing: 'Amount per serving',
    dailyValue: '% Daily Value*',
    lessThan: (amount: string) => `less than ${amount}`,
    includes: (amount: string) => `Includes ${amount} Added Sugars`,
    footnote:
      '* The % Daily Value (DV) tells you how much a nutrient in a serving of food contributes to a daily diet. 2,000 calories a day is used for general nutrition advice.',
  },
}
