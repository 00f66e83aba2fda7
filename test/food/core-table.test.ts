import {describe, expect, test} from 'vitest'
import {type CoreRow, coreColumns, coreRow} from '../../src/food/core-row.ts'
import {coreTable} from '../../src/food/core-table.ts'
import {aisles, type Food} from '../../src/food/food.ts'
import {nameKey} from '../../src/food/name-key.ts'
import {measureOf} from '../../src/units/measures.ts'
import {difference, standardUncertainty} from '../../src/units/uncertain.ts'
import {volumeNames} from '../../src/units/unit-names.ts'
import {coreRows, printedFigure} from './core-rows.ts'

const core = coreTable('us')

function food(name: string): Food {
  const found = core.lookUp(name)
  if (!found) throw new Error(`${name} is not in the table`)
  return found
}

describe('The core table', () => {
  test('has at least 500 foods, in every aisle but the last', () => {
    expect(coreRows.length).toBeGreaterThan(500)
    const filled = new Set(core.foods().map(({aisle}) => aisle))
    expect([...filled].toSorted()).toEqual(aisles.filter((aisle) => aisle !== 'other').toSorted())
  })

  test('has each row of the release once', () => {
    const numbers = coreRows.map(({row}) => row.ndb)
    expect(numbers.filter((ndb, index) => numbers.indexOf(ndb) !== index)).toEqual([])
    expect(numbers.filter((ndb) => !/^\d{5}$/.test(ndb))).toEqual([])
  })

  test('has no name or other name that means two foods', () => {
    const keys = core.names.map(nameKey)
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([])
  })

  test('has names a writer can type: trimmed, none that reads as an id', () => {
    expect(core.names.filter((name) => name !== name.trim().replace(/\s+/g, ' '))).toEqual([])
    expect(core.names.filter((name) => name.includes('/'))).toEqual([])
    expect(core.names.filter((name) => name.length > 70)).toEqual([])
  })

  test('gives every name the food it stands with', () => {
    for (const each of core.foods()) {
      for (const name of [each.name, ...each.also, each.id]) expect(core.lookUp(name)).toBe(each)
    }
  })

  // USDA SR28 (2015), NDB 14411 water, tap: 0 kcal, 0 g of each macro, 4 mg of sodium.
  test('knows that water has no macros at all, and rounds what it does hold', () => {
    const {per100g} = food('water')
    for (const nutrient of ['energy', 'protein', 'fat', 'carbohydrate', 'energyEu'] as const) {
      expect(per100g[nutrient].value, nutrient).toBe(0)
      expect(standardUncertainty(per100g[nutrient]), nutrient).toBe(0)
    }
    expect(standardUncertainty(per100g.sodium)).toBeCloseTo(1 / Math.sqrt(12), 9)
    expect(standardUncertainty(food('olive oil').per100g.protein)).toBeGreaterThan(0)
  })

  test('has measures that amounts know, of a weight a kitchen has', () => {
    const strange = coreRows.flatMap(({row}) =>
      [...row.measures].filter(([measure, grams]) => {
        const isKnown = volumeNames.has(measure) || measureOf(measure, new Set()) === measure
        return !isKnown || grams <= 0 || grams > 6000
      }),
    )
    expect(strange).toEqual([])
  })

  test('has spoons and cups that fit each other', () => {
    // US customary: 16 tbsp a cup, 3 tsp a tbsp. The release weighs each on its own, so the
    // weights of one volume differ, but not by half.
    const volumes = [
      ['cup', 'tbsp', 16],
      ['tbsp', 'tsp', 3],
    ] as const
    const misfits = coreRows.flatMap(({row: {name, measures}}) =>
      volumes.flatMap(([larger, smaller, count]) => {
        const [large, small] = [measures.get(larger), measures.get(smaller)]
        if (large === undefined || small === undefined) return []
        const ratio = large / (small * count)
        return ratio > 1.5 || ratio < 1 / 1.5
          ? [`${name}: ${larger} ${large}, ${smaller} ${small}`]
          : []
      }),
    )
    // A cup of whole leaves, a spoon of chopped ones.
    expect(misfits).toEqual(['basil: cup 24, tbsp 2.65'])
  })

  test('has refuse from 0 to 99 %', () => {
    expect(coreRows.filter(({row}) => row.refusePercent < 0 || row.refusePercent > 99)).toEqual([])
  })
})

describe('A food of the table', () => {
  // USDA SR28 (2015, revised 2016), NDB 20081, Wheat flour, white, all-purpose, enriched, bleached.
  const flour = food('plain flour')

  test('has the figures of its row, with the step they are printed to', () => {
    expect(flour.per100g.energy.value).toBe(364)
    expect(flour.per100g.protein.value).toBe(10.33)
    expect(flour.factors).toEqual({protein: 4.05, fat: 8.37, carbohydrate: 4.12})
    expect(standardUncertainty(flour.per100g.energy)).toBeCloseTo(1 / Math.sqrt(12), 12)
    expect(standardUncertainty(flour.per100g.protein)).toBeCloseTo(0.01 / Math.sqrt(12), 12)
    expect(flour.provenance).toEqual({kind: 'table', table: 'USDA SR28', row: '20081'})
  })

  test('has carbohydrate without fibre from the two, on their sources', () => {
    const {carbohydrate, availableCarbohydrate, fibre} = flour.per100g
    expect(availableCarbohydrate.value).toBeCloseTo(76.31 - 2.7, 9)
    const rest = difference(difference(carbohydrate, availableCarbohydrate), fibre)
    expect(standardUncertainty(rest)).toBeCloseTo(0, 12)
  })

  test('has salt from sodium, on the same source', () => {
    const {salt, sodium} = food('usda/20082').per100g
    expect(salt.value).toBeCloseTo(1193 * 0.0025, 9)
    expect([...salt.parts.keys()]).toEqual([...sodium.parts.keys()])
  })

  test('has its refuse as a ratio, and the weights of its measures', () => {
    // USDA SR28, NDB 09040, Bananas, raw: refuse 36 % (skin), 1 medium 118 g.
    expect(food('usda/09040').refuseRatio).toBeCloseTo(0.36, 12)
    expect(food('usda/09040').measures.get('medium')).toBe(118)
    expect(flour.refuseRatio).toBe(0)
  })

  test('leaves a blank of the release unknown', () => {
    expect(flour.per100g.trans.missing).toEqual(new Set(['plain flour']))
    expect(flour.per100g.addedSugars.missing.size).toBe(1)
    expect(flour.per100g.polyols.missing.size).toBe(1)
  })

  test('is one and the same food under all its names, so its sources are the same', () => {
    expect(food('all-purpose flour')).toBe(flour)
    expect(food('PLAIN flour').per100g.fat).toBe(flour.per100g.fat)
  })
})

describe('A malformed line is a bug and is not passed over', () => {
  const good =
    '20081 | plain flour | flour | plant | dry | flour | wheat | cup 125 |  | 4.05 8.37 4.12 | 11.92 364 10.33 0.98 0.155 - 0 76.31 2.7 0.27 0 0.47 2 107 15 4.64 0 | Wheat flour'

  test('the line itself is fine', () => {
    expect(coreRow(good)).toMatchObject({ndb: '20081', contains: ['wheat'], refusePercent: 0})
    expect(coreRow(good).figures).toHaveLength(coreColumns.length)
  })

  test.each([
    ['a column too few', good.replace(' | plant', '')],
    ['an allergen nobody knows', good.replace('| wheat |', '| gluten |')],
    ['an origin nobody knows', good.replace('| plant |', '| plants |')],
    ['a figure too few', good.replace('11.92 ', '')],
    ['a figure that is none', good.replace('364', '364x')],
    ['a negative figure', good.replace('0.98', '-0.98')],
  ])('%s', (_, line) => {
    expect(() => coreRow(line)).toThrow()
  })
})

describe('Parts are no larger than wholes', () => {
  type Column = Parameters<typeof printedFigure>[1]

  /** Half a step of both figures, and what two analyses of one food differ by. */
  const slackGrams = 0.06

  function larger(part: Column, whole: Column): readonly string[] {
    return coreRows.flatMap(({row}: {readonly row: CoreRow}) => {
      const [of, all] = [printedFigure(row, part), printedFigure(row, whole)]
      const isLarger = of !== undefined && all !== undefined && of > all + slackGrams
      return isLarger ? [row.ndb] : []
    })
  }

  test.each<[Column, Column, readonly string[]]>([
    ['saturated', 'fat', []],
    ['trans', 'fat', []],
    ['fibre', 'carbohydrate', []],
    // Sugars by analysis, carbohydrate by difference: the release prints both as they came out.
    [
      'sugars',
      'carbohydrate',
      [
        '01077',
        '01174',
        '01175',
        '01151',
        '01050',
        '01053',
        '07024',
        '07081',
        '04017',
        '04120',
        '04636',
        '14136',
      ],
    ],
  ])('%s of %s', (part, whole, exceptions) => {
    expect(larger(part, whole).toSorted()).toEqual(exceptions.toSorted())
  })
})
