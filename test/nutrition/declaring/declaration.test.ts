import {readdirSync, readFileSync} from 'node:fs'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import {describe, expect, test} from 'vitest'
import type {Settings} from '../../../src/cookbook/cookbook.ts'
import type {Recipe} from '../../../src/cookbook/recipe.ts'
import {nutrients} from '../../../src/food/nutrients.ts'
import {computeCookbook} from '../../../src/nutrition/compute-cookbook.ts'
import type {Computed} from '../../../src/nutrition/computed.ts'
import {type Declaration, declaration} from '../../../src/nutrition/declaring/declaration.ts'
import {at, cookbook, food, grams, line, recipe} from '../../kitchen.ts'

/** One food per 100 g, so that 100 g of the dish is the food. */
const meal = food('meal', {
  energy: 220,
  energyEu: 212,
  energyEuKilojoules: 886,
  energyGeneral: 222,
  protein: 8.04,
  fat: 10.4,
  saturated: 3.25,
  trans: 0.2,
  cholesterol: 12,
  carbohydrate: 25,
  availableCarbohydrate: 20,
  fibre: 5,
  sugars: 0.4,
  sodium: 400,
  potassium: 350,
  calcium: 119,
  iron: 2.14,
  vitaminD: 0,
})

function dish(more: Partial<Recipe> = {}, settings: Partial<Settings> = {}): Computed {
  const one = recipe('dish', [line('meal', 400)], {
    serves: at(4),
    batch: at(grams(400)),
    ...more,
  })
  const {computed} = computeCookbook(cookbook([meal], [one], settings))
  const found = computed.get('dish')
  if (found === undefined) throw new Error('the dish was not computed')
  return found
}

/** Amount declared for 100 g, by nutrient. */
function per100g({rows}: Declaration) {
  return rows.map(({nutrient, per100g}) => [
    nutrient,
    per100g === 'unknown' || per100g === undefined ? per100g : per100g.value,
  ])
}

describe('by EU rules', () => {
  // Order: Regulation (EU) 1169/2011 Annex XV; rounding: European Commission guidance, Dec 2012.
  // Calcium is 14.9 % of its reference value (800 mg) in 100 g and may not stand there (Annex XIII
  // part A point 2); iron is 15.3 % of 14 mg, potassium 17.5 % of 2,000 mg.
  test('the lines stand in the order of the regulation, with minerals in significant amounts', () => {
    expect(per100g(declaration(dish(), 'eu', {}))).toEqual([
      ['fat', 10],
      ['saturated', 3.3],
      ['availableCarbohydrate', 20],
      ['sugars', 0],
      ['fibre', 5],
      ['protein', 8],
      ['salt', 1],
      ['potassium', 350],
      ['iron', 2.1],
    ])
  })

  // Annex XIV: 10 g fat, 20 g carbohydrate, 5 g fibre, 8 g protein are 370 + 340 + 40 + 136 kJ and
  // 90 + 80 + 10 + 32 kcal; 212 × 4.184 would be 887.
  test('energy is that of Annex XIV, kJ and kcal each from its own column', () => {
    const {kilojoules, kilocalories, energyMethod} = declaration(dish(), 'eu', {})
    expect(energyMethod).toBe('eu')
    expect(kilojoules?.per100g).toEqual({kind: 'amount', value: 886})
    expect(kilocalories.per100g).toEqual({kind: 'amount', value: 212, percent: 11})
  })

  test('energy follows the method that the cookbook or the recipe names', () => {
    const byFoods = declaration(dish(), 'eu', {energyMethod: 'foods'})
    expect(byFoods.kilocalories.per100g).toMatchObject({value: 220})
    // 220 × 4.184 = 920.48
    expect(byFoods.kilojoules?.per100g).toMatchObject({value: 920})
    const own = dish({energyMethod: at('general')})
    expect(declaration(own, 'eu', {energyMethod: 'foods'}).kilocalories.per100g).toMatchObject({
      value: 222,
    })
  })

  // Annex XIII part B: fat 70 g, saturates 20 g, carbohydrate 260 g, salt 6 g; fibre has none.
  test('shares are those of the reference intakes', () => {
    const {rows} = declaration(dish(), 'eu', {})
    const shares = rows.map(({perServing}) =>
      typeof perServing === 'object' ? perServing.percent : perServing,
    )
    expect(shares).toEqual([14, 17, 8, 0, undefined, 16, 17, 18, 15])
  })
})

describe('by US rules', () => {
  test('the lines are those of the panel, for 100 g of a serving each', () => {
    expect(per100g(declaration(dish(), 'us', {}))).toEqual([
      ['fat', 10],
      ['saturated', 3.5],
      ['trans', 0],
      ['cholesterol', 10],
      ['sodium', 400],
      ['carbohydrate', 25],
      ['fibre', 5],
      ['sugars', 0],
      ['addedSugars', 'unknown'],
      ['protein', 8],
      ['vitaminD', 0],
      ['calcium', 120],
      ['iron', 2.1],
      ['potassium', 350],
    ])
  })

  test('what a food lacks a figure for is named, and never declared as a bound', () => {
    expect(declaration(dish(), 'us', {}).missing).toEqual(['addedSugars'])
    expect(declaration(dish(), 'eu', {}).missing).toEqual([])
  })
})

test('what was not weighed has no figures for 100 g', () => {
  const one = recipe('dish', [line('meal', 400)], {serves: at(4)})
  const {computed} = computeCookbook(cookbook([meal], [one]))
  const found = computed.get('dish')
  const declared = found && declaration(found, 'eu', {})
  expect(declared?.kilocalories.per100g).toBeUndefined()
  expect(declared?.kilocalories.perServing).toMatchObject({value: 212})
})

describe('what is rounded for a label is summed from nowhere', () => {
  const trace = food('trace', {fat: 0.45, energy: 4})
  const base = recipe('base', [line('trace', 1000)], {serves: at(10), batch: at(grams(1000))})
  const whole = recipe('whole', [line('base', 1000, {recipe: at('base')})], {serves: at(1)})

  test('ten servings that each declare no fat have fat together', () => {
    const {computed} = computeCookbook(cookbook([trace], [base, whole], {declare: 'us'}))
    const [one, all] = [computed.get('base'), computed.get('whole')]
    if (!one || !all) throw new Error('not computed')
    // 21 CFR 101.9(c)(2): below 0.5 g is declared as 0; ten times 0.45 g is 4.5 g.
    expect(declaration(one, 'us', {}).rows[0]?.perServing).toMatchObject({value: 0})
    expect(declaration(all, 'us', {}).rows[0]?.perServing).toMatchObject({value: 4.5})
    expect(all.batch.fat.value).toBeCloseTo(4.5, 12)
  })

  test('every computed figure is the same, whoever’s rules pages declare by', () => {
    const figures = (declare: Settings['declare']) => {
      const book = cookbook([trace, meal], [base, whole], declare ? {declare} : {})
      return [...computeCookbook(book).computed.values()].map((one) => {
        if (declare) declaration(one, declare, {})
        return nutrients.map((nutrient) => one.batch[nutrient].value)
      })
    }
    expect(figures('us')).toEqual(figures(undefined))
    expect(figures('eu')).toEqual(figures(undefined))
  })

  test('only pages take declarations, and only declarations round so', () => {
    // Declarations are made here and shown there; a reader of labels asks the other way round, for
    // the span behind a figure, and one of converted figures whether the law would print it.
    expect(importersOf(/\b(?:us|eu)Declarations\b/)).toEqual([
      'src/food/rounding/converted.ts',
      'src/nutrition/declaring/declaration.ts',
    ])
    const importers = importersOf(/\/declaring\/declaration\.ts'/)
    expect(importers.length).toBeGreaterThan(0)
    expect(importers.filter((file) => !file.startsWith('templates/'))).toEqual([])
  })
})

const project = fileURLToPath(new URL('../../..', import.meta.url))

/** Source files that have an import statement that matches. */
function importersOf(pattern: RegExp): readonly string[] {
  return ['src', 'templates']
    .flatMap((folder) =>
      readdirSync(path.join(project, folder), {recursive: true, encoding: 'utf8'}).map((file) =>
        path.posix.join(folder, file.split(path.sep).join('/')),
      ),
    )
    .filter((file) => /\.tsx?$/.test(file))
    .filter((file) => {
      const text = readFileSync(path.join(project, file), 'utf8')
      const imports = text.match(/^import [^;]*?from '[^']+'$/gms) ?? []
      return imports.some((statement) => pattern.test(statement))
    })
    .toSorted()
}
