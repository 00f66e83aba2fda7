import {alluloseKcalPerGram, methodFactors} from '../food/method-factors.ts'
import {type MethodEnergy, methodEnergies} from '../food/nutrients.ts'
import {type Span, spanProduct, spanSum, spanTimes} from '../units/span.ts'

/** Macros that a page or a packet prints, grams, each with the limits of its rounding. */
export interface MacroSpans {
  readonly protein: Span
  readonly fat: Span
  /** As printed: with fibre (`total`) or without (`available`). */
  readonly carbohydrate: Span
  readonly carbohydrateIs: 'total' | 'available'
  readonly fibre?: Span
  readonly polyols?: Span
  /** Within the carbohydrate; only a packet says it. */
  readonly allulose?: Span
  readonly alcohol?: Span
}

/** Energy of printed macros by one method, kcal, or kJ for `energyEuKilojoules`. */
export interface MacroEnergy {
  readonly method: MethodEnergy
  readonly energy: Span
}

const none: Span = {value: 0, low: 0, high: 0}

/** Energy of printed macros by every recognised method that needs nothing but the macros. */
export function energyOfMacros(macros: MacroSpans): readonly MacroEnergy[] {
  return methodEnergies.map((method) => ({method, energy: energyBy(method, macros)}))
}

/** Energy of printed macros by one method; fibre, polyols and alcohol not printed count as none. */
export function energyBy(method: MethodEnergy, macros: MacroSpans): Span {
  const factors = methodFactors[method]
  const {fibre = none, polyols = none, alcohol = none} = macros
  const counted = factors.fibre ? withoutFibre(macros, fibre) : withFibre(macros, fibre)
  const own = factors.polyols ? polyols : none
  const allulose = method === 'energyDigestible' ? (macros.allulose ?? none) : none
  const rest = notNegative(spanSum([counted, spanTimes(own, -1), spanTimes(allulose, -1)]))
  return spanSum([
    spanTimes(macros.protein, factors.protein),
    spanTimes(macros.fat, factors.fat),
    spanTimes(rest, factors.carbohydrate),
    spanProduct(fibre, factors.fibre ?? none),
    spanProduct(own, factors.polyols ?? none),
    spanTimes(allulose, alluloseKcalPerGram),
    spanTimes(alcohol, factors.ethanol),
  ])
}

function withFibre({carbohydrate, carbohydrateIs}: MacroSpans, fibre: Span): Span {
  return carbohydrateIs === 'total' ? carbohydrate : spanSum([carbohydrate, fibre])
}

function withoutFibre({carbohydrate, carbohydrateIs}: MacroSpans, fibre: Span): Span {
  return carbohydrateIs === 'available'
    ? carbohydrate
    : notNegative(spanSum([carbohydrate, spanTimes(fibre, -1)]))
}

function notNegative({value, low, high}: Span): Span {
  return {value: Math.max(0, value), low: Math.max(0, low), high: Math.max(0, high)}
}
