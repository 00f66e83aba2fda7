import type {Figures, Term} from '../food/figures.ts'
import {known} from '../food/figures.ts'
import type {EnergyFactors} from '../food/food.ts'
import {methodFactors} from '../food/method-factors.ts'
import {methodEnergies, type Nutrient, saltGramsPerSodiumMilligram} from '../food/nutrients.ts'
import {difference, exact, product, quotient, scaled, type Uncertain} from '../units/uncertain.ts'
import type {Retained} from './retention.ts'

/** Something that leaves the dish between the list and the table. */
export interface Loss {
  /** Terms (with negative weights) to add to the nutrient's sum. */
  termsOf(nutrient: Nutrient): readonly Term[]
  /** Grams that leave the dish, 0 or more. */
  readonly grams: Uncertain
}

/** General factor for fat, kcal/g: 21 CFR 101.9(c)(1)(i)(B). */
const fatKcalPerGram = 9

/** Energy of ethanol in USDA SR28, kcal/g, derived from the release (wine 14084). */
export const ethanolKcalPerGram = 6.93

/**
 * Rendered fat that was poured off. What is poured is taken as pure fat with the food's own share
 * of saturated and trans fat; cholesterol and minerals stay with the meat.
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
    ...energyOfEach('fat'),
    saturated: shareOfFat('saturated'),
    trans: shareOfFat('trans'),
  }
  return lossOf(poured, perGram)
}

/**
 * Liquid that was drained away. It takes water; what is dissolved in it stays counted, since
 * nobody knows how much it was, so that salt and minerals come out too high, never too low.
 */
export function drainedLiquid(drained: Uncertain): Loss {
  return lossOf(drained, {water: 1})
}

function lossOf(grams: Uncertain, perGram: Partial<Record<Nutrient, number>>): Loss {
  return {
    grams,
    termsOf(nutrient) {
      const each = perGram[nutrient]
      return each === undefined ? [] : [{figure: known(exact(each)), weight: scaled(grams, -1)}]
    },
  }
}

/**
 * Grams of fat that a raw food loses on its way to a cooked one: protein stays, so the cooked
 * weight is raw × protein(raw) ÷ protein(cooked), and what the raw fat exceeds the fat of that
 * weight by has run out. The method is derived from conservation of protein; USDA's yield table
 * agrees within about 3 points for the pairs that could be compared.
 * @returns grams, 0 or more
 */
export function renderedFat(
  rawGrams: Uncertain,
  raw: Figures<'100 g'>,
  cooked: Figures<'100 g'>,
): Uncertain {
  const cookedPerRaw = quotient(raw.protein, cooked.protein)
  const lostPer100g = difference(raw.fat, product(cookedPerRaw, cooked.fat))
  return lostPer100g.value > 0 ? scaled(product(rawGrams, lostPer100g), 1 / 100) : exact(0)
}

/** Energy of a gram that leaves, by each method. */
function energyOfEach(part: 'fat' | 'ethanol'): Partial<Record<Nutrient, number>> {
  return Object.fromEntries(methodEnergies.map((method) => [method, methodFactors[method][part]]))
}

const ethanolEnergy: Partial<Record<Nutrient, number>> = {
  energy: ethanolKcalPerGram,
  ...energyOfEach('ethanol'),
}

/** What cooking takes of alcohol, with its energy, and of minerals. */
export function notRetained(retained: Retained, whole: Figures<'batch'>): Loss {
  const lostRatio = (nutrient: Nutrient): Uncertain | undefined => {
    const left = retained.get(nutrient)
    return left && difference(exact(1), left)
  }
  const lostAlcohol = lostRatio('alcohol')
  const lostSodium = lostRatio('sodium')
  const term = (nutrient: Nutrient, ratio: Uncertain | undefined, each = 1): readonly Term[] =>
    ratio ? [{figure: whole[nutrient], weight: scaled(ratio, -each)}] : []
  return {
    // Minerals are milligrams; only the alcohol's weight is worth counting.
    grams: lostAlcohol ? scaled(lostAlcohol, whole.alcohol.value) : exact(0),
    termsOf(nutrient) {
      const perGram = ethanolEnergy[nutrient]
      if (perGram !== undefined) return term('alcohol', lostAlcohol, perGram)
      if (nutrient === 'salt') return term('sodium', lostSodium, saltGramsPerSodiumMilligram)
      return term(nutrient, lostRatio(nutrient))
    },
  }
}
