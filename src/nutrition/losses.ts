import type {Figures, Term} from '../food/figures.ts'
import {known} from '../food/figures.ts'
import type {EnergyFactors} from '../food/food.ts'
import type {Nutrient} from '../food/nutrients.ts'
import {difference, exact, scaled, type Uncertain} from '../units/uncertain.ts'
import {alcoholRetention, ethanolKcalPerGram} from './retention.ts'

/** Something that leaves the dish between the list and the table. */
export interface Loss {
  /** Terms (with negative weights) to add to the nutrient's sum. */
  termsOf(nutrient: Nutrient): readonly Term[]
  /** Grams that leave the dish, 0 or more. */
  readonly grams: Uncertain
}

/** General factor for fat, kcal/g: 21 CFR 101.9(c)(1)(i)(B). */
const fatKcalPerGram = 9

/**
 * Rendered fat that was poured off and weighed. What is poured is taken as pure fat with the
 * food's own share of saturated and trans fat; cholesterol and minerals stay with the meat.
 * @param poured grams of fat
 * @param whole figures of the line before the loss
 */
export function pouredFat(
  poured: Uncertain,
  whole: Figures<'batch'>,
  factors: EnergyFactors | undefined,
): Loss {
  const shareOfFat = (nutrient: Nutrient): number =>
    whole.fat.value > 0 ? whole[nutrient].value / whole.fat.value : 0
  const perGram: Partial<Record<Nutrient, number>> = {
    fat: 1,
    energy: factors?.fat ?? fatKcalPerGram,
    saturated: shareOfFat('saturated'),
    trans: shareOfFat('trans'),
  }
  return {
    grams: poured,
    termsOf(nutrient) {
      const each = perGram[nutrient]
      return each === undefined ? [] : [{figure: known(exact(each)), weight: scaled(poured, -1)}]
    },
  }
}

/**
 * Alcohol that evaporates while the liquid simmers or bakes in the dish, with its energy.
 * @param minutes time in the dish, 0 or more
 */
export function evaporatedAlcohol(minutes: number, whole: Figures<'batch'>): Loss {
  const lostRatio = difference(exact(1), alcoholRetention(minutes))
  const perAlcohol: Partial<Record<Nutrient, number>> = {alcohol: 1, energy: ethanolKcalPerGram}
  return {
    grams: scaled(lostRatio, whole.alcohol.value),
    termsOf(nutrient) {
      const each = perAlcohol[nutrient]
      return each === undefined ? [] : [{figure: whole.alcohol, weight: scaled(lostRatio, -each)}]
    },
  }
}
