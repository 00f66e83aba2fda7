import type {PublishedNutrient} from '../../food/nutrients.ts'
import {type Allowance, both, type Compared} from './allowance.ts'

/** Below `belowGrams` an absolute amount, above `aboveGrams` another, 20 % between; g per 100 g. */
interface Band {
  readonly belowGrams: number
  readonly belowAllowedGrams: number
  readonly aboveGrams: number
  readonly aboveAllowedGrams: number
}

/**
 * European Commission, guidance on tolerances for nutrient values (Dec 2012), foods other than
 * supplements. The 20 % was seen in secondary texts; the gram bands are from memory.
 */
const macroBand: Band = {
  belowGrams: 10,
  belowAllowedGrams: 2,
  aboveGrams: 40,
  aboveAllowedGrams: 8,
}
const fatBand: Band = {...macroBand, belowAllowedGrams: 1.5}
const saturatedBand: Band = {
  belowGrams: 4,
  belowAllowedGrams: 0.8,
  aboveGrams: Number.POSITIVE_INFINITY,
  aboveAllowedGrams: 0,
}
const saltBand: Band = {...saturatedBand, belowGrams: 1.25, belowAllowedGrams: 0.375}
const sodiumMilligramsPerSaltGram = 400
const bandRatio = 0.2
const mineralRatio = 0.35

/** The guidance's bands, carried from 100 g to the weight the stated figure belongs to. */
export function euAllowance({nutrient, value, grams}: Compared): Allowance {
  const portions = grams / 100
  const width = per100gAllowance(nutrient, value / portions) * portions
  return both(width)
}

function per100gAllowance(nutrient: PublishedNutrient, value: number): number {
  switch (nutrient) {
    case 'fat':
      return banded(fatBand, value)
    case 'saturated':
    case 'trans':
      return banded(saturatedBand, value)
    case 'salt':
      return banded(saltBand, value)
    case 'sodium':
      return banded(saltBand, value / sodiumMilligramsPerSaltGram) * sodiumMilligramsPerSaltGram
    case 'cholesterol':
    case 'potassium':
    case 'calcium':
    case 'iron':
    case 'vitaminD':
      return mineralRatio * value
    // The guidance has no row for energy: it is held to the share that its parts are held to.
    case 'energy':
      return bandRatio * value
    default:
      return banded(macroBand, value)
  }
}

function banded(band: Band, value: number): number {
  if (value < band.belowGrams) return band.belowAllowedGrams
  return value > band.aboveGrams ? band.aboveAllowedGrams : bandRatio * value
}
