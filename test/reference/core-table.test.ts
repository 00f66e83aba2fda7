import {describe, expect, test} from 'vitest'
import type {CoreRow} from '../../src/food/core-row.ts'
import type {EnergyFactors} from '../../src/food/food.ts'
import {ethanolKcalPerGram} from '../../src/nutrition/losses.ts'
import {
  generalEnergyExceptions,
  massExceptions,
  specificEnergyExceptions,
} from '../food/core-exceptions.ts'
import {coreRows, printedFigure} from '../food/core-rows.ts'

// USDA National Nutrient Database for Standard Reference, Release 28 (Agricultural Research
// Service, 2015, revised 2016). Each row is held against itself: its proximates against 100 g, its
// energy against the factors printed with it (method: Merrill & Watt, USDA Agriculture Handbook 74,
// 1973). A slip in carrying a figure over shows in one or the other.

function grams(row: CoreRow, column: Parameters<typeof printedFigure>[1]): number {
  return printedFigure(row, column) ?? 0
}

function name({ndb, name}: CoreRow): string {
  return `${ndb} ${name}`
}

/** The rows a check finds must be the listed ones: a row that adds up again is taken off the list. */
function found(isOff: (row: CoreRow) => boolean): readonly string[] {
  return coreRows
    .map(({row}) => row)
    .filter(isOff)
    .map(({ndb}) => ndb)
    .toSorted()
}

function listed(exceptions: ReadonlyMap<string, string>): readonly string[] {
  return [...exceptions.keys()].toSorted()
}

describe('Water, protein, fat, carbohydrate, ash and alcohol', () => {
  /** In the release 98.6 % of complete foods are within it. */
  const toleranceGrams = 2

  test('are all printed; of alcohol a blank is none', () => {
    const columns = ['water', 'energy', 'protein', 'fat', 'carbohydrate', 'ash'] as const
    const blank = coreRows.filter(({row}) =>
      columns.some((column) => printedFigure(row, column) === undefined),
    )
    expect(blank.map(({row}) => name(row))).toEqual([])
  })

  test('make 100 g, or the row is listed with its reason', () => {
    const isOff = (row: CoreRow): boolean => {
      const columns = ['water', 'protein', 'fat', 'carbohydrate', 'ash', 'alcohol'] as const
      const sum = columns.reduce((total, column) => total + grams(row, column), 0)
      return Math.abs(sum - 100) > toleranceGrams
    }
    expect(found(isOff)).toEqual(listed(massExceptions))
  })
})

/** kcal in 100 g, or undefined where a macro that is there has no factor. */
function energyByFactors(row: CoreRow, factors: EnergyFactors): number | undefined {
  let kcal = grams(row, 'alcohol') * ethanolKcalPerGram
  for (const macro of ['protein', 'fat', 'carbohydrate'] as const) {
    const factor = factors[macro]
    if (factor === null && grams(row, macro) > 0) return undefined
    kcal += grams(row, macro) * (factor ?? 0)
  }
  return kcal
}

function specificEnergy(row: CoreRow): number | undefined {
  return row.factors && energyByFactors(row, row.factors)
}

const general: EnergyFactors = {protein: 4, fat: 9, carbohydrate: 4}

describe('Energy', () => {
  test('follows from the specific factors to 1 kcal, or the row is listed with its reason', () => {
    const isOff = (row: CoreRow): boolean => {
      const kcal = specificEnergy(row)
      return kcal !== undefined && Math.abs(kcal - grams(row, 'energy')) > 1
    }
    expect(found(isOff)).toEqual(listed(specificEnergyExceptions))
  })

  test('most rows have factors of their own', () => {
    const share = coreRows.filter(({row}) => specificEnergy(row) !== undefined).length
    expect(share / coreRows.length).toBeGreaterThan(0.75)
  })

  test('of a row without follows from general factors to 2 kcal or 2 %, or the row is listed', () => {
    const isOff = (row: CoreRow): boolean => {
      const kcal = energyByFactors(row, general)
      const stated = grams(row, 'energy')
      return (
        specificEnergy(row) === undefined &&
        kcal !== undefined &&
        Math.abs(kcal - stated) > Math.max(2, 0.02 * stated)
      )
    }
    expect(found(isOff)).toEqual(listed(generalEnergyExceptions))
  })
})
