import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import type {IngredientLine, Recipe} from '../../src/cookbook/recipe.ts'
import {cookingMethodNames} from '../../src/food/cooking-methods.ts'
import type {Figures} from '../../src/food/figures.ts'
import {type Nutrient, nutrients} from '../../src/food/nutrients.ts'
import {tableFigures} from '../../src/food/table-figures.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import {at, cookbook, food, grams, line, recipe} from '../kitchen.ts'

// Foods of nothing but water, protein, fat, carbohydrate and alcohol, 100 g of them in 100 g: whatever
// is done to a dish, what is in it weighs what the dish weighs.
const parts = ['water', 'protein', 'fat', 'carbohydrate', 'alcohol'] as const

type Part = (typeof parts)[number]

function balanced(name: string, figures: Readonly<Record<Part, number>>, refuseRatio = 0) {
  const {protein, fat, carbohydrate, alcohol} = figures
  const all: Partial<Record<Nutrient, number>> = {
    ...figures,
    energy: 4 * protein + 9 * fat + 4 * carbohydrate + 6.93 * alcohol,
    ...{fibre: 0, calcium: 40, iron: 2, potassium: 300, sodium: 50},
  }
  // The figures of a table: with salt, and with the energy by every method.
  const per100g = tableFigures((nutrient) => {
    const value = all[nutrient]
    return value === undefined ? undefined : {value, increment: 0.01}
  }, name)
  return food(name, {}, {per100g, refuseRatio, state: 'raw'})
}

const foods = [
  balanced('beans', {water: 11, protein: 24, fat: 2, carbohydrate: 63, alcohol: 0}),
  balanced('mince', {water: 62, protein: 18, fat: 20, carbohydrate: 0, alcohol: 0}),
  balanced('wine', {water: 87, protein: 0, fat: 0, carbohydrate: 3, alcohol: 10}),
  balanced('onion', {water: 89, protein: 1, fat: 0, carbohydrate: 10, alcohol: 0}, 0.1),
  balanced('crumbles', {water: 55, protein: 27, fat: 18, carbohydrate: 0, alcohol: 0}),
] as const

type Treatment = 'plain' | 'bought' | 'trimmed' | 'eaten' | 'fat' | 'liquid' | 'simmered'

interface Drawn {
  readonly food: 'beans' | 'mince' | 'wine' | 'onion'
  readonly grams: number
  readonly treatment: Treatment
  /** How much of it is cut off, eaten or poured off. */
  readonly share: number
  readonly minutes: number
}

const drawnLine: fc.Arbitrary<Drawn> = fc.record({
  food: fc.constantFrom('beans', 'mince', 'wine', 'onion'),
  grams: fc.integer({min: 20, max: 2000}),
  treatment: fc.constantFrom<Treatment>(
    ...(['plain', 'bought', 'trimmed', 'eaten', 'fat', 'liquid', 'simmered'] as const),
  ),
  share: fc.double({min: 0.001, max: 1, noNaN: true}),
  minutes: fc.integer({min: 1, max: 240}),
})

const drawnLines = fc.array(drawnLine, {minLength: 1, maxLength: 6})

function lineOf({food: name, grams: whole, treatment, share, minutes}: Drawn): IngredientLine {
  const part = at(grams(whole * share))
  switch (treatment) {
    case 'plain':
      return line(name, whole)
    case 'bought':
      return line(name, whole, {isBought: true})
    case 'trimmed':
      return line(name, whole, {trimmed: part})
    case 'eaten':
      return line(name, whole, {eaten: {amount: part}})
    case 'fat':
    case 'liquid': {
      // A share of what the food holds: no more can leave it.
      const held = heldRatio(name, treatment)
      const amount = at(grams(whole * share * held))
      return line(name, whole, {pouredOff: {kind: 'weighed', amount, what: treatment}})
    }
    case 'simmered':
      return line(name, whole, {simmeredMinutes: at(minutes)})
  }
}

function heldRatio(name: Drawn['food'], what: 'fat' | 'liquid'): number {
  const per100g = foods.find((each) => each.name === name)?.per100g
  return (per100g?.[what === 'fat' ? 'fat' : 'water'].value ?? 0) / 100
}

function compute(lines: readonly IngredientLine[], more: Partial<Recipe> = {}): Computed {
  const dish = recipe('dish', lines, {serves: at(4), ...more})
  const {computed, problems} = computeCookbook(cookbook(foods, [dish]))
  const one = computed.get('dish')
  if (one === undefined || problems.length > 0) throw new Error(JSON.stringify(problems))
  return one
}

function massOf(figures: Figures<'batch'> | Figures<'100 g'>): number {
  return parts.reduce((total, part) => total + figures[part].value, 0)
}

/** Within floating-point error of a sum of this size. */
function expectClose(left: number, right: number): void {
  expect(Math.abs(left - right)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(left)))
}

describe('mass is conserved', () => {
  test('what stays in the dish weighs what its parts weigh, whatever left it', () => {
    fc.assert(
      fc.property(drawnLines, (drawn) => {
        const {batch, mixedGrams} = compute(drawn.map(lineOf))
        expectClose(massOf(batch), mixedGrams.value)
      }),
    )
  })

  test('what was weighed of the batch is what its parts weigh: the rest is water', () => {
    fc.assert(
      fc.property(drawnLines, fc.integer({min: 10, max: 9000}), (drawn, weight) => {
        const {batch, per100g} = compute(drawn.map(lineOf), {batch: at(grams(weight))})
        expectClose(massOf(batch), weight)
        expectClose(per100g ? massOf(per100g) : NaN, 100)
      }),
    )
  })

  test('what is left in the pot leaves the plate', () => {
    const more = {batch: at(grams(900)), leftBehind: at(grams(60))}
    fc.assert(
      fc.property(drawnLines, (drawn) => {
        const lines = drawn.map(lineOf)
        const {batch, mixedGrams} = compute(lines)
        const served = compute(lines, more).batch
        expectClose(massOf(served), 900)
        expectClose(served.protein.value, (batch.protein.value * 900) / 960)
        // Unweighed, the pot held all that was mixed.
        if (mixedGrams.value <= 60) return
        const {leftBehind} = more
        expectClose(massOf(compute(lines, {leftBehind}).batch), mixedGrams.value - 60)
      }),
    )
  })

  test('a yield factor changes the weight, the water and nothing else', () => {
    fc.assert(
      fc.property(drawnLines, fc.double({min: 0.2, max: 3, noNaN: true}), (drawn, ratio) => {
        const lines = drawn.map(lineOf)
        const plain = compute(lines)
        const cooked = compute(lines, {yieldFactor: at({kind: 'ratio', ratio, increment: 0.01})})
        const used = plain.lines.reduce((total, {usedGrams}) => total + usedGrams.value, 0)
        expectClose(cooked.batchGrams?.value ?? NaN, ratio * used)
        expectClose(massOf(cooked.batch), ratio * used)
        for (const nutrient of nutrients) {
          if (nutrient !== 'water') {
            expectClose(cooked.batch[nutrient].value, plain.batch[nutrient].value)
          }
        }
      }),
    )
  })
})

/** No figure of `less` is above the one of `more`. */
function expectAtMost(
  less: Computed,
  more: Computed,
  but: ReadonlySet<Nutrient> = new Set(),
): void {
  for (const nutrient of nutrients) {
    if (but.has(nutrient)) continue
    const [low, high] = [less.batch[nutrient].value, more.batch[nutrient].value]
    expect(low, nutrient).toBeLessThanOrEqual(high + 1e-9 * Math.max(1, high))
  }
}

describe('cooking and pouring off only ever take away', () => {
  test.each(cookingMethodNames)('%s: between none and all of each nutrient is left', (method) => {
    fc.assert(
      fc.property(drawnLine, ({food: name, grams: whole}) => {
        const before = compute([line(name, whole)])
        const cooked = compute([line(name, whole, {cooked: at(method)})])
        expectAtMost(cooked, before)
        for (const nutrient of nutrients) {
          expect(cooked.batch[nutrient].value, nutrient).toBeGreaterThanOrEqual(0)
        }
      }),
    )
  })

  test('longer simmering never leaves more alcohol or energy, and takes nothing else', () => {
    const minutes = fc.integer({min: 1, max: 300})
    fc.assert(
      fc.property(minutes, minutes, (one, other) => {
        const [short, long] = [Math.min(one, other), Math.max(one, other)]
        const leftOf = (time: number) => compute([line('wine', 500, {simmeredMinutes: at(time)})])
        expectAtMost(leftOf(long), leftOf(short))
        expectAtMost(leftOf(short), compute([line('wine', 500)]))
        expect(leftOf(long).batch.carbohydrate.value).toBe(leftOf(short).batch.carbohydrate.value)
      }),
    )
  })

  test.each(['fat', 'liquid'] as const)('the more %s is poured off, the less there is', (what) => {
    const share = fc.double({min: 0, max: 0.19, noNaN: true})
    fc.assert(
      fc.property(share, share, (one, other) => {
        const leftOf = (poured: number) =>
          compute([
            line('mince', 1000, {
              pouredOff: {kind: 'weighed', amount: at(grams(1000 * poured)), what},
            }),
          ])
        expectAtMost(leftOf(Math.max(one, other)), leftOf(Math.min(one, other)))
        expect(leftOf(Math.max(one, other)).batch.protein.value).toBeCloseTo(180, 9)
      }),
    )
  })

  test('pouring off like a cooked food takes some of the fat, never more than there was', () => {
    fc.assert(
      fc.property(fc.integer({min: 1, max: 5000}), (whole) => {
        const like = {pouredOff: {kind: 'like', cooked: at('crumbles')}} as const
        const before = compute([line('mince', whole)])
        const after = compute([line('mince', whole, like)])
        expectAtMost(after, before)
        expect(after.batch.fat.value).toBeLessThan(before.batch.fat.value)
        expect(after.batch.fat.value).toBeGreaterThan(0)
        expectClose(massOf(after.batch), after.mixedGrams.value)
      }),
    )
  })

  test('the more water a batch loses, the more of everything else is in 100 g', () => {
    const weight = fc.integer({min: 100, max: 3000})
    fc.assert(
      fc.property(drawnLines, weight, weight, (drawn, one, other) => {
        const lines = drawn.map(lineOf)
        const of = (batch: number) => compute(lines, {batch: at(grams(batch))}).per100g
        const [dense, thin] = [of(Math.min(one, other)), of(Math.max(one, other))]
        expect(dense?.protein.value).toBeGreaterThanOrEqual(thin?.protein.value ?? NaN)
      }),
    )
  })
})

test('a batch is affine in every weight: halfway between two amounts is halfway between the sums', () => {
  const amount = fc.double({min: 20, max: 2000, noNaN: true})
  fc.assert(
    fc.property(drawnLines, drawnLine, amount, amount, (drawn, one, low, high) => {
      // What is poured off stays as it is while the line grows.
      const treatment = one.treatment === 'simmered' ? one.treatment : 'plain'
      const batchWith = (weight: number) =>
        compute([lineOf({...one, treatment, grams: weight}), ...drawn.map(lineOf)]).batch
      const [from, middle, to] = [batchWith(low), batchWith((low + high) / 2), batchWith(high)]
      for (const nutrient of nutrients) {
        expectClose(middle[nutrient].value, (from[nutrient].value + to[nutrient].value) / 2)
      }
    }),
  )
})
