import {roundedText} from '../../units/format-figure.ts'
import type {LabelRules} from '../label-rules.ts'
import type {Nutrient} from '../nutrients.ts'
import type {Declared} from './scheme.ts'

/**
 * The number of a declaration in text: a US panel without zeros at the end (`1`, `0.5`), an EU table
 * with the digits of its rounding step (`9.0`, `0.40` of salt), nothing as `0` in both. Vitamins and
 * minerals of an EU table keep their two or three significant digits: 0.84 mg of iron is no 0.8.
 */
export function declaredNumber(
  rules: LabelRules,
  nutrient: Nutrient,
  {value}: Pick<Declared, 'value'>,
): string {
  if (rules === 'us' || value === 0) return String(value)
  const decimals = euDecimals(nutrient, value)
  return decimals === undefined ? String(value) : roundedText(value, decimals)
}

/** European Commission, guidance on tolerances (Dec 2012), rounding guidelines. */
function euDecimals(nutrient: Nutrient, value: number): number | undefined {
  switch (nutrient) {
    case 'energy':
    case 'energyEuKilojoules':
      return 0
    case 'potassium':
    case 'calcium':
    case 'iron':
    case 'vitaminD':
      return undefined
    case 'salt':
      return value < 1 ? 2 : 1
    default:
      return value < 10 ? 1 : 0
  }
}
