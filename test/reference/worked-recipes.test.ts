import {describe, expect, test} from 'vitest'
import {armedForces} from './worked/armed-forces.ts'
import {armedForcesBakesOff} from './worked/armed-forces-bakes-off.ts'
import {armedForcesDishesOff} from './worked/armed-forces-dishes-off.ts'
import {armedForcesMeatOff} from './worked/armed-forces-meat-off.ts'
import {armedForcesSandwichesOff} from './worked/armed-forces-sandwiches-off.ts'
import {dietaryStudiesBakes} from './worked/dietary-studies-bakes.ts'
import {dietaryStudiesDishes} from './worked/dietary-studies-dishes.ts'
import {dietaryStudiesParts} from './worked/dietary-studies-parts.ts'
import {schoolKitchens} from './worked/school-kitchens.ts'
import {schoolKitchensOff} from './worked/school-kitchens-off.ts'
import {computeWorked, type Pair, pairsOf, type WorkedRecipe} from './worked/worked-recipe.ts'

// Recipes whose publishers give weights and the figures that came of them; the documents are named
// where the recipes stand. Foods by their rows in USDA SR28 (2015, revised 2016).

/** Pairs of printed and computed figures of every recipe, by row. */
function pairsByRow(recipes: readonly WorkedRecipe[]): ReadonlyMap<string, readonly Pair[]> {
  const computed = computeWorked(recipes)
  return new Map(
    recipes.map((recipe) => {
      const one = computed.get(recipe.row)
      return [recipe.row, one ? pairsOf(recipe, one) : []]
    }),
  )
}

/** Relative difference of a sum and a printed figure that leaves the two agreeing. */
const agreementRatio = 0.05

/**
 * A figure in whole grams stands for anything that rounds to it, and the sum has to be within 5 % of
 * that: the publishers had other records of the foods, and the weights are in eighths of an ounce.
 */
function agrees({stated, computed}: Pair): boolean {
  return Math.abs(computed - stated) <= agreementRatio * stated + unitOf(stated) / 2
}

/** Mississippi prints hundredths, the others whole units. */
function unitOf(stated: number): number {
  return Number.isInteger(stated) ? 1 : 0.01
}

function gapPercent({stated, computed}: Pair): number {
  return (100 * (computed - stated)) / stated
}

describe('Recipes with figures of their publishers own records of foods', () => {
  const recipes = [...armedForces, ...schoolKitchens]
  const pairs = pairsByRow(recipes)

  test.each(recipes)('$row $title agrees within its rounding and 5 %', ({row}) => {
    const found = pairs.get(row) ?? []
    expect(found.length).toBeGreaterThan(1)
    expect(found.filter((pair) => !agrees(pair))).toEqual([])
  })
})

describe('Recipes with figures computed from the release', () => {
  const recipes = [...dietaryStudiesParts, ...dietaryStudiesBakes, ...dietaryStudiesDishes]
  const pairs = pairsByRow(recipes)

  /**
   * The publisher sums the same rows, with parts of recipes rounded to what is printed: never more
   * than one in the last digit (1 kcal, 0.01 g).
   */
  const lastDigit = {energy: 1, protein: 0.01, fat: 0.01, carbohydrate: 0.01}

  test.each(recipes)('$row $title agrees to the last digit', ({row}) => {
    const found = pairs.get(row) ?? []
    expect(found).toHaveLength(4)
    for (const {nutrient, stated, computed} of found) {
      expect(Math.abs(computed - stated), nutrient).toBeLessThan(lastDigit[nutrient])
    }
  })
})

describe('Recipes with figures that do not follow from their weights', () => {
  const recipes = [
    ...armedForcesBakesOff,
    ...armedForcesDishesOff,
    ...armedForcesSandwichesOff,
    ...armedForcesMeatOff,
    ...schoolKitchensOff,
  ]
  const pairs = pairsByRow(recipes)

  test.each(recipes)('$row $title is off: $because', ({row, gapPercent: gaps}) => {
    const found = pairs.get(row) ?? []
    const off = found.filter((pair) => !agrees(pair))
    expect(off.map(({nutrient}) => nutrient).toSorted()).toEqual(Object.keys(gaps).toSorted())
    for (const pair of off) {
      // The gaps are written down to a tenth of a percent.
      expect(Math.abs(gapPercent(pair) - (gaps[pair.nutrient] ?? NaN)), pair.nutrient).toBeLessThan(
        0.1,
      )
    }
  })
})
