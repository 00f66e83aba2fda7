import {roundedText} from '../../units/format-figure.ts'
import type {LabelRules} from '../label-rules.ts'
import type {Nutrient} from '../nutrients.ts'
import type {Declared} from './scheme.ts'

/**
 * The number of a declaration in text: a US panel without zeros at the end (`1`, `0.5`), an EU table
 * with the digits of its rounding step (`9.0`, `0.40` of salt), nothing as `0` in both.
 */
export function declaredNumber(
  rules: LabelRules,
  nutrient: Nutrient,
  {value}: Pick<Declared, 'value'>,
): string {
  if (rules === 'us' || value === 0) return String(value)
  return roundedText(value, euDecimals(nutrient, value))
}

/** European Commission, guidance on tolerances (Dec 2012), rounding guidelines. */
function euDecimals(nutrient: Nutrient, value: number): number {
  switch (nutrient) {
    case 'energy':
    case 'energyEuKilojoules':
    case 'potassium':
    case 'calcium':
      return 0
    case 'salt':
      return value < 1 ? 2 : 1
    default:
      return value < 10 ? 1 : 0
  }
}
