import type {Span} from '../units/span.ts'
import type {MethodEnergy} from './nutrients.ts'

/** Energy of a gram of each part by a method, in the method's unit (kcal or kJ). */
export interface MethodFactors {
  readonly protein: number
  readonly fat: number
  /** Of total carbohydrate where fibre has no factor of its own, else of carbohydrate without it. */
  readonly carbohydrate: number
  readonly fibre?: Span
  /** Polyols of a kind that nobody names; they count as carbohydrate where there is no factor. */
  readonly polyols?: Span
  readonly ethanol: number
}

/** kcal by Regulation (EU) 1169/2011 Annex XIV; ethanol too. */
export const euFactors: MethodFactors = {
  protein: 4,
  fat: 9,
  carbohydrate: 4,
  fibre: {value: 2, low: 2, high: 2},
  // Erythritol, which gives none, is the lower limit.
  polyols: {value: 2.4, low: 0, high: 2.4},
  ethanol: 7,
}

/**
 * `energyGeneral`: 21 CFR 101.9(c)(1)(i)(B), 4-4-9. `energyDigestible`: 101.9(c)(1)(i)(C); the
 * soluble part of fibre gives 2 kcal/g and the rest none, and tables do not tell them apart; sugar
 * alcohols by 101.9(c)(1)(i)(F), erythritol 0 (from memory) to hydrogenated starch hydrolysates 3.
 * `energyEu` and `energyEuKilojoules`: Regulation (EU) 1169/2011 Annex XIV, kcal and kJ each from its
 * own column. Ethanol: Annex XIV; US labels use the same 7 kcal/g (from memory).
 */
export const methodFactors: Readonly<Record<MethodEnergy, MethodFactors>> = {
  energyGeneral: {protein: 4, fat: 9, carbohydrate: 4, ethanol: 7},
  energyDigestible: {
    protein: 4,
    fat: 9,
    carbohydrate: 4,
    fibre: {value: 1, low: 0, high: 2},
    polyols: {value: 2.4, low: 0, high: 3},
    ethanol: 7,
  },
  energyEu: euFactors,
  energyEuKilojoules: {
    protein: 17,
    fat: 37,
    carbohydrate: 17,
    fibre: {value: 8, low: 8, high: 8},
    polyols: {value: 10, low: 0, high: 10},
    ethanol: 29,
  },
}

/**
 * Allulose, kcal/g, where fibre and polyols have factors of their own: FDA guidance of October 2020
 * (85 FR 66217, seen in summaries), which keeps it in total carbohydrate and out of sugars. EU law
 * has no factor for it.
 */
export const alluloseKcalPerGram = 0.4

/** The method in a writer's words, with its source. */
export const methodName: Readonly<Record<MethodEnergy, string>> = {
  energyGeneral: 'general factors 4-4-9, 21 CFR 101.9(c)(1)(i)(B)',
  energyDigestible: '4-4-9 with fibre and polyols at their own factors, 21 CFR 101.9(c)(1)(i)(C)',
  energyEu: 'EU 1169/2011 Annex XIV',
  energyEuKilojoules: 'EU 1169/2011 Annex XIV, kJ',
}
