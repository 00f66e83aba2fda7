import type {Settings} from '../cookbook/cookbook.ts'
import type {Stated, StatedFigure} from '../cookbook/recipe.ts'
import {type Figure, isComplete} from '../food/figures.ts'
import type {Computed} from '../nutrition/computed.ts'
import {publishedFigure} from '../nutrition/published.ts'
import {coverageFactor, expandedUncertainty} from '../units/uncertain.ts'
import {isAtMost} from './is-at-most.ts'
import {onBasis} from './stated-basis.ts'
import {allowance} from './tolerance/tolerance.ts'

export type Verdict = 'agrees' | 'tolerated' | 'drift' | 'unknown'

/** A stated figure beside the computed one. */
export interface Judged {
  readonly stated: StatedFigure
  /** On the basis of the stated figure. */
  readonly computed: Figure
  readonly margins: Margins
  readonly verdict: Verdict
}

/** How far a stated figure lies from the computed one, and how far it may; in the nutrient's unit. */
export interface Margins {
  /** Stated − computed. */
  readonly difference: number
  /** Up to this distance the two agree. */
  readonly agreement: number
  /** Up to this distance, on the side of the difference, the cookbook tolerates. */
  readonly allowed: number
}

/**
 * Judges every stated figure of a recipe.
 * @returns an empty list when the basis it is stated on cannot be computed (no `yield` for 100 g)
 */
export function judge(stated: Stated, computed: Computed, settings: Settings): readonly Judged[] {
  const basis = onBasis(stated.basis, computed)
  if (basis === undefined) return []
  return stated.figures.map((figure) => {
    const against = publishedFigure(basis.figures, figure.nutrient, settings)
    const context = {grams: basis.grams, settings}
    return {
      stated: figure,
      computed: against,
      margins: margins(figure, against, context),
      verdict: verdict(figure, against, context),
    }
  })
}

/**
 * `agrees` when the difference lies within the expanded uncertainty of both figures (GUM, k = 2)
 * or half the last unit written; `tolerated` within the cookbook's tolerance; else `drift`. An
 * incomplete computed figure is only a lower bound: stating less than it is still drift, anything
 * else is `unknown`.
 */
export function verdict(stated: Compared, computed: Figure, context: Context): Verdict {
  const {difference, agreement, allowed} = margins(stated, computed, context)
  const agrees = isAtMost(Math.abs(difference), agreement)
  const isWithin = agrees || isAtMost(Math.abs(difference), allowed)
  if (!isComplete(computed)) return difference < 0 && !isWithin ? 'drift' : 'unknown'
  return agrees ? 'agrees' : isWithin ? 'tolerated' : 'drift'
}

type Compared = Pick<StatedFigure, 'nutrient' | 'value' | 'increment'>

interface Context {
  /** Weight that both figures belong to. */
  readonly grams: number
  readonly settings: Pick<Settings, 'tolerance' | 'tolerances'>
}

function margins(stated: Compared, computed: Figure, {grams, settings}: Context): Margins {
  const difference = stated.value - computed.value
  const {nutrient, increment} = stated
  const {below, above} = allowance({nutrient, value: computed.value, grams}, settings)
  return {
    difference,
    agreement: Math.max(combinedUncertainty(increment, computed), increment / 2),
    allowed: difference < 0 ? below : above,
  }
}

/** Expanded uncertainty of the difference: the computed figure's, and the rounding of the stated one. */
function combinedUncertainty(increment: number, computed: Figure): number {
  const rounding = (coverageFactor * increment) / Math.sqrt(12)
  return Math.hypot(expandedUncertainty(computed), rounding)
}
