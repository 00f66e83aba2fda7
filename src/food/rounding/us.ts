import type {Span} from '../../units/span.ts'
import {dailyValue} from '../daily-values.ts'
import type {Nutrient} from '../nutrients.ts'
import {type Declared, declarations, everyStep, type RoundingScheme, spanBehind} from './scheme.ts'

// Source of every band: 21 CFR 101.9(c), as tabulated in FDA, A Food Labeling Guide, Appendix H
// (Oct 2009). That exact halves go up is from memory.

const upwards = Number.POSITIVE_INFINITY

const calories: RoundingScheme = {
  bands: [
    {below: 50, step: 5},
    {below: upwards, step: 10},
  ],
  zeroBelow: 5,
  isLimitSmall: false,
  zero: 'may',
}

const fats: RoundingScheme = {
  bands: [
    {below: 5, step: 0.5},
    {below: upwards, step: 1},
  ],
  zeroBelow: 0.5,
  isLimitSmall: false,
  zero: 'must',
}

/** From 2 to 5 mg the guide has the words; exactly 5 mg is not less than 5 and is declared as 5. */
const cholesterol: RoundingScheme = {
  bands: everyStep(5),
  zeroBelow: 2,
  isLimitSmall: false,
  zero: 'must',
  lessThan: {limit: 5, from: 2, below: 5},
}

const sodium: RoundingScheme = {
  bands: [
    {below: 140, step: 5},
    {below: upwards, step: 10},
  ],
  zeroBelow: 5,
  isLimitSmall: false,
  zero: 'must',
}

/** Carbohydrate, fibre, sugars, sugar alcohol; protein has the same steps. */
const wholeGrams: RoundingScheme = {
  bands: everyStep(1),
  zeroBelow: 0.5,
  isLimitSmall: false,
  zero: 'must',
  lessThan: {limit: 1, from: 0, below: 1},
}

/**
 * Vitamins and minerals by amount: the step follows the size of the Daily Value (0.1 below 25
 * units, 1 below 250, 10 from there; the last from memory), and below 2 % of it 0 is allowed.
 */
function vitaminOrMineral(dailyAmount: number): RoundingScheme {
  const step = dailyAmount < 25 ? 0.1 : dailyAmount < 250 ? 1 : 10
  return {
    bands: everyStep(step),
    zeroBelow: 0.02 * dailyAmount,
    isLimitSmall: false,
    zero: 'may',
  }
}

function schemeOf(nutrient: Nutrient): RoundingScheme | undefined {
  switch (nutrient) {
    case 'energy':
      return calories
    case 'fat':
    case 'saturated':
    case 'trans':
      return fats
    case 'cholesterol':
      return cholesterol
    case 'sodium':
      return sodium
    case 'carbohydrate':
    case 'fibre':
    case 'sugars':
    case 'addedSugars':
    case 'polyols':
    case 'protein':
      return wholeGrams
    case 'potassium':
    case 'calcium':
    case 'iron':
    case 'vitaminD': {
      const dailyAmount = dailyValue.us[nutrient]
      return dailyAmount === undefined ? undefined : vitaminOrMineral(dailyAmount)
    }
    default:
      return undefined
  }
}

/**
 * What a US panel may declare for an amount in one serving, the usual form first.
 * @param unrounded 0 or more, in the nutrient's own unit
 * @returns empty for what a US panel has no line for (salt, alcohol, water)
 */
export function usDeclarations(nutrient: Nutrient, unrounded: number): readonly Declared[] {
  const scheme = schemeOf(nutrient)
  return scheme ? declarations(scheme, unrounded) : []
}

/** The amounts in one serving that a US panel declares so; undefined where it never would. */
export function usSpan(nutrient: Nutrient, declared: Declared): Span | undefined {
  const scheme = schemeOf(nutrient)
  return scheme && spanBehind(scheme, declared)
}
