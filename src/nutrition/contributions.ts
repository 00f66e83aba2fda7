import type {Nutrient} from '../food/nutrients.ts'
import type {Computed, ComputedLine} from './computed.ts'

/** What one line brings to the batch that is served, in the nutrient's unit. */
export interface Contribution {
  readonly line: ComputedLine
  readonly value: number
}

/** The counted lines that bring most of a nutrient to the batch, most first. */
export function contributions(computed: Computed, nutrient: Nutrient): readonly Contribution[] {
  return computed.lines
    .filter(({role}) => role === 'counted')
    .map((line) => ({line, value: line.adds[nutrient].value * computed.servedRatio.value}))
    .filter(({value}) => value !== 0)
    .sort((left, right) => right.value - left.value)
}
