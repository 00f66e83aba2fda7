import type {Pan} from '../../cookbook/recipe.ts'

/** What tins are measured in. */
export type LengthUnit = 'cm' | 'in'

/** The inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
export const millimetresPer: Readonly<Record<LengthUnit, number>> = {cm: 10, in: 25.4}

/** The unit that a tin's size was written in: quarters of an inch are seldom half centimetres. */
export function lengthUnit({acrossMillimetres}: Pick<Pan, 'acrossMillimetres'>): LengthUnit {
  const isMetric = isWhole((acrossMillimetres / millimetresPer.cm) * 2)
  return !isMetric && isWhole((acrossMillimetres / millimetresPer.in) * 4) ? 'in' : 'cm'
}

function isWhole(number: number): boolean {
  return Math.abs(number - Math.round(number)) < 0.001
}
