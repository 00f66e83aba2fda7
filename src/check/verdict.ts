import type {Settings} from '../cookbook/cookbook.ts'
import type {Stated, StatedFigure} from '../cookbook/recipe.ts'
import {type Basis, type Figure, type Figures, isComplete} from '../food/figures.ts'
import type {Nutrient} from '../food/nutrients.ts'
import type {Computed} from '../nutrition/computed.ts'
import {internalNutrient, publishedBy} from '../nutrition/published.ts'
import {coverageFactor, expandedUncertainty} from '../units/uncertain.ts'
import {energyNutrients} from './energy-method.ts'
import {isAtMost} from './is-at-most.ts'
import {onBasis} from './stated-basis.ts'
import {allowance} from './tolerance/tolerance.ts'

export type Verdict = 'agrees' | 'tolerated' | 'drift' | 'unknown'

/** A stated figure beside the computed one. */
export interface Judged {
  readonly stated: StatedFigure
  /** On the basis of the stated figure. */
  readonly computed: Figure
  /** What was computed: for energy, by which method. */
  readonly against: Nutrient
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
  const publishing = publishedBy(settings, computed.recipe)
  const context = {grams: basis.grams, settings}
  return stated.figures.map((figure) => {
    const candidates =
      figure.nutrient === 'energy'
        ? energyNutrients(computed.recipe, settings)
        : ([internalNutrient(figure.nutrient, publishing)] as const)
    const one = (against: Nutrient) => judgeOne(figure, against, basis.figures, context)
    const [first, ...others] = candidates
    // A method that cannot be worked out for lack of a figure excuses nothing.
    const known = others.map(one).filter(({computed: found}) => isComplete(found))
    return known.reduce(better, one(first))
  })
}

function judgeOne(
  stated: StatedFigure,
  against: Nutrient,
  figures: Figures<Basis>,
  context: Context,
): Judged {
  const computed = figures[against]
  return {
    stated,
    computed,
    against,
    margins: margins(stated, computed, context),
    verdict: verdict(stated, computed, context),
  }
}

/** Best first; the first method of equals, which is the foods' own energy, stands. */
const ranking: readonly Verdict[] = ['agrees', 'tolerated', 'unknown', 'drift']

function better(found: Judged, other: Judged): Judged {
  return ranking.indexOf(other.verdict) < ranking.indexOf(found.verdict) ? other : found
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
  const {below, above} = allowance(
    {nutrient, value: computed.value, stated: stated.value, grams},
    settings,
  )
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
