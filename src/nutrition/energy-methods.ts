import {type Span, spanSum, spanTimes} from '../units/span.ts'

/** Macros that a page or a packet prints, grams, each with the limits of its rounding. */
export interface MacroSpans {
  readonly protein: Span
  readonly fat: Span
  /** As printed: with fibre (`total`) or without (`available`). */
  readonly carbohydrate: Span
  readonly carbohydrateIs: 'total' | 'available'
  readonly fibre?: Span
  readonly polyols?: Span
  readonly alcohol?: Span
}

export type EnergyMethod = 'general' | 'digestible' | 'eu'

/** The method in a writer's words, with its source. */
export const energyMethodName: Readonly<Record<EnergyMethod, string>> = {
  general: 'general factors 4-4-9, 21 CFR 101.9(c)(1)(i)(B)',
  digestible: '4-4-9 with fibre and polyols at their own factors, 21 CFR 101.9(c)(1)(i)(C)',
  eu: 'EU 1169/2011 Annex XIV',
}

export interface MethodEnergy {
  readonly method: EnergyMethod
  readonly kcal: Span
}

/** kcal per gram. General factors: 21 CFR 101.9(c)(1)(i)(B); ethanol 7: EU 1169/2011 Annex XIV. */
export const kcalPerGram = {protein: 4, carbohydrate: 4, fat: 9, ethanol: 7} as const

/** kcal/g of non-digestible carbohydrate, US: 0 where insoluble, 2 where soluble (101.9(c)(1)(i)(C)). */
const usFibreKcalPerGram = {value: 1, low: 0, high: 2}

/** kcal/g of sugar alcohols, US: erythritol 0 to hydrogenated starch hydrolysates 3 (101.9(c)(1)(i)(F)). */
const usPolyolKcalPerGram = {value: 2.4, low: 0, high: 3}

/** kcal/g, EU 1169/2011 Annex XIV; erythritol 0 is in the lower limit. */
export const euFibreKcalPerGram = 2
export const euPolyolKcalPerGram = {value: 2.4, low: 0, high: 2.4}

const none: Span = {value: 0, low: 0, high: 0}

/** Energy of printed macros by every recognised method that needs nothing but the macros. */
export function energyByMethod(macros: MacroSpans): readonly [MethodEnergy, ...MethodEnergy[]] {
  const {fibre = none, polyols = none, alcohol = none} = macros
  const total =
    macros.carbohydrateIs === 'total' ? macros.carbohydrate : spanSum([macros.carbohydrate, fibre])
  const available =
    macros.carbohydrateIs === 'available'
      ? macros.carbohydrate
      : notNegative(spanSum([macros.carbohydrate, spanTimes(fibre, -1)]))
  const digestible = notNegative(spanSum([available, spanTimes(polyols, -1)]))
  const rest = [
    spanTimes(macros.protein, kcalPerGram.protein),
    spanTimes(macros.fat, kcalPerGram.fat),
    spanTimes(alcohol, kcalPerGram.ethanol),
  ]
  const fromDigestible = spanTimes(digestible, kcalPerGram.carbohydrate)
  return [
    {
      method: 'general',
      kcal: spanSum([...rest, spanTimes(total, kcalPerGram.carbohydrate)]),
    },
    {
      method: 'digestible',
      kcal: spanSum([
        ...rest,
        fromDigestible,
        spanProduct(fibre, usFibreKcalPerGram),
        spanProduct(polyols, usPolyolKcalPerGram),
      ]),
    },
    {
      method: 'eu',
      kcal: spanSum([
        ...rest,
        fromDigestible,
        spanTimes(fibre, euFibreKcalPerGram),
        spanProduct(polyols, euPolyolKcalPerGram),
      ]),
    },
  ]
}

function notNegative({value, low, high}: Span): Span {
  return {value: Math.max(0, value), low: Math.max(0, low), high: Math.max(0, high)}
}

/** Product of two spans that are both 0 or more. */
function spanProduct(left: Span, right: Span): Span {
  return {
    value: left.value * right.value,
    low: left.low * right.low,
    high: left.high * right.high,
  }
}
