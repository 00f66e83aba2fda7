import {describe, expect, test} from 'vitest'
import type {IngredientLine, Recipe} from '../../src/cookbook/recipe.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {expandedUncertainty} from '../../src/units/uncertain.ts'
import {at, cookbook, food, grams, line, nowhere, recipe} from '../kitchen.ts'

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

describe('an alternative', () => {
  const wine = food('wine', {energy: 83, alcohol: 10.4, carbohydrate: 2.72})
  // USDA SR28 (2015), 14057 wine, dessert, sweet: 15.3 g of alcohol, 160 kcal, 13.69 g.
  const fortified = food('fortified', {energy: 160, alcohol: 15.3, carbohydrate: 13.69})
  const broth = food('broth', {energy: 10, alcohol: 0, carbohydrate: 0})
  const chard = food('chard', {calcium: 51, protein: 1.8}, {state: 'raw'})
  const kale = food('kale', {calcium: 150, protein: 2.9}, {state: 'cooked'})
  const stock = [...foods, wine, fortified, broth, chard, kale]

  function alternativesOf(first: IngredientLine) {
    const {computed, problems} = computeCookbook(cookbook(stock, [dishOf(first)]))
    expect(problems).toEqual([])
    return computed.get('dish')?.lines[0]?.instead ?? []
  }
  const instead = (...names: string[]) =>
    names.map((name) => ({name: at(name), amount: at(grams(200))}))

  // USDA Table of Nutrient Retention Factors, Release 6 (2007), code 5005: 35 % after 30 minutes.
  test('that simmers as long keeps as little of its alcohol', () => {
    const [port, none] = alternativesOf(
      line('wine', 200, {simmeredMinutes: at(45), instead: instead('fortified', 'broth')}),
    )
    expect(port?.adds.alcohol.value).toBeCloseTo(30.6 * 0.35, 8)
    expect(port?.adds.energy.value).toBeCloseTo(320 - 30.6 * 0.65 * 6.93, 8)
    expect(port?.perServing?.energy.value).toBeCloseTo(320 - 30.6 * 0.65 * 6.93, 8)
    expect(port?.adds.carbohydrate.value).toBeCloseTo(27.38, 8)
    expect(none?.adds.energy.value).toBeCloseTo(20, 8)
    expect(port?.isCountedWhole).toBeUndefined()
  })

  // The same table, code 3005: calcium 95 %.
  test('loses minerals where it is raw, and none where its figures are those of a cooked food', () => {
    const [raw, cooked] = alternativesOf(
      line('spinach', 200, {
        cooked: at('greens boiled, drained'),
        instead: instead('chard', 'kale'),
      }),
    )
    expect(raw?.adds.calcium.value).toBeCloseTo(102 * 0.95, 8)
    expect(cooked?.adds.calcium.value).toBeCloseTo(300, 8)
  })

  test('is eaten to the share of the line', () => {
    const eaten = {amount: at(grams(25)), place: nowhere}
    const [other] = alternativesOf(line('mince', 100, {eaten, instead: instead('chicken')}))
    expect(other?.grams.value).toBe(200)
    expect(other?.adds.fat.value).toBeCloseTo(2 * 0.25 * 2.62, 8)
  })

  test('is counted whole, and says so, where a weight was poured or cut off', () => {
    const poured = {kind: 'weighed', amount: at(grams(30)), what: 'fat'} as const
    const [drained] = alternativesOf(
      line('mince', 500, {pouredOff: poured, instead: instead('chicken')}),
    )
    expect(drained?.adds.fat.value).toBeCloseTo(5.24, 8)
    expect(drained?.isCountedWhole).toBe(true)
    const [cut] = alternativesOf(
      line('chicken', 500, {trimmed: at(grams(40)), instead: instead('mince')}),
    )
    expect(cut?.isCountedWhole).toBe(true)
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
