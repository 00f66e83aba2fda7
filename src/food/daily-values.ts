import type {LabelRules} from './label-rules.ts'
import type {Nutrient} from './nutrients.ts'

/**
 * What an adult's day is held to contain, in each nutrient's own unit.
 * US: Daily Values, 21 CFR 101.9(c)(8)(iv) and (c)(9), rule of 2016, base 2,000 kcal.
 * EU: reference intakes, Regulation (EU) 1169/2011 Annex XIII parts A and B; its carbohydrate is
 * without fibre. A nutrient that is not listed has no reference value in that law.
 */
export const dailyValue: Readonly<Record<LabelRules, Readonly<Partial<Record<Nutrient, number>>>>> =
  {
    us: {
      fat: 78,
      saturated: 20,
      cholesterol: 300,
      sodium: 2300,
      carbohydrate: 275,
      fibre: 28,
      addedSugars: 50,
      protein: 50,
      vitaminD: 20,
      calcium: 1300,
      iron: 18,
      potassium: 4700,
    },
    eu: {
      energy: 2000,
      fat: 70,
      saturated: 20,
      availableCarbohydrate: 260,
      sugars: 90,
      protein: 50,
      salt: 6,
      vitaminD: 5,
      calcium: 800,
      iron: 14,
      potassium: 2000,
    },
  }
