import {alluloseKcalPerGram} from '../food/method-factors.ts'
import {kilojoulesPerKilocalorie} from '../food/nutrients.ts'
import {
  energyBy,
  energyOfMacros,
  type MacroEnergy,
  type MacroSpans,
} from '../nutrition/energy-of-macros.ts'
import {formatFigure, roundedText} from '../units/format-figure.ts'
import {type Span, spanGap} from '../units/span.ts'

/** A printed energy, kcal, beside the energy of the macros printed with it. */
export interface EnergyGap {
  /** By the general factors, 4-4-9. */
  readonly general: Span
  /** By every method in kcal. */
  readonly byMethod: readonly MacroEnergy[]
  /** The first method whose limits meet the printed energy's; absent when none does. */
  readonly fits?: MacroEnergy['method']
  /** Distance from the general factors, percent of the printed energy, 0 and up. */
  readonly gapPercent: number
  /** What would close the gap, one sentence each. */
  readonly wouldExplain: readonly string[]
}

interface Around {
  /** kcal that may lie between the limits. */
  readonly slack: number
  /** Weight that the figures are for, g. */
  readonly grams: number
}

/**
 * Multiplies printed macros out by every recognised method, each figure within the limits of its
 * rounding, and says how far the printed energy is from them.
 */
export function energyGap(energy: Span, macros: MacroSpans, {slack, grams}: Around): EnergyGap {
  const byMethod = energyOfMacros(macros).filter(({method}) => method !== 'energyEuKilojoules')
  const general = energyBy('energyGeneral', macros)
  const fitting = byMethod.find((one) => spanGap(one.energy, energy) <= slack)
  const gapKcal = energy.value - general.value
  const {protein, fat, carbohydrate} = macros
  const room = grams - protein.low - fat.low - carbohydrate.low
  return {
    general,
    byMethod,
    ...(fitting && {fits: fitting.method}),
    gapPercent: energy.value > 0 ? (100 * Math.abs(gapKcal)) / energy.value : 0,
    wouldExplain: gapKcal < 0 ? lessEnergy(-gapKcal, macros) : [moreEnergy(energy, general, room)],
  }
}

/**
 * What is within the carbohydrate and gives less than its 4 kcal/g, with what a gram of it is worth
 * against those.
 */
const lighter: readonly (readonly [kcalLess: number, name: string])[] = [
  [4, 'insoluble fibre or erythritol (0 kcal/g)'],
  [4 - alluloseKcalPerGram, `allulose (${alluloseKcalPerGram} kcal/g)`],
  [2, 'other fibre (2 kcal/g)'],
  [1.6, 'polyols (2.4 kcal/g)'],
]

/**
 * Grams of one component that would close the gap alone, and are not more than the carbohydrate
 * they are part of.
 * @param gapKcal kcal that the printed energy is lower, above 0
 */
function lessEnergy(gapKcal: number, {carbohydrate}: MacroSpans): readonly string[] {
  const grams = (kcalLess: number): number => gapKcal / kcalLess
  const names = lighter
    .filter(([kcalLess]) => grams(kcalLess) <= carbohydrate.high)
    .map(([kcalLess, name]) => `${gramsText(grams(kcalLess))} of ${name}`)
  const choice = [names.slice(0, -1).join(', '), ...names.slice(-1)].filter(Boolean).join(' or ')
  return [
    choice === ''
      ? 'The stated energy is lower than all of the carbohydrate would explain, whatever it is made of.'
      : `The stated energy is lower: ${choice} within the carbohydrate would explain it.`,
  ]
}

/**
 * How far from kJ ÷ kcal the energy may be and still be the wrong line of the packet: fibre and
 * rounding move it by less.
 */
const kilojouleSlackRatio = 0.15

/**
 * Kilojoules copied as kcal, or the alcohol that the macros leave out, at 7 kcal/g.
 * @param room grams that are none of the macros
 */
function moreEnergy(energy: Span, general: Span, room: number): string {
  const inKilojoules = energy.value / kilojoulesPerKilocalorie
  if (Math.abs(inKilojoules - general.value) <= kilojouleSlackRatio * general.value) {
    const [kilojoules, kilocalories] = [
      formatFigure(energy.value, 'kJ', 0),
      formatFigure(inKilojoules, 'kcal', 0),
    ]
    return `The stated energy may be the kilojoules of the packet: ${kilojoules} are ${kilocalories}.`
  }
  const alcohol = (energy.value - general.value) / 7
  return alcohol <= room
    ? `The stated energy is higher: ${gramsText(alcohol)} of alcohol (7 kcal/g) would explain it.`
    : 'The stated energy is higher than alcohol (7 kcal/g) would explain.'
}

function gramsText(grams: number): string {
  return `${roundedText(grams, 1)} g`
}
