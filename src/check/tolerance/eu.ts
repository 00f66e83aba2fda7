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

/**
 * Table 1 of the same guidance, shares of what is declared: a food may hold this much more of it,
 * or less. Vitamins seen in secondary texts, minerals from memory.
 */
interface Shares {
  readonly moreRatio: number
  readonly lessRatio: number
}

const vitaminShares: Shares = {moreRatio: 0.5, lessRatio: 0.35}
const mineralShares: Shares = {moreRatio: 0.45, lessRatio: 0.35}

/**
 * The guidance's bands and shares around the stated figure, carried from 100 g to the weight it
 * belongs to. Stated below computed is a food that holds more than declared, and the other way.
 */
export function euAllowance({nutrient, stated, grams}: Compared): Allowance {
  const portions = grams / 100
  const {below, above} = per100gAllowance(nutrient, stated / portions)
  return {below: below * portions, above: above * portions}
}

function per100gAllowance(nutrient: PublishedNutrient, stated: number): Allowance {
  switch (nutrient) {
    case 'fat':
      return banded(fatBand, stated)
    case 'saturated':
    case 'trans':
      return banded(saturatedBand, stated)
    case 'salt':
      return banded(saltBand, stated)
    case 'sodium': {
      const {below, above} = banded(saltBand, stated / sodiumMilligramsPerSaltGram)
      return {
        below: below * sodiumMilligramsPerSaltGram,
        above: above * sodiumMilligramsPerSaltGram,
      }
    }
    case 'vitaminD':
      return shared(vitaminShares, stated)
    case 'potassium':
    case 'calcium':
    case 'iron':
      return shared(mineralShares, stated)
    // The guidance has no row for these: they are held to the share of most others.
    case 'energy':
    case 'cholesterol':
      return both(bandRatio * stated)
    default:
      return banded(macroBand, stated)
  }
}

function banded(band: Band, stated: number): Allowance {
  if (stated < band.belowGrams) return both(band.belowAllowedGrams)
  return both(stated > band.aboveGrams ? band.aboveAllowedGrams : bandRatio * stated)
}

function shared({moreRatio, lessRatio}: Shares, stated: number): Allowance {
  return {below: moreRatio * stated, above: lessRatio * stated}
}
