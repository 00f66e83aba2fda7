import type {Position} from 'unist'
import {type Span, spanOfRounded} from '../units/span.ts'
import type {LabelRules} from './label-rules.ts'
import type {Nutrient, PublishedNutrient} from './nutrients.ts'
import type {Polyol} from './polyols.ts'
import {euSpan} from './rounding/eu.ts'
import {middled} from './rounding/scheme.ts'
import {usSpan} from './rounding/us.ts'

/** A line of a nutrition panel. Its carbohydrate is the law's own: with fibre in the US, without in the EU. */
export type LabelLine = PublishedNutrient | 'energyKilojoules'

/** One figure of a panel as the writer copied it, for the amount the panel is about. */
export interface Printed {
  /** In the nutrient's own unit (kJ for `energyKilojoules`); for `less than` the limit. */
  readonly value: number
  /** `less than 1 g`, `<0.5 g`. */
  readonly isLessThan: boolean
  /** Unit of the last written digit, same unit as `value`. */
  readonly increment: number
  /** As written. */
  readonly text: string
  readonly place: Position
}

/** The nutrition panel of a packaged food. */
export interface Label {
  /** What the printed figures are for: 100, or the grams of one serving. */
  readonly perGrams: number
  /** The same as written: `28 g (2 tbsp)`. */
  readonly perText: string
  readonly rules: LabelRules
  readonly printed: ReadonlyMap<LabelLine, Printed>
  /** Polyols by kind; then `printed` has no line for them. */
  readonly printedPolyols: ReadonlyMap<Polyol, Printed>
  /** Within the carbohydrate. */
  readonly printedAllulose?: Printed
  /** The day the writer read the packet, `2026-10-03`. */
  readonly readOn?: {readonly day: string; readonly place: Position}
  readonly state: 'as sold' | 'as prepared'
}

/**
 * The values a printed figure may have been rounded from, for the amount the panel is about:
 * 80 kcal on a US panel is 75 to 85. A figure the law would not print so (2.3 g of fat in the US)
 * was rounded to its last written digit.
 */
export function printedSpan(line: LabelLine, printed: Printed, rules: LabelRules): Span {
  const {value, isLessThan, increment} = printed
  const declared = {kind: isLessThan ? 'less than' : 'amount', value} as const
  const byLaw =
    rules === 'us'
      ? line !== 'energyKilojoules' && usSpan(line, declared)
      : euSpan(euNutrient(line), declared)
  if (byLaw) return byLaw
  return isLessThan ? middled(0, value) : spanOfRounded(value, increment)
}

/** The EU guidance rounds kcal and kJ alike, and its carbohydrate is without fibre. */
function euNutrient(line: LabelLine): Nutrient {
  if (line === 'energyKilojoules') return 'energy'
  return line === 'carbohydrate' ? 'availableCarbohydrate' : line
}
