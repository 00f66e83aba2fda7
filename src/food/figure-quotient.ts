import {quotient} from '../units/uncertain.ts'
import type {Figure} from './figures.ts'

/** `left` ÷ `right`, to first order; unknown where either is. `right` must not be 0. */
export function figureQuotient(left: Figure, right: Figure): Figure {
  return {...quotient(left, right), missing: new Set([...left.missing, ...right.missing])}
}
