import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import type {Nutrient} from '../../src/food/nutrients.ts'
import {euDeclarations, euSpan} from '../../src/food/rounding/eu.ts'
import type {Declared} from '../../src/food/rounding/scheme.ts'
import {usDeclarations, usSpan} from '../../src/food/rounding/us.ts'

interface Law {
  readonly name: string
  readonly nutrients: readonly Nutrient[]
  readonly declarations: (nutrient: Nutrient, unrounded: number) => readonly Declared[]
  readonly span: typeof usSpan
}

const laws: readonly Law[] = [
  {
    name: 'US',
    nutrients: [
      'energy',
      'fat',
      'saturated',
      'trans',
      'cholesterol',
      'sodium',
      'carbohydrate',
      'fibre',
      'sugars',
      'addedSugars',
      'polyols',
      'protein',
      'potassium',
      'calcium',
      'iron',
      'vitaminD',
    ],
    declarations: usDeclarations,
    span: usSpan,
  },
  {
    name: 'EU',
    nutrients: [
      'energy',
      'protein',
      'fat',
      'saturated',
      'availableCarbohydrate',
      'fibre',
      'sugars',
      'polyols',
      'salt',
      'sodium',
      'potassium',
      'calcium',
      'iron',
      'vitaminD',
    ],
    declarations: euDeclarations,
    span: euSpan,
  },
]

/** Small amounts and large ones alike, never so near an edge that float error decides. */
const amount = fc
  .oneof(fc.integer({min: 1, max: 3_000}), fc.integer({min: 1, max: 3_000_000}))
  .map((steps) => steps / 1000 + 0.000_37)

describe.each(laws)('$name rounding', ({nutrients, declarations, span}) => {
  test.each(nutrients)(
    '%s: what is declared may have been what it was declared from',
    (nutrient) => {
      fc.assert(
        fc.property(amount, (unrounded) => {
          const allowed = declarations(nutrient, unrounded)
          expect(allowed.length).toBeGreaterThan(0)
          for (const declared of allowed) {
            const behind = span(nutrient, declared)
            expect(behind?.low).toBeLessThanOrEqual(unrounded)
            expect(behind?.high).toBeGreaterThan(unrounded)
          }
        }),
      )
    },
  )

  test.each(nutrients)(
    '%s: everything in a span may be declared so, nothing beyond',
    (nutrient) => {
      fc.assert(
        fc.property(
          amount,
          fc.double({min: 0.001, max: 0.999, noNaN: true}),
          (unrounded, share) => {
            for (const declared of declarations(nutrient, unrounded)) {
              const behind = span(nutrient, declared)
              if (!behind) throw new Error('a declared figure has a span')
              const {low, high} = behind
              const width = high - low
              expect(declarations(nutrient, low + share * width)).toContainEqual(declared)
              expect(declarations(nutrient, high + 1e-6 * width)).not.toContainEqual(declared)
              if (low > 0) {
                expect(declarations(nutrient, low - 1e-6 * width)).not.toContainEqual(declared)
              }
            }
          },
        ),
      )
    },
  )
})
