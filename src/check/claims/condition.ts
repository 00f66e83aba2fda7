import {isComplete} from '../../food/figures.ts'
import {formatFigure, roundedText} from '../../units/format-figure.ts'
import {expandedUncertainty} from '../../units/uncertain.ts'
import {isAtMost} from '../is-at-most.ts'
import type {Dish} from './dish.ts'
import {type Measure, measuredText} from './measure.ts'

export type Outcome = 'holds' | 'fails' | 'unknown'

/** What came of one condition of a claim. */
export interface Test {
  readonly outcome: Outcome
  /** Goes on after "with": "fibre per 100 g `2.1 ± 0.1 g`"; of an unknown one, after "because of". */
  readonly found: string
  /** Goes on after "expected": "`3 g` or more". */
  readonly expected: string
}

export type Condition = (dish: Dish) => Test

/** No more than a limit, even at the upper end of the uncertainty. */
export function atMost(measure: Measure, limit: number): Condition {
  return limited(measure, `${limitText(limit, measure.unit)} or less`, (value, uncertainty) =>
    isAtMost(value + uncertainty, limit),
  )
}

/** Less than a limit, even at the upper end of the uncertainty. */
export function below(measure: Measure, limit: number): Condition {
  return limited(
    measure,
    `less than ${limitText(limit, measure.unit)}`,
    (value, uncertainty) => !isAtMost(limit, value + uncertainty),
  )
}

/** No less than a limit, even at the lower end of the uncertainty. */
export function atLeast(measure: Measure, limit: number): Condition {
  return limited(measure, `${limitText(limit, measure.unit)} or more`, (value, uncertainty) =>
    isAtMost(limit, value - uncertainty),
  )
}

/** A claim that the law does not give this kind of dish. */
export function notFor(what: string): Condition {
  return () => ({outcome: 'fails', found: what, expected: 'another claim'})
}

function limited(
  measure: Measure,
  expected: string,
  isKept: (value: number, uncertainty: number) => boolean,
): Condition {
  return (dish) => {
    const figure = measure.figure(dish)
    if (figure === undefined) {
      const found = `no \`${measure.needs}\``
      return {outcome: 'unknown', found, expected: `\`${measure.needs}\` to tell ${measure.name}`}
    }
    if (!isComplete(figure)) {
      const foods = [...figure.missing].map((food) => `\`${food}\``).join(', ')
      return {
        outcome: 'unknown',
        found: `unknown ${measure.name}`,
        expected: `a figure for ${foods}`,
      }
    }
    return {
      outcome: isKept(figure.value, expandedUncertainty(figure)) ? 'holds' : 'fails',
      found: `${measure.name} \`${measuredText(figure, measure.unit)}\``,
      expected,
    }
  }
}

function limitText(limit: number, unit: Measure['unit']): string {
  const decimals = Math.max(0, -Math.floor(Math.log10(limit) + 1e-9))
  const finest = Number.isInteger(limit) ? 0 : Math.max(1, decimals)
  const text = unit === '%' ? `${roundedText(limit, finest)} %` : formatFigure(limit, unit, finest)
  return `\`${text}\``
}
