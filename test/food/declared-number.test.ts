import {describe, expect, test} from 'vitest'
import {declaredNumber} from '../../src/food/rounding/declared-number.ts'
import {euDeclarations} from '../../src/food/rounding/eu.ts'

// European Commission, guidance on tolerances (Dec 2012), rounding guidelines: 3 significant figures
// for calcium and potassium, 2 for other vitamins and minerals; 0.1 g below 10 g of a macro.
describe('The number of an EU table', () => {
  test.each([
    ['iron', 0.84, '0.84'],
    ['iron', 2.14, '2.1'],
    ['iron', 12.3, '12'],
    ['vitaminD', 0.754, '0.75'],
    ['calcium', 12.34, '12.3'],
    ['calcium', 1204, '1200'],
    ['potassium', 345.6, '346'],
    ['protein', 9.04, '9.0'],
    ['salt', 0.4, '0.40'],
    ['energy', 123.4, '123'],
  ] as const)('%s of %d is %s', (nutrient, amount, text) => {
    const [declared] = euDeclarations(nutrient, amount)
    expect(declared && declaredNumber('eu', nutrient, declared)).toBe(text)
  })
})
