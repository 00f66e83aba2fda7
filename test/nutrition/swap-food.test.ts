import {describe, expect, test} from 'vitest'
import type {IngredientLine} from '../../src/cookbook/recipe.ts'
import {coreTable} from '../../src/food/core-table.ts'
import type {Food} from '../../src/food/food.ts'
import {NearestFoods} from '../../src/food/nearest-foods.ts'
import {publishedNutrients} from '../../src/food/nutrients.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {
  hundredsInDish,
  swapped,
  type Use,
  usedGrams,
  usedInDish,
  writtenDish,
} from '../../src/nutrition/swap-food.ts'
import type {VolumeAmount} from '../../src/units/amount.ts'
import {expandedUncertainty} from '../../src/units/uncertain.ts'
import {at, cookbook, food, grams, line, recipe, settings} from '../kitchen.ts'

const {scaleGrams} = settings
const core = coreTable('us')

function coreFood(id: string): Food {
  const found = core.lookUp(id)
  if (!found) throw new Error(`${id} is not in the table`)
  return found
}

const [butter, oil] = [coreFood('usda/01001'), coreFood('usda/04053')]
const oats = food('oats', {energy: 379, protein: 13, fat: 6.5, carbohydrate: 67, water: 8})
const mince = food('mince', {energy: 250, protein: 17, fat: 20, carbohydrate: 0, alcohol: 0})
const wine = food('wine', {energy: 80, protein: 0, fat: 0, carbohydrate: 3, alcohol: 10})
const foods = [butter, oil, oats, mince, wine]

const tablespoons = (value: number): VolumeAmount => ({
  kind: 'volume',
  text: `${value} tbsp`,
  millilitres: {value: value * 14.786_764_781_25, halfRange: 0, increment: 14.786_764_781_25},
  measure: 'tbsp',
  count: {value, halfRange: 0, increment: 1},
})

/** What a pot for four uses of the food that its lines name, butter unless said. */
function use(lines: readonly IngredientLine[], name = 'butter', others = foods): Use {
  const pot = recipe('pot', [line('oats', 200), ...lines], {serves: at(4), batch: at(grams(900))})
  const computed = computeCookbook(cookbook(others, [pot])).computed.get('pot')
  if (!computed) throw new Error('The pot was not computed')
  return {
    computed,
    lines: computed.lines.filter((each) => each.line.name.value === name),
    aside: [],
  }
}

function change(of: Use, other: Food, nutrient: 'energy' | 'fat' | 'protein'): number {
  return swapped(of, other, scaleGrams).dish[nutrient].value - writtenDish(of)[nutrient].value
}

test('oil for butter changes a serving as the table says', () => {
  // USDA SR28 (2015): 01001 butter 717 kcal and 81.11 g fat, 04053 olive oil 884 kcal and 100 g, so
  // of 20 g in a dish for 4: (884 − 717) × 0.2 ÷ 4 = 8.35 kcal, (100 − 81.11) × 0.2 ÷ 4 = 0.9445 g.
  const twenty = use([line('butter', 20)])
  expect(change(twenty, oil, 'energy')).toBeCloseTo(8.35, 6)
  expect(change(twenty, oil, 'fat')).toBeCloseTo(0.9445, 6)
  expect(usedGrams(twenty)).toBe(20)
})

describe('a swap is the alternative that a build computes', () => {
  const purchased = food(
    'butter',
    {energy: 700, protein: 1, fat: 80, carbohydrate: 1},
    {refuseRatio: 0.1},
  )
  const part = {amount: at(grams(35))}
  interface Case {
    readonly how: string
    readonly more: Partial<IngredientLine>
    readonly other?: Food
  }
  const range = {...grams(21), grams: {value: 21, halfRange: 3, increment: 1}}
  const poured = {kind: 'weighed', amount: at(grams(5)), what: 'fat'} as const
  const cases: readonly Case[] = [
    {how: 'weighed', more: {}},
    {how: 'a range', more: {amount: at(range)}},
    {how: 'by the spoon', more: {amount: at(tablespoons(2))}},
    {how: 'eaten in part', more: {eaten: part}},
    {how: 'trimmed', more: {trimmed: at(grams(10))}},
    {how: 'poured off', more: {pouredOff: poured}},
    {how: 'simmered', more: {simmeredMinutes: at(30)}},
    {how: 'partly unknown', more: {}, other: food('vague', {energy: 500, fat: 40})},
  ]
  test.each(cases)('$how', ({more, other = wine}) => {
    const instead = [{name: at(other.name), amount: more.amount ?? at(grams(120))}]
    const measured = {...other, measures: new Map([['tbsp', 15]])}
    const known = [measured, ...foods.filter((each) => each !== other)]
    const one = use([line('butter', 120, {...more, instead})], 'butter', known)
    const [wanted] = one.lines[0]?.instead ?? []
    const got = swapped(one, measured, scaleGrams)
    if (!wanted?.perServing) throw new Error('No alternative')
    expect(got.isCountedWhole).toBe(wanted.isCountedWhole)
    expect(got.grams).toBe(wanted.grams.value)
    for (const nutrient of publishedNutrients) {
      const [here, there] = [got.dish[nutrient], wanted.perServing[nutrient]]
      expect(here.value).toBeCloseTo(there.value, 9)
      expect(expandedUncertainty(here)).toBeCloseTo(expandedUncertainty(there), 9)
      expect([...here.missing].toSorted()).toEqual([...there.missing].toSorted())
    }
  })

  test('a purchased weight is taken without its refuse', () => {
    const one = use([line('butter', 100, {isBought: true})], 'butter', [purchased, oats])
    expect(usedGrams(one)).toBeCloseTo(90)
    expect(swapped(one, oil, scaleGrams).grams).toBeCloseTo(90)
  })

  test('a counted piece is no measure of another food', () => {
    const stick = {kind: 'count', text: '1 stick', measure: 'stick'} as const
    const amount = {...stick, count: {value: 1, halfRange: 0, increment: 1}}
    const thick = {...oil, measures: new Map([['stick', 500]])}
    // USDA SR28: a stick of butter is 113 g.
    expect(swapped(use([line('butter', amount)]), thick, scaleGrams).grams).toBeCloseTo(113)
  })
})

test('several lines of one food are swapped together', () => {
  const twice = use([line('butter', 20), line('butter', 30)])
  expect(usedGrams(twice)).toBe(50)
  expect(change(twice, oil, 'fat')).toBeCloseTo((18.89 * 0.5) / 4, 6)
})

test('an optional line counts as added, and makes the dish heavier', () => {
  const optional = use([line('butter', 20, {isOptional: true})])
  const {computed} = optional
  expect(writtenDish(optional).fat.value - (computed.perServing?.fat.value ?? 0)).toBeCloseTo(
    (81.11 * 0.2) / 4,
    6,
  )
  expect(change(optional, oil, 'fat')).toBeCloseTo(0.9445, 6)
  // 900 g finished from 200 g of oats with 8 g of water in 100; butter, SR28, has 15.87 g.
  expect(writtenDish(optional).water.value).toBeCloseTo((700 + 16 + 15.87 * 0.2) / 4, 6)
})

test('without a number of servings the batch is the dish', () => {
  const sauce = recipe('sauce', [line('butter', 20), line('oats', 10)])
  const computed = computeCookbook(cookbook(foods, [sauce])).computed.get('sauce')
  if (!computed) throw new Error('The sauce was not computed')
  const lines = computed.lines.slice(0, 1)
  expect(change({computed, lines, aside: []}, oil, 'fat')).toBeCloseTo(18.89 * 0.2, 6)
})

describe('ranked by what the dish has of it', () => {
  const wanted = food(
    'relish',
    {protein: 0, fat: 0, carbohydrate: 10},
    {measures: new Map([['tbsp', 20]])},
  )
  const thin = food(
    'thin',
    {protein: 0, fat: 0, carbohydrate: 20},
    {measures: new Map([['tbsp', 10]])},
  )
  const thick = food(
    'thick',
    {protein: 0, fat: 0, carbohydrate: 11},
    {measures: new Map([['tbsp', 40]])},
  )

  function ranked(amount: number | VolumeAmount): readonly (readonly [string, number])[] {
    const relish = use([line('relish', amount)], 'relish', [...foods, wanted])
    const nearest = new NearestFoods(usedInDish(relish), 5)
    for (const each of [thin, thick]) nearest.add(each, hundredsInDish(relish, scaleGrams, each))
    return nearest.nearest.map((near) => [near.food.name, near.distanceKcal])
  }

  test('by weight the denser packet is as far as its figures', () => {
    // 100 g among 4: 1 g or 10 g of carbohydrate apart by 4 kcal.
    expect(ranked(100)).toEqual([
      ['thick', expect.closeTo(1, 6)],
      ['thin', expect.closeTo(10, 6)],
    ])
  })

  test('by the spoon it is further away, for a spoon holds more of it', () => {
    // 5 tbsp: 10 g of carbohydrate in 100 g of relish, 10 in 50 g of the thin one, 22 in 200 g.
    expect(ranked(tablespoons(5))).toEqual([
      ['thin', expect.closeTo(0, 6)],
      ['thick', expect.closeTo(12, 6)],
    ])
  })

  test('the distance is that of the dishes', () => {
    const fried = use([line('butter', 100, {eaten: {amount: at(grams(35))}})])
    const nearest = new NearestFoods(usedInDish(fried), 1)
    nearest.add(oil, hundredsInDish(fried, scaleGrams, oil))
    const [dish, written] = [swapped(fried, oil, scaleGrams).dish, writtenDish(fried)]
    const apart = (nutrient: 'protein' | 'fat' | 'carbohydrate', kcal: number): number =>
      (dish[nutrient].value - written[nutrient].value) * kcal
    expect(nearest.nearest[0]?.distanceKcal).toBeCloseTo(
      Math.hypot(apart('protein', 4), apart('fat', 9), apart('carbohydrate', 4)),
      6,
    )
  })
})
