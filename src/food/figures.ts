import type {PartsTerm} from '../units/linear-parts.ts'
import {linear, noParts, type Uncertain} from '../units/uncertain.ts'
import {type Nutrient, nutrients} from './nutrients.ts'

/**
 * One nutrient figure. `missing` names the foods whose figure for the nutrient is unknown: while
 * it is not empty the value is "at least" what is known. Unknown is never counted as 0 in silence.
 */
export interface Figure extends Uncertain {
  readonly missing: ReadonlySet<string>
}

/** What figures refer to; the likeliest slip in this trade is to mix them up, so the type tells. */
export type Basis = '100 g' | 'batch' | 'serving'

declare const basis: unique symbol

/** A figure for every nutrient, on one basis. */
export type Figures<B extends Basis> = Readonly<Record<Nutrient, Figure>> & {
  readonly [basis]?: B
}

const nothingMissing: ReadonlySet<string> = new Set()

/** A figure that is known. */
export function known(quantity: Uncertain): Figure {
  return {value: quantity.value, parts: quantity.parts, missing: nothingMissing}
}

/** A figure nobody published for the food named. */
export function unknown(foodName: string): Figure {
  return {value: 0, parts: new Map(), missing: new Set([foodName])}
}

export function isComplete(figure: Figure): boolean {
  return figure.missing.size === 0
}

/**
 * Figures made nutrient by nutrient, each when it is first asked for: a check looks at four of
 * twenty. Read them by name; a spread copies nothing, so derive new figures with this function.
 */
export function figuresOf<B extends Basis>(figure: (nutrient: Nutrient) => Figure): Figures<B> {
  return lazyFigures(figure, true)
}

/**
 * The same for figures that cost next to nothing: they are made anew each time and not kept. A line
 * of a recipe is looked at once for most nutrients, and a cookbook has more lines than memory.
 * @param figure must make no sources of its own, or one figure would not be itself
 */
export function figuresMadeAnew<B extends Basis>(
  figure: (nutrient: Nutrient) => Figure,
): Figures<B> {
  return lazyFigures(figure, false)
}

function lazyFigures<B extends Basis>(
  make: (nutrient: Nutrient) => Figure,
  isKept: boolean,
): Figures<B> {
  // The class has a getter for every nutrient, which the compiler cannot see.
  return new LazyFigures(make, isKept) as object as Figures<B>
}

class LazyFigures {
  readonly #make: (nutrient: Nutrient) => Figure
  readonly #made: Partial<Record<Nutrient, Figure>> | undefined

  constructor(make: (nutrient: Nutrient) => Figure, isKept: boolean) {
    this.#make = make
    this.#made = isKept ? {} : undefined
  }

  static {
    for (const nutrient of nutrients) {
      Object.defineProperty(LazyFigures.prototype, nutrient, {
        get(this: LazyFigures): Figure {
          const made = this.#made?.[nutrient] ?? this.#make(nutrient)
          if (this.#made) this.#made[nutrient] = made
          return made
        },
      })
    }
  }
}

/** One term of a weighted sum: `weight` may be negative (poured off), and uncertain itself. */
export interface Term {
  readonly figure: Figure
  /** Dimensionless; e.g. grams ÷ 100 for figures per 100 g. */
  readonly weight: Uncertain
}

/**
 * Σ weight × figure, to first order. A figure stays incomplete when any term with a weight other
 * than zero is.
 */
export function weightedSum(terms: Iterable<Term>): Figure {
  const parts: PartsTerm[] = []
  let missing = nothingMissing
  let value = 0
  for (const {figure, weight} of terms) {
    value += figure.value * weight.value
    if (weight.value !== 0) {
      if (figure.parts !== noParts) parts.push({parts: figure.parts, factor: weight.value})
      missing = union(missing, figure.missing)
    }
    if (figure.value !== 0 && weight.parts !== noParts) {
      parts.push({parts: weight.parts, factor: figure.value})
    }
  }
  const sum = linear(value, parts)
  return {value: sum.value, parts: sum.parts, missing}
}

function union(left: ReadonlySet<string>, right: ReadonlySet<string>): ReadonlySet<string> {
  if (right.size === 0) return left
  return left.size === 0 ? right : new Set([...left, ...right])
}
