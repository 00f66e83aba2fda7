import {describe, expect, test} from 'vitest'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import type {CountAmount} from '../../src/units/amount.ts'
import {expandedUncertainty, standardUncertainty} from '../../src/units/uncertain.ts'
import {at, cookbook, food, grams, line, recipe} from '../kitchen.ts'

const oats = food('oats', {energy: 379, protein: 13.15, fat: 6.52, fibre: 10.1})
const milk = food('milk', {energy: 61, protein: 3.15, fat: 3.27, fibre: 0})
const honey = food('honey', {energy: 304, protein: 0.3, fat: 0})

function compute(book: ReturnType<typeof cookbook>, slug: string): Computed {
  const {computed, problems} = computeCookbook(book)
  expect(problems).toEqual([])
  const one = computed.get(slug)
  if (one === undefined) throw new Error(`${slug} was not computed`)
  return one
}

describe('a plain recipe', () => {
  const porridge = recipe('porridge', [line('oats', 50), line('milk', 200)], {
    serves: at(2),
    batch: at(grams(240)),
  })
  const computed = compute(cookbook([oats, milk], [porridge]), 'porridge')

  test('sums its lines, shares the batch out and weighs the serving', () => {
    expect(computed.batch.energy.value).toBeCloseTo(0.5 * 379 + 2 * 61, 10)
    expect(computed.perServing?.energy.value).toBeCloseTo((0.5 * 379 + 2 * 61) / 2, 10)
    expect(computed.portionGrams?.value).toBe(120)
    expect(computed.per100g?.protein.value).toBeCloseTo((0.5 * 13.15 + 2 * 3.15) / 2.4, 10)
  })

  test('carries the weighings and the printed figures as independent sources', () => {
    // By hand, energy of the batch: Σ (f·u_w)² + (w·u_f)², u = width/√12.
    const u = 1 / Math.sqrt(12)
    const byHand = Math.hypot(3.79 * u, 0.61 * u, 0.5 * 0.01 * u, 2 * 0.01 * u)
    expect(standardUncertainty(computed.batch.energy)).toBeCloseTo(byHand, 10)
  })

  test('adds the uncertainty of the finished weight per 100 g, not per serving', () => {
    const serving = computed.perServing?.energy
    const per100g = computed.per100g?.energy
    if (!serving || !per100g) throw new Error('figures are missing')
    const relative = expandedUncertainty(serving) / serving.value
    expect(expandedUncertainty(per100g) / per100g.value).toBeGreaterThan(relative)
  })
})

describe('unknown is not zero', () => {
  test('a food without a figure makes the sum "at least", and names the food', () => {
    const bowl = recipe('bowl', [line('oats', 50), line('honey', 10)], {serves: at(1)})
    const {batch} = compute(cookbook([oats, honey], [bowl]), 'bowl')
    expect(batch.fibre.value).toBeCloseTo(5.05, 10)
    expect([...batch.fibre.missing]).toEqual(['honey'])
    expect(batch.protein.missing.size).toBe(0)
  })
})

describe('lines with conditions', () => {
  const onion = food('onion', {energy: 40}, {refuseRatio: 0.1})
  const oil = food('oil', {energy: 884, fat: 100})

  test('what is bought with its peel is counted without, and bought in full', () => {
    const soup = recipe('soup', [line('onion', 200, {isBought: true})], {serves: at(1)})
    const [first] = compute(cookbook([onion], [soup]), 'soup').lines
    expect(first?.grams.value).toBeCloseTo(180, 10)
    expect(first?.purchasedGrams).toBeCloseTo(200, 10)
    expect(first?.adds.energy.value).toBeCloseTo(72, 10)
  })

  test('a count of what is bought is its edible weight, and buys the peel too', () => {
    // USDA SR28 gives the weight of one medium onion, 110 g, without its skin.
    const counted = food(
      'onion',
      {energy: 40},
      {refuseRatio: 0.1, measures: new Map([['medium', 110]])},
    )
    const two = {value: 2, halfRange: 0, increment: 1}
    const amount: CountAmount = {kind: 'count', text: '2 medium', count: two, measure: 'medium'}
    const soup = recipe('soup', [line('onion', amount, {isBought: true})], {serves: at(1)})
    const [first] = compute(cookbook([counted], [soup]), 'soup').lines
    expect(first?.grams.value).toBe(220)
    expect(first?.purchasedGrams).toBeCloseTo(220 / 0.9, 10)
  })

  test('a peeled weight buys the peel too', () => {
    const soup = recipe('soup', [line('onion', 180)], {serves: at(1)})
    expect(compute(cookbook([onion], [soup]), 'soup').lines[0]?.purchasedGrams).toBeCloseTo(200, 10)
  })

  test('frying oil counts as far as it is eaten', () => {
    const fried = recipe('fried', [line('oil', 400, {eaten: {amount: at(grams(35))}})], {
      serves: at(1),
    })
    const computed = compute(cookbook([oil], [fried]), 'fried')
    expect(computed.batch.fat.value).toBeCloseTo(35, 10)
    expect(computed.mixedGrams.value).toBe(35)
    expect(computed.lines[0]?.purchasedGrams).toBe(400)
  })

  test('optional and uncounted lines never make the figures', () => {
    const bowl = recipe(
      'bowl',
      [
        line('oats', 50),
        line('honey', 20, {isOptional: true}),
        line('milk', 5, {uncounted: {because: at('a splash')}}),
      ],
      {serves: at(1)},
    )
    const {batch, mixedGrams} = compute(cookbook([oats, milk, honey], [bowl]), 'bowl')
    expect(batch.energy.value).toBeCloseTo(189.5, 10)
    expect(mixedGrams.value).toBe(50)
  })

  test('an alternative shows the serving it would make and changes nothing', () => {
    const instead = [{name: at('honey'), amount: at(grams(10))}]
    const bowl = recipe('bowl', [line('oats', 50), line('milk', 100, {instead})], {serves: at(1)})
    const computed = compute(cookbook([oats, milk, honey], [bowl]), 'bowl')
    expect(computed.batch.energy.value).toBeCloseTo(250.5, 10)
    const [choice] = computed.lines[1]?.instead ?? []
    expect(choice?.perServing?.energy.value).toBeCloseTo(189.5 + 30.4, 10)
    // Milk's known fibre left with the milk; honey's is unknown.
    expect([...(choice?.batch.fibre.missing ?? [])]).toEqual(['honey'])
  })
})

describe('components', () => {
  const sauce = recipe('sauce', [line('milk', 300), line('oats', 30)], {batch: at(grams(250))})

  test('count by weight as their share of the finished batch', () => {
    const dish = recipe('dish', [line('sauce', 100, {recipe: at('sauce')})], {serves: at(1)})
    const {batch} = compute(cookbook([oats, milk], [dish, sauce]), 'dish')
    expect(batch.energy.value).toBeCloseTo((3 * 61 + 0.3 * 379) * (100 / 250), 10)
  })

  test('a range of batches is as uncertain as it is wide', () => {
    const batches = (value: number, halfRange: number) =>
      ({kind: 'batch', text: '', batches: {value, halfRange, increment: 1}}) as const
    const uncertainty = (halfRange: number): number => {
      const amount = batches(1.5, halfRange)
      const dish = recipe('dish', [line('sauce', amount, {recipe: at('sauce')})], {serves: at(1)})
      const {batch} = compute(cookbook([oats, milk], [dish, sauce]), 'dish')
      expect(batch.energy.value).toBeCloseTo(1.5 * (3 * 61 + 0.3 * 379), 10)
      return standardUncertainty(batch.energy)
    }
    // From 1 to 2 batches: a rectangle one batch wide (GUM 4.3.7).
    const ofRange = (3 * 61 + 0.3 * 379) / Math.sqrt(12)
    expect(uncertainty(1 / 2)).toBeCloseTo(Math.hypot(uncertainty(0), ofRange), 8)
  })

  test('a batch nobody weighed cannot be used by weight', () => {
    const unweighed = recipe('sauce', [line('milk', 300)], {serves: at(1)})
    const dish = recipe('dish', [line('sauce', 100, {recipe: at('sauce')})], {serves: at(1)})
    const {problems, computed} = computeCookbook(cookbook([milk], [dish, unweighed]))
    expect(problems.map(({ruleId, file}) => [ruleId, file])).toEqual([
      ['component-weight', 'recipes/dish.md'],
    ])
    expect(computed.has('dish')).toBe(false)
  })

  test('one label used in two components stays one source', () => {
    const packet = food('packet', {energy: 100}, {increment: 10})
    const one = recipe('one', [line('packet', 100)], {batch: at(grams(100))})
    const two = recipe('two', [line('packet', 100)], {batch: at(grams(100))})
    const both = recipe(
      'both',
      [line('one', 100, {recipe: at('one')}), line('two', 100, {recipe: at('two')})],
      {serves: at(1)},
    )
    const {batch} = compute(cookbook([packet], [one, two, both], {scaleGrams: 1e-9}), 'both')
    // The label is off by the same amount in both: 2 × 10/√12, not √2 × 10/√12.
    expect(standardUncertainty(batch.energy)).toBeCloseTo((2 * 10) / Math.sqrt(12), 6)
  })

  test('a circle is named once, and nothing on it is computed', () => {
    const stock = recipe('stock', [line('gravy', 10, {recipe: at('gravy')})], {
      batch: at(grams(10)),
    })
    const gravy = recipe('gravy', [line('stock', 10, {recipe: at('stock')})], {
      batch: at(grams(10)),
    })
    const pie = recipe('pie', [line('gravy', 10, {recipe: at('gravy')})], {serves: at(1)})
    const {problems, computed} = computeCookbook(cookbook([], [stock, gravy, pie]))
    expect(problems.map(({reason}) => reason)).toEqual([
      'Component `stock` contains itself: `stock → gravy → stock`, expected a chain that ends',
    ])
    expect(computed.size).toBe(0)
  })
})

describe('losses', () => {
  test('rendered fat leaves with its energy and its share of saturated fat', () => {
    const mince = food('mince', {energy: 254, protein: 17.17, fat: 20, saturated: 7.58})
    const ragu = recipe(
      'ragu',
      [line('mince', 500, {pouredOff: {kind: 'weighed', amount: at(grams(45)), what: 'fat'}})],
      {
        serves: at(1),
      },
    )
    const {batch, mixedGrams} = compute(cookbook([mince], [ragu]), 'ragu')
    expect(batch.fat.value).toBeCloseTo(100 - 45, 10)
    expect(batch.energy.value).toBeCloseTo(5 * 254 - 45 * 9, 10)
    expect(batch.saturated.value).toBeCloseTo(37.9 * (55 / 100), 10)
    expect(batch.protein.value).toBeCloseTo(85.85, 10)
    expect(mixedGrams.value).toBe(455)
  })

  test('wine simmered for an hour keeps a quarter of its alcohol', () => {
    // USDA Table of Nutrient Retention Factors, Release 6 (2007), code 5006: 25 %.
    // Red wine, SR28 14096: 10.6 g alcohol and 85 kcal per 100 g; 6.93 kcal per gram of alcohol.
    const wine = food('wine', {energy: 85, alcohol: 10.6, carbohydrate: 2.61})
    const stew = recipe('stew', [line('wine', 240, {simmeredMinutes: at(60)})], {serves: at(1)})
    const {batch} = compute(cookbook([wine], [stew]), 'stew')
    expect(batch.alcohol.value).toBeCloseTo(25.44 * 0.25, 10)
    expect(batch.energy.value).toBeCloseTo(204 - 0.75 * 25.44 * 6.93, 10)
    expect(batch.carbohydrate.value).toBeCloseTo(6.264, 10)
  })
})
