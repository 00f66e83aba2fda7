import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import type {IngredientLine, Recipe} from '../../src/cookbook/recipe.ts'
import type {Figure} from '../../src/food/figures.ts'
import {type Nutrient, nutrients} from '../../src/food/nutrients.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import type {Computed} from '../../src/nutrition/computed.ts'
import type {BatchAmount} from '../../src/units/amount.ts'
import {standardUncertainty} from '../../src/units/uncertain.ts'
import {at, cookbook, food, grams, line, recipe} from '../kitchen.ts'

const foods = [
  food('oats', {
    energy: 379,
    protein: 13.15,
    fat: 6.52,
    carbohydrate: 67.7,
    fibre: 10.1,
    sodium: 6,
  }),
  food('milk', {energy: 61, protein: 3.15, fat: 3.27, carbohydrate: 4.78, fibre: 0, sodium: 43}),
  food('wine', {energy: 85, protein: 0.07, carbohydrate: 2.61, alcohol: 10.6}, {increment: 0.1}),
  food('mince', {energy: 254, protein: 17.17, fat: 20, saturated: 7.58, carbohydrate: 0}),
  food('avocado', {energy: 160, protein: 2, fat: 14.7, fibre: 6.7}, {refuseRatio: 0.26}),
] as const

interface Drawn {
  readonly food: number
  readonly grams: number
  readonly kind: 'plain' | 'bought' | 'eaten' | 'simmered' | 'poured'
}

const drawnLine: fc.Arbitrary<Drawn> = fc.record({
  food: fc.integer({min: 0, max: foods.length - 1}),
  grams: fc.integer({min: 20, max: 2000}),
  kind: fc.constantFrom('plain', 'bought', 'eaten', 'simmered', 'poured'),
})

const drawnLines = fc.array(drawnLine, {minLength: 1, maxLength: 8})
const serves = fc.integer({min: 1, max: 12})

/** A weight read on a scale of `resolution` g: scaling a recipe scales what its scale can tell, too. */
function lineOf(drawn: Drawn, factor = 1): IngredientLine {
  const weight = (value: number) => grams(value * factor, factor)
  const {name} = foods[drawn.food] ?? foods[0]
  switch (drawn.kind) {
    case 'plain':
      return line(name, weight(drawn.grams))
    case 'bought':
      return line(name, weight(drawn.grams), {isBought: true})
    case 'eaten':
      return line(name, weight(drawn.grams), {eaten: {amount: at(weight(drawn.grams / 4))}})
    case 'simmered':
      return line(name, weight(drawn.grams), {simmeredMinutes: at(40)})
    case 'poured':
      return line(name, weight(drawn.grams), {
        pouredOff: {kind: 'weighed', amount: at(weight(drawn.grams / 100)), what: 'fat'},
      })
  }
}

function compute(slug: string, ...recipes: readonly Recipe[]): Computed {
  const {computed, problems} = computeCookbook(cookbook(foods, recipes, {scaleGrams: 1e6}))
  const one = computed.get(slug)
  if (one === undefined) throw new Error(`not computed: ${JSON.stringify(problems)}`)
  return one
}

/** Within floating-point error of a sum of this size. */
function expectClose(left: number, right: number): void {
  expect(Math.abs(left - right)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(left)))
}

function expectSame(
  left: Computed,
  right: Computed,
  compare: (one: Figure, other: Figure, nutrient: Nutrient) => void,
): void {
  for (const nutrient of nutrients) {
    compare(left.batch[nutrient], right.batch[nutrient], nutrient)
    expect([...left.batch[nutrient].missing].sort()).toEqual(
      [...right.batch[nutrient].missing].sort(),
    )
  }
}

describe('the algebra of recipes', () => {
  test('scaling lines and servings by k scales the batch and leaves a serving alone', () => {
    fc.assert(
      fc.property(drawnLines, serves, fc.integer({min: 2, max: 50}), (drawn, count, factor) => {
        const one = compute(
          'dish',
          recipe(
            'dish',
            drawn.map((each) => lineOf(each)),
            {serves: at(count)},
          ),
        )
        const many = compute(
          'dish',
          recipe(
            'dish',
            drawn.map((each) => lineOf(each, factor)),
            {serves: at(count * factor)},
          ),
        )
        expectSame(one, many, (left, right) => {
          expectClose(left.value * factor, right.value)
          // Figures printed in a table scale whole; so do weighings whose step scales along.
          expectClose(standardUncertainty(left) * factor, standardUncertainty(right))
        })
        for (const nutrient of nutrients) {
          expectClose(
            one.perServing?.[nutrient].value ?? NaN,
            many.perServing?.[nutrient].value ?? NaN,
          )
        }
      }),
    )
  })

  test('the order of ingredients changes nothing', () => {
    fc.assert(
      fc.property(drawnLines, (drawn) => {
        const lines = drawn.map((each) => lineOf(each))
        const one = compute('dish', recipe('dish', lines, {serves: at(1)}))
        const other = compute('dish', recipe('dish', lines.toReversed(), {serves: at(1)}))
        expectSame(one, other, (left, right) => {
          expectClose(left.value, right.value)
          expectClose(standardUncertainty(left), standardUncertainty(right))
        })
      }),
    )
  })

  test('splitting a line in two changes no figure, and adds one more weighing', () => {
    fc.assert(
      fc.property(drawnLines, fc.double({min: 0.05, max: 0.95, noNaN: true}), (drawn, share) => {
        const [first, ...rest] = drawn
        if (first === undefined) return
        const others = rest.map((each) => lineOf(each))
        const whole = compute('dish', recipe('dish', [lineOf(first), ...others], {serves: at(1)}))
        const parts = [
          lineOf({...first, grams: first.grams * share}),
          lineOf({...first, grams: first.grams * (1 - share)}),
        ]
        const split = compute('dish', recipe('dish', [...parts, ...others], {serves: at(1)}))
        expectSame(whole, split, (left, right) => {
          expectClose(left.value, right.value)
          expect(standardUncertainty(right)).toBeGreaterThanOrEqual(
            standardUncertainty(left) * (1 - 1e-9),
          )
        })
      }),
    )
  })

  test('a component used whole equals its ingredients written into the recipe', () => {
    const wholeBatch: BatchAmount = {
      kind: 'batch',
      text: '1 batch',
      batches: {value: 1, halfRange: 0, increment: 1},
    }
    fc.assert(
      fc.property(
        drawnLines,
        drawnLines,
        fc.integer({min: 1, max: 5000}),
        (inner, outer, weight) => {
          const innerLines = inner.map((each) => lineOf(each))
          const outerLines = outer.map((each) => lineOf(each))
          const component = recipe('sauce', innerLines, {batch: at(grams(weight))})
          const used = compute(
            'dish',
            recipe('dish', [line('sauce', wholeBatch, {recipe: at('sauce')}), ...outerLines], {
              serves: at(1),
            }),
            component,
          )
          const inlined = compute(
            'dish',
            recipe('dish', [...innerLines, ...outerLines], {serves: at(1)}),
          )
          expectSame(used, inlined, (left, right, nutrient) => {
            // The component's finished weight says how much of its water boiled away.
            if (nutrient === 'water') return
            expectClose(left.value, right.value)
            expectClose(standardUncertainty(left), standardUncertainty(right))
          })
        },
      ),
    )
  })

  test('a component used by weight gives that share of its figures', () => {
    fc.assert(
      fc.property(drawnLines, fc.integer({min: 10, max: 900}), (inner, weight) => {
        const component = recipe(
          'sauce',
          inner.map((each) => lineOf(each)),
          {batch: at(grams(1000))},
        )
        const used = compute(
          'dish',
          recipe('dish', [line('sauce', weight, {recipe: at('sauce')})], {serves: at(1)}),
          component,
        )
        const made = compute('sauce', component)
        expectSame(used, made, (left, right) =>
          expectClose(left.value, (right.value * weight) / 1000),
        )
      }),
    )
  })

  test('more of a plain ingredient never gives less of anything', () => {
    fc.assert(
      fc.property(drawnLines, fc.integer({min: 0, max: foods.length - 1}), (drawn, which) => {
        const lines = drawn.map((each) => lineOf(each))
        const more = [...lines, lineOf({food: which, grams: 50, kind: 'plain'})]
        const one = compute('dish', recipe('dish', lines, {serves: at(1)}))
        const other = compute('dish', recipe('dish', more, {serves: at(1)}))
        for (const nutrient of nutrients) {
          expect(other.batch[nutrient].value).toBeGreaterThanOrEqual(one.batch[nutrient].value)
        }
      }),
    )
  })
})
