import {type Figures, isComplete} from './figures.ts'
import type {Food} from './food.ts'
import {methodFactors} from './method-factors.ts'

/** A food and how far its macros are from those looked for. */
export interface NearFood {
  readonly food: Food
  /** kcal per 100 g, 0 or more: see `macroDistanceKcal`. */
  readonly distanceKcal: number
}

/**
 * The foods whose macros are nearest, nearest first. A food with an unknown macro is left out: it
 * might be anywhere.
 * @param most length of the answer at most
 */
export function nearestFoods(
  figures: Figures<'100 g'>,
  foods: Iterable<Food>,
  most: number,
): readonly NearFood[] {
  const near: NearFood[] = []
  for (const food of foods) {
    const distanceKcal = macroDistanceKcal(figures, food.per100g)
    if (distanceKcal !== undefined) near.push({food, distanceKcal})
  }
  return near.toSorted((left, right) => left.distanceKcal - right.distanceKcal).slice(0, most)
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
