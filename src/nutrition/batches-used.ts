import type {Computed, ComputedLine} from './computed.ts'

/** Share of a component's whole batch that a line takes, 0 or more. */
export function batchesUsed({grams}: Pick<ComputedLine, 'grams'>, component: Computed): number {
  return grams.value / (component.batchGrams ?? component.mixedGrams).value
}
