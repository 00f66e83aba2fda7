import {type Figure, weightedSum} from '../../food/figures.ts'
import {exact} from '../../units/uncertain.ts'
import type {Computed} from '../computed.ts'
import {type OpenedFood, openedFoods} from './opened.ts'

/** A formula with all its flour as 100 %. */
export interface BakersPercentages {
  readonly flourGrams: number
  /** Every ingredient, components opened; most first. */
  readonly rows: readonly (OpenedFood & {readonly percent: number})[]
  /** Plain water ÷ flour, percent. */
  readonly hydrationPercent: number
  /**
   * All water of the dough but the flour's own, from milk, egg, butter and the rest, ÷ flour, percent;
   * at least that where nobody gives the water of one of them.
   */
  readonly effectiveHydration: Figure
}

/** Below this share of the mix, flour thickens and does not make a dough; the project's choice. */
const leastFlourRatio = 0.2

/** Grams of water in 100 g from which a food is plain water. */
const plainWaterGrams = 99.5

/**
 * Baker's percentages: 100 × ingredient ÷ total flour, flour in preferments and other components
 * included. Common practice of the trade, no source.
 * @returns undefined where there is no flour to speak of
 */
export function bakersPercentages(computed: Computed): BakersPercentages | undefined {
  const opened = openedFoods(computed)
  const flourGrams = total(opened.filter(isFlour))
  if (flourGrams === 0 || flourGrams < leastFlourRatio * total(opened)) return undefined
  const percentOfFlour = (grams: number): number => (100 * grams) / flourGrams
  const others = opened.filter((one) => !isFlour(one))
  return {
    flourGrams,
    rows: opened
      .map((one) => ({...one, percent: percentOfFlour(one.grams)}))
      .sort((left, right) => right.grams - left.grams),
    hydrationPercent: percentOfFlour(total(others.filter(isPlainWater))),
    effectiveHydration: weightedSum(
      others.map(({food, grams}) => ({
        figure: food.per100g.water,
        weight: exact(grams / flourGrams),
      })),
    ),
  }
}

function isFlour({food}: OpenedFood): boolean {
  return food.traits.has('flour')
}

function isPlainWater({food}: OpenedFood): boolean {
  return food.per100g.water.value >= plainWaterGrams
}

function total(foods: readonly OpenedFood[]): number {
  return foods.reduce((sum, {grams}) => sum + grams, 0)
}
