import {describe, expect, test} from 'vitest'
import type {IngredientLine, Recipe} from '../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {expandedUncertainty} from '../../src/units/uncertain.ts'
import {at, cookbook, food, grams, line, recipe} from '../kitchen.ts'

// USDA SR28 (2015): ground beef 80/20 raw (23572) and pan-browned crumbles (23575); chicken breast
// raw (05062) and grilled (05747); rice raw (20444) and boiled (20445). Per 100 g.
const raw = food(
  'mince',
  {energy: 254, protein: 17.17, fat: 20, saturated: 7.581, water: 61.94},
  {id: 'usda/23572', state: 'raw'},
)
const crumbles = food('crumbles', {protein: 27, fat: 17.36, water: 55}, {id: 'usda/23575'})
const chicken = food('chicken', {protein: 22.5, fat: 2.62, water: 73.9}, {id: 'usda/05062'})
const grilled = food('grilled', {protein: 30.54, fat: 3.17, water: 65.26}, {id: 'usda/05747'})
const rice = food('rice', {energy: 365, protein: 7.13, water: 11.62}, {id: 'usda/20444'})
const boiled = food(
  'boiled',
  {energy: 130, protein: 2.69, water: 68.44},
  {id: 'usda/20445', state: 'cooked'},
)
const spinach = food(
  'spinach',
  {calcium: 99, iron: 2.71, sodium: 79, protein: 2.86},
  {state: 'raw'},
)
const foods = [raw, crumbles, chicken, grilled, rice, boiled, spinach]

function compute(dish: Recipe): Computed {
  const {computed, problems} = computeCookbook(cookbook(foods, [dish]))
  expect(problems).toEqual([])
  const one = computed.get(dish.slug)
  if (one === undefined) throw new Error('not computed')
  return one
}

function dishOf(first: IngredientLine, more: Partial<Recipe> = {}): Recipe {
  return recipe('dish', [first], {serves: at(1), ...more})
}

function problemsOf(dish: Recipe) {
  return computeCookbook(cookbook(foods, [dish])).problems
}

describe('poured off', () => {
  test('like a cooked food: protein stays, and the fat that is then too much has run out', () => {
    const like = {kind: 'like', cooked: at('crumbles')} as const
    const {batch} = compute(dishOf(line('mince', 450, {pouredOff: like})))
    // 17.17/27 of the weight is left, with 17.36 % fat: 11.04 of 20 g, 55 % of the fat.
    expect(batch.fat.value).toBeCloseTo(4.5 * (17.17 / 27) * 17.36, 6)
    expect(batch.protein.value).toBeCloseTo(4.5 * 17.17, 6)
    expect(batch.fat.value / 90).toBeCloseTo(0.55, 2)
  })

  test('drained liquid takes water, and leaves what is dissolved counted', () => {
    const drained = {kind: 'weighed', amount: at(grams(50)), what: 'liquid'} as const
    const whole = compute(dishOf(line('spinach', 300)))
    const {batch, mixedGrams} = compute(dishOf(line('spinach', 300, {pouredOff: drained})))
    expect(batch.protein.value).toBe(whole.batch.protein.value)
    expect(mixedGrams.value).toBe(250)
  })

  test('no more fat leaves than there is, and no more liquid than water', () => {
    const poured = (what: 'fat' | 'liquid', weight: number) =>
      problemsOf(
        dishOf(line('mince', 100, {pouredOff: {kind: 'weighed', amount: at(grams(weight)), what}})),
      )
    // 100 g hold 20 g of fat and 61.94 g of water.
    expect(poured('fat', 20)).toEqual([])
    expect(poured('fat', 25)).toMatchObject([
      {ruleId: 'poured-off-held', actual: '25 g', expected: ['20 g']},
    ])
    expect(poured('liquid', 61)).toEqual([])
    expect(poured('liquid', 70)).toMatchObject([{ruleId: 'poured-off-held', expected: ['62 g']}])
  })

  test('an unknown cooked food is told with its place', () => {
    const like = {kind: 'like', cooked: at('crumbs')} as const
    expect(problemsOf(dishOf(line('mince', 450, {pouredOff: like})))).toMatchObject([
      {ruleId: 'unknown-food', actual: 'crumbs', file: 'recipes/dish.md'},
    ])
  })
})

describe('trimmed and left behind', () => {
  test('what is cut off is bought but not eaten', () => {
    const computed = compute(dishOf(line('chicken', 500, {trimmed: at(grams(40))})))
    expect(computed.batch.protein.value).toBeCloseTo(4.6 * 22.5, 10)
    expect(computed.lines[0]?.purchasedGrams).toBe(500)
    expect(computed.mixedGrams.value).toBe(460)
  })

  test('what stays in the pot takes its share of everything', () => {
    const more = {batch: at(grams(380)), leftBehind: at(grams(20))}
    const {batch, per100g} = compute(dishOf(line('mince', 500), more))
    expect(batch.energy.value).toBeCloseTo(5 * 254 * (380 / 400), 8)
    // 100 g of the dish is the same dish, however much of it was left in the pot.
    expect(per100g?.energy.value).toBeCloseTo((5 * 254) / 4, 8)
  })

  test('is still in the weight that a yield factor gives', () => {
    const yieldFactor = at({kind: 'ratio', ratio: 0.8, increment: 0.01} as const)
    const more = {yieldFactor, leftBehind: at(grams(40))}
    const {batch, batchGrams, per100g} = compute(dishOf(line('mince', 500), more))
    expect(batchGrams?.value).toBeCloseTo(400 - 40, 8)
    expect(batch.energy.value).toBeCloseTo(5 * 254 * (360 / 400), 8)
    expect(per100g?.energy.value).toBeCloseTo((5 * 254) / 4, 8)
  })
})

describe('retention', () => {
  // USDA Table of Nutrient Retention Factors, Release 6 (2007), code 3005: Ca 95, Fe 95, Na 95.
  test('greens boiled and drained lose their minerals by the table, and nothing else', () => {
    const {batch} = compute(dishOf(line('spinach', 200, {cooked: at('greens boiled, drained')})))
    expect(batch.calcium.value).toBeCloseTo(198 * 0.95, 10)
    expect(batch.iron.value).toBeCloseTo(5.42 * 0.95, 10)
    expect(batch.salt.value).toBeCloseTo(158 * 0.95 * 0.0025, 10)
    expect(batch.protein.value).toBeCloseTo(5.72, 10)
  })

  test('a food of cooked composition has lost it already', () => {
    const cooked = at('pulses boiled long, drained' as const)
    expect(problemsOf(dishOf(line('boiled', 200, {cooked})))).toMatchObject([
      {ruleId: 'retention-once', actual: 'pulses boiled long, drained'},
    ])
  })
})

describe('yield factor', () => {
  test('a number gives the finished weight, known to its last digit', () => {
    const yieldFactor = at({kind: 'ratio', ratio: 0.8, increment: 0.01} as const)
    const {batchGrams} = compute(dishOf(line('mince', 500), {yieldFactor}))
    expect(batchGrams?.value).toBeCloseTo(400, 10)
    expect(batchGrams && expandedUncertainty(batchGrams)).toBeGreaterThan(
      (500 * 0.01) / Math.sqrt(3) - 1e-9,
    )
  })

  test('of grilled chicken breast follows from its protein, near the 75.3 % USDA prints', () => {
    // USDA Table of Cooking Yields for Meat and Poultry, Release 2 (2014), quoted: 75.3 %.
    const yieldFactor = at({kind: 'like', cooked: 'grilled'} as const)
    const {batchGrams} = compute(dishOf(line('chicken', 1000), {yieldFactor}))
    expect(batchGrams?.value).toBeGreaterThan(753 - 30)
    expect(batchGrams?.value).toBeLessThan(753 + 30)
  })

  test('of boiled rice follows from its dry matter, and carries 365 kcal to the 130 of the table', () => {
    const yieldFactor = at({kind: 'like', cooked: 'boiled'} as const)
    const {batchGrams, per100g, batch} = compute(dishOf(line('rice', 100), {yieldFactor}))
    expect(batchGrams?.value).toBeCloseTo(280, 0)
    expect(per100g?.energy.value).toBeCloseTo(130, 0)
    // What the rice took up is water: mass is conserved.
    expect(batch.water.value).toBeCloseTo(11.62 + (batchGrams?.value ?? 0) - 100, 8)
  })

  test('a weighed batch wins', () => {
    const yieldFactor = at({kind: 'ratio', ratio: 0.8, increment: 0.01} as const)
    const {batchGrams} = compute(dishOf(line('mince', 500), {yieldFactor, batch: at(grams(370))}))
    expect(batchGrams?.value).toBe(370)
  })

  test('a food without a factor is told which there are', () => {
    const yieldFactor = at({kind: 'like', cooked: 'spinach'} as const)
    expect(problemsOf(dishOf(line('mince', 500), {yieldFactor}))).toMatchObject([
      {ruleId: 'yield-factor-known', expected: expect.arrayContaining(['crumbles', 'boiled'])},
    ])
  })
})
