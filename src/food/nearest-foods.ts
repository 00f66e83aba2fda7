import {type Basis, type Figures, isComplete} from './figures.ts'
import type {Food} from './food.ts'
import {methodFactors} from './method-factors.ts'

/** kcal per gram. */
const {protein, fat, carbohydrate} = methodFactors.energyGeneral
const factors = {protein, fat, carbohydrate, availableCarbohydrate: carbohydrate} as const

/** A food and how far its macros are from those looked for. */
export interface NearFood {
  readonly food: Food
  /** kcal, 0 or more, on the basis of the figures looked for: see `macroDistanceKcal`. */
  readonly distanceKcal: number
}

/**
 * The macros that foods are compared by, grams in 100 g or in what is compared; what is unknown is
 * undefined.
 */
export type Macros = Readonly<Record<keyof typeof factors, number | undefined>>

export function macrosOf(figures: Figures<Basis>): Macros {
  const value = (nutrient: keyof typeof factors): number | undefined =>
    isComplete(figures[nutrient]) ? figures[nutrient].value : undefined
  return {
    protein: value('protein'),
    fat: value('fat'),
    carbohydrate: value('carbohydrate'),
    availableCarbohydrate: value('availableCarbohydrate'),
  }
}

/** The macros of so many times as much. */
export function scaledMacros(macros: Macros, factor: number): Macros {
  if (factor === 1) return macros
  const scaled = (nutrient: keyof Macros): number | undefined => {
    const value = macros[nutrient]
    return value === undefined ? undefined : value * factor
  }
  return {
    protein: scaled('protein'),
    fat: scaled('fat'),
    carbohydrate: scaled('carbohydrate'),
    availableCarbohydrate: scaled('availableCarbohydrate'),
  }
}

/** Finds the foods whose macros are nearest, holding no more than are asked for. */
export class NearestFoods {
  readonly #macros: Macros
  readonly #most: number
  /** Nearest first; of those as near, the first that was shown. */
  readonly #near: NearFood[] = []

  /**
   * @param figures of 100 g, or of what is used; the foods that are shown are on the same basis
   * @param most length of the answer at most
   */
  constructor(figures: Figures<Basis>, most: number) {
    this.#macros = macrosOf(figures)
    this.#most = most
  }

  get nearest(): readonly NearFood[] {
    return this.#near
  }

  /**
   * Shows another food.
   * @param hundreds grams of it that count, by 100
   */
  add(food: Food, hundreds = 1): void {
    this.addRow(scaledMacros(macrosOf(food.per100g), hundreds), () => food)
  }

  /**
   * Shows the macros of a food, which is made only where they are near; one with an unknown macro
   * is left out: it might be anywhere.
   * @param make undefined where the food is not wanted
   */
  addRow(macros: Macros, make: () => Food | undefined): void {
    const distanceKcal = distance(this.#macros, macros)
    if (distanceKcal === undefined) return
    const furthest = this.#near[this.#most - 1]?.distanceKcal ?? Number.POSITIVE_INFINITY
    if (distanceKcal >= furthest) return
    const food = make()
    if (!food) return
    const place = this.#near.findIndex((other) => other.distanceKcal > distanceKcal)
    this.#near.splice(place === -1 ? this.#near.length : place, 0, {food, distanceKcal})
    if (this.#near.length > this.#most) this.#near.pop()
  }
}

/**
 * How far apart the macros are: √Σ(difference in grams × kcal per gram)², so that a gram
 * of fat counts for what it weighs in a diet. The measure is ours, no source. Carbohydrate is
 * compared without fibre where both foods have it so, else with.
 * @returns kcal per 100 g, or undefined where a macro of either is unknown
 */
export function macroDistanceKcal(
  left: Figures<'100 g'>,
  right: Figures<'100 g'>,
): number | undefined {
  return distance(macrosOf(left), macrosOf(right))
}

function distance(left: Macros, right: Macros): number | undefined {
  const apart = (nutrient: keyof Macros): number => {
    const [one = Number.NaN, other = Number.NaN] = [left[nutrient], right[nutrient]]
    return (one - other) * factors[nutrient]
  }
  const available = apart('availableCarbohydrate')
  const carbohydrate = Number.isNaN(available) ? apart('carbohydrate') : available
  const sum = Math.hypot(apart('protein'), apart('fat'), carbohydrate)
  return Number.isNaN(sum) ? undefined : sum
}
