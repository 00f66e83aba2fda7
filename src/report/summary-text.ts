import {countText} from './count-text.ts'
import type {Summary} from './summary.ts'

/** Stated figures that a verdict was passed on. */
export function statedCount({verdicts}: Pick<Summary, 'verdicts'>): number {
  return Object.values(verdicts).reduce((sum, count) => sum + count, 0)
}

/** `90 agree, 6 tolerated, 0 drift`. */
export function verdictsText({verdicts}: Pick<Summary, 'verdicts'>): string {
  const {agrees, tolerated, drift, unknown} = verdicts
  const unchecked = unknown > 0 ? `, ${unknown} cannot be checked` : ''
  return `${agrees} agree, ${tolerated} tolerated, ${drift} drift${unchecked}`
}

/** `2 errors, 1 warning, 0 notes`. */
export function findingsText({findings}: Pick<Summary, 'findings'>): string {
  const {error, warning, note} = findings
  return [countText(error, 'error'), countText(warning, 'warning'), countText(note, 'note')].join(
    ', ',
  )
}
