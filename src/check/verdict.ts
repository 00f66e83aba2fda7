import type {Settings} from '../cookbook/cookbook.ts'
import type {Stated, StatedFigure} from '../cookbook/recipe.ts'
import {type Figure, isComplete} from '../food/figures.ts'
import type {Computed} from '../nutrition/computed.ts'
import {publishedFigure} from '../nutrition/published.ts'
import {coverageFactor, expandedUncertainty} from '../units/uncertain.ts'
import {isAtMost} from './is-at-most.ts'
import {allowance} from './tolerance/tolerance.ts'

export type Verdict = 'agrees' | 'tolerated' | 'drift' | 'unknown'

/** A stated figure beside the computed one. */
export interface Judged {
  readonly stated: StatedFigure
  /** On the basis of the stated figure. */
  readonly computed: Figure
  readonly verdict: Verdict
}

/**
 * Judges every stated figure of a recipe.
 * @returns an empty list when the basis it is stated on cannot be computed (no `yield` for 100 g)
 */
export function judge(stated: Stated, computed: Computed, settings: Settings): readonly Judged[] {
  const basis = onBasis(stated, computed)
  if (basis === undefined) return []
  return stated.figures.map((figure) => {
    const against = publishedFigure(basis.figures, figure.nutrient, settings)
    return {
      stated: figure,
      computed: against,
      verdict: verdict(figure, against, {grams: basis.grams, settings}),
    }
  })
}

function onBasis(
  {basis}: Stated,
  {batch, perServing, per100g, mixedGrams, batchGrams, recipe}: Computed,
) {
  const wholeGrams = (batchGrams ?? mixedGrams).value
  switch (basis) {
    case 'batch':
      return {figures: batch, grams: wholeGrams}
    case '100 g':
      return per100g && {figures: per100g, grams: 100}
    case 'serving':
      return perServing && {figures: perServing, grams: wholeGrams / (recipe.serves?.value ?? 1)}
  }
}

/**
 * `agrees` when the difference lies within the expanded uncertainty of both figures (GUM, k = 2)
 * or half the last unit written; `tolerated` within the cookbook's tolerance; else `drift`. An
 * incomplete computed figure is only a lower bound: stating less than it is still drift, anything
 * else is `unknown`.
 */
export function verdict(
  stated: Pick<StatedFigure, 'nutrient' | 'value' | 'increment'>,
  computed: Figure,
  context: {readonly grams: number; readonly settings: Pick<Settings, 'tolerance' | 'tolerances'>},
): Verdict {
  const difference = stated.value - computed.value
  const distance = Math.abs(difference)
  const halfUnit = stated.increment / 2
  const allowed = allowance(
    {nutrient: stated.nutrient, value: computed.value, grams: context.grams},
    context.settings,
  )
  const side = difference < 0 ? allowed.below : allowed.above
  const agrees = isAtMost(
    distance,
    Math.max(combinedUncertainty(stated.increment, computed), halfUnit),
  )
  const isWithin = agrees || isAtMost(distance, side)
  if (!isComplete(computed)) return difference < 0 && !isWithin ? 'drift' : 'unknown'
  return agrees ? 'agrees' : isWithin ? 'tolerated' : 'drift'
}

/** Expanded uncertainty of the difference: the computed figure's, and the rounding of the stated one. */
function combinedUncertainty(increment: number, computed: Figure): number {
  const rounding = (coverageFactor * increment) / Math.sqrt(12)
  return Math.hypot(expandedUncertainty(computed), rounding)
}
