import {describe, expect, test} from 'vitest'
import {examine} from '../../src/build.ts'
import {readFolder} from '../../src/cookbook/read-folder.ts'
import type {Figures} from '../../src/food/figures.ts'
import type {Nutrient} from '../../src/food/nutrients.ts'
import {chosenFigures, writtenChoices} from '../../src/nutrition/chosen-figures.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {packedRecipe} from '../../src/nutrition/packed-recipe.ts'
import {expandedUncertainty} from '../../src/units/uncertain.ts'
import {at, cookbook, food, grams, line, recipe} from '../kitchen.ts'

const nutrients: readonly Nutrient[] = ['energy', 'protein', 'fat', 'fibre']

const oats = food('oats', {energy: 379, protein: 13.15, fat: 6.52, fibre: 10.1})
const milk = food('milk', {energy: 61, protein: 3.15, fat: 3.27, fibre: 0})
const cream = food('cream', {energy: 340, protein: 2.8, fat: 36.1})
const seeds = food('seeds', {energy: 560, protein: 30, fat: 49, fibre: 6})

const porridge = recipe(
  'porridge',
  [
    line('oats', 50),
    line('milk', 200, {instead: [{name: at('cream'), amount: at(grams(100))}]}),
    line('seeds', 20, {isOptional: true}),
  ],
  {serves: at(2), batch: at(grams(240))},
)

function computed(): Computed {
  const {computed} = computeCookbook(cookbook([oats, milk, cream, seeds], [porridge]))
  const one = computed.get('porridge')
  if (one === undefined) throw new Error('porridge was not computed')
  return one
}

/** As a page has it: through JSON. */
function asOnPage(one: Computed, names = nutrients) {
  const packed: ReturnType<typeof packedRecipe> = JSON.parse(
    JSON.stringify(packedRecipe(one, names)),
  )
  return packed
}

function expectSame(
  got: Figures<'serving' | '100 g' | 'batch'> | undefined,
  wanted: Figures<'serving' | '100 g' | 'batch'> | undefined,
  names = nutrients,
): void {
  expect(got === undefined).toBe(wanted === undefined)
  for (const name of got && wanted ? names : []) {
    const [here, there] = [got?.[name], wanted?.[name]]
    if (!here || !there) throw new Error(`${name} is missing`)
    // A page carries five digits of a figure, three of its ±.
    expect(Math.abs(here.value - there.value)).toBeLessThanOrEqual(1e-4 * Math.abs(there.value))
    const [spread, wide] = [expandedUncertainty(here), expandedUncertainty(there)]
    expect(Math.abs(spread - wide)).toBeLessThanOrEqual(5e-3 * wide + 1e-9)
    expect(new Set(here.missing)).toEqual(new Set(there.missing))
  }
}

describe('figures that follow what a reader chooses', () => {
  test('are those of the build while nothing is chosen', () => {
    const packed = asOnPage(computed())
    const chosen = chosenFigures(packed, writtenChoices(packed), 1)
    expectSame(chosen.perServing, computed().perServing)
    expectSame(chosen.per100g, computed().per100g)
    expectSame(chosen.batch, computed().batch)
    expect(chosen.portionGrams?.value).toBe(120)
  })

  test('are those the build gives for an alternative, unknown fibre and all', () => {
    const packed = asOnPage(computed())
    const {perServing} = chosenFigures(packed, [-1, 1, -1], 1)
    expectSame(perServing, computed().lines[1]?.instead[0]?.perServing)
    expect([...(perServing?.fibre.missing ?? [])]).toEqual(['cream'])
  })

  test('count an optional line and its weight', () => {
    const chosen = chosenFigures(asOnPage(computed()), [-1, 0, 0], 1)
    // By hand: (0.5 × 379 + 2 × 61 + 0.2 × 560) ÷ 2 kcal; 240 + 20 g in two bowls.
    expect(chosen.perServing?.energy.value).toBeCloseTo(211.75, 2)
    expect(chosen.portionGrams?.value).toBeCloseTo(130, 6)
    expect(chosen.per100g?.energy.value).toBeCloseTo((2 * 211.75) / 2.6, 2)
  })

  test('of a serving stay when the recipe is made twice, while those of the batch double', () => {
    const packed = asOnPage(computed())
    const [once, twice] = [1, 2].map((times) => chosenFigures(packed, [-1, 0, -1], times))
    expect(twice?.perServing?.energy.value).toBe(once?.perServing?.energy.value)
    expect(twice?.per100g?.energy.value).toBe(once?.per100g?.energy.value)
    expect(twice?.batch.energy.value).toBeCloseTo(2 * (once?.batch.energy.value ?? 0), 10)
    expect(twice?.batchGrams?.value).toBe(480)
  })

  test('keep a food that stands in two lines one source', () => {
    const lines = [line('oats', 100), line('oats', 100, {isOptional: true})]
    const twice = recipe('twice', lines, {serves: at(1)})
    const coarse = food('oats', {energy: 380}, {increment: 10})
    const found = computeCookbook(cookbook([coarse], [twice])).computed.get('twice')
    if (!found) throw new Error('twice was not computed')
    const packed = asOnPage(found)
    // By hand: weighings apart, the table's figure once for 200 g: u = width/√12, ± = 2 u. Taken for
    // two sources it would be ± 8.7, and not ± 11.9.
    const u = 1 / Math.sqrt(12)
    const byHand = 2 * Math.hypot(3.8 * u, 3.8 * u, 2 * 10 * u)
    const {energy} = chosenFigures(packed, [-1, 0], 1).batch
    expect(expandedUncertainty(energy) / byHand).toBeCloseTo(1, 2)
  })

  test('are refused for a nutrient the page does not carry', () => {
    const packed = asOnPage(computed())
    expect(() => chosenFigures(packed, [-1, 0, -1], 1).batch.iron).toThrow('iron was not packed')
  })
})

test('every recipe of the demo cookbook is worked out alike by its page and its build', async () => {
  const names: readonly Nutrient[] = [...nutrients, 'availableCarbohydrate', 'salt', 'alcohol']
  const {computed} = examine(await readFolder('content'))
  expect(computed.size).toBeGreaterThan(20)
  for (const one of computed.values()) {
    const packed = asOnPage(one, names)
    const chosen = chosenFigures(packed, writtenChoices(packed), 1)
    expectSame(chosen.perServing, one.perServing, names)
    expectSame(chosen.per100g, one.per100g, names)
    expectSame(chosen.batch, one.batch, names)
  }
})
