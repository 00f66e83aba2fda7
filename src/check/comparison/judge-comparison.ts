import type {Comparison} from '../../cookbook/recipe.ts'
import {figureQuotient} from '../../food/figure-quotient.ts'
import {type Figure, isComplete} from '../../food/figures.ts'
import {type Publishing, publishedFigure} from '../../nutrition/published.ts'
import {roundedText} from '../../units/format-figure.ts'
import {expandedUncertainty} from '../../units/uncertain.ts'
import {isAtMost} from '../is-at-most.ts'
import {type Compared, parseComparison} from './parse-comparison.ts'
import type {Sides} from './sides.ts'

type Statement = Comparison['statements'][number]

/** Words of comparison beside what the two dishes give. */
export interface JudgedStatement {
  readonly statement: Statement
  /** Absent where the words cannot be read. */
  readonly compared?: Compared
  readonly here: Figure
  readonly there: Figure
  /** Here ÷ there; absent where the other side has none of it. */
  readonly ratio?: Figure
  readonly outcome: 'holds' | 'fails' | 'unknown' | 'unread'
}

/**
 * Judges words of comparison: they hold when they do at the unfavourable end of the uncertainty.
 * What both sides share, such as the figures of one food, is uncertain in both alike and cancels.
 * @param publishing of the dish that compares itself: both sides' energy is by its method
 */
export function judgeStatement(
  statement: Statement,
  sides: Sides,
  publishing: Publishing,
): JudgedStatement {
  const {nutrient, text} = statement
  const here = publishedFigure(sides.here, nutrient, publishing)
  const there = publishedFigure(sides.there, nutrient, publishing)
  const compared = parseComparison(text.value, nutrient)
  const base = {statement, here, there}
  if (!compared) return {...base, outcome: 'unread'}
  if (!isComplete(here) || !isComplete(there) || there.value <= 0) {
    return {...base, compared, outcome: 'unknown'}
  }
  const ratio = figureQuotient(here, there)
  return {...base, compared, ratio, outcome: isWithin(ratio, compared) ? 'holds' : 'fails'}
}

function isWithin(ratio: Figure, {bound, ratio: limit}: Compared): boolean {
  const uncertainty = expandedUncertainty(ratio)
  return bound === 'most'
    ? isAtMost(ratio.value + uncertainty, limit)
    : isAtMost(limit, ratio.value - uncertainty)
}

/** `46.1 ± 0.4 % less`, `20 ± 2 % more`. */
export function changeText(ratio: Figure): string {
  const percent = 100 * (ratio.value - 1)
  const uncertainty = roundedText(100 * expandedUncertainty(ratio), 1)
  return `${roundedText(Math.abs(percent), 1)} ± ${uncertainty} % ${percent <= 0 ? 'less' : 'more'}`
}

/** The boldest whole percentage that holds: `17 % less`; undefined where not one percent does. */
export function holdingWords(ratio: Figure, {bound}: Compared): string | undefined {
  const uncertainty = expandedUncertainty(ratio)
  const change = bound === 'most' ? 1 - ratio.value - uncertainty : ratio.value - uncertainty - 1
  // A change that is exactly a whole percentage must not lose it to floating-point error.
  const percent = Math.floor(Number((100 * change).toPrecision(12)))
  return percent < 1 ? undefined : `${percent} % ${bound === 'most' ? 'less' : 'more'}`
}
