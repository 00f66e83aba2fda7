import {type Figures, isComplete} from './figures.ts'
import type {Food} from './food.ts'
import {methodFactors} from './method-factors.ts'

/** A food and how far its macros are from those looked for. */
export interface NearFood {
  readonly food: Food
  /** kcal per 100 g, 0 or more: see `macroDistanceKcal`. */
  readonly distanceKcal: number
}

/** Finds the foods whose macros are nearest, holding no more than a few of those it is shown. */
export class NearestFoods {
  readonly #figures: Figures<'100 g'>
  readonly #most: number
  readonly #near: NearFood[] = []

  /** @param most length of the answer at most */
  constructor(figures: Figures<'100 g'>, most: number) {
    this.#figures = figures
    this.#most = most
  }

  /** Shows another food. One with an unknown macro is left out: it might be anywhere. */
  add(food: Food): void {
    const distanceKcal = macroDistanceKcal(this.#figures, food.per100g)
    if (distanceKcal === undefined) return
    this.#near.push({food, distanceKcal})
    if (this.#near.length > 2 * this.#most + 64) {
      this.#near.splice(0, this.#near.length, ...this.nearest())
    }
  }

  /** Nearest first; of those as near, the first that was shown. */
  nearest(): readonly NearFood[] {
    return this.#near
      .toSorted((left, right) => left.distanceKcal - right.distanceKcal)
      .slice(0, this.#most)
  }
}

const {protein, fat, carbohydrate} = methodFactors.energyGeneral
const factors = {protein, fat, carbohydrate, availableCarbohydrate: carbohydrate} as const

/**
 * How far apart the macros of 100 g are: √Σ(difference in grams × kcal per gram)², so that a gram
 * of fat counts for what it weighs in a diet. The measure is ours, no source. Carbohydrate is
 * compared without fibre where both foods have it so, else with.
 * @returns kcal per 100 g, or undefined where a macro of either is unknown
 */
export function macroDistanceKcal(
  left: Figures<'100 g'>,
  right: Figures<'100 g'>,
): number | undefined {
  const inBoth = (nutrient: keyof typeof factors): boolean =>
    isComplete(left[nutrient]) && isComplete(right[nutrient])
  const compared = [
    'protein',
    'fat',
    inBoth('availableCarbohydrate') ? 'availableCarbohydrate' : 'carbohydrate',
  ] as const
  if (!compared.every(inBoth)) return undefined
  return Math.hypot(
    ...compared.map((each) => (left[each].value - right[each].value) * factors[each]),
  )
}
