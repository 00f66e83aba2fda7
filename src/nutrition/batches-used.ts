import type {Computed, ComputedLine} from './computed.ts'
import {wholeGrams} from './whole-grams.ts'

/** Share of a component's whole batch that a line takes, 0 or more. */
export function batchesUsed({grams}: Pick<ComputedLine, 'grams'>, component: Computed): number {
  return grams.value / wholeGrams(component).value
}
