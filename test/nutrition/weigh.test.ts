import {describe, expect, test} from 'vitest'
import {weighed} from '../../src/nutrition/weigh.ts'
import {standardUncertainty} from '../../src/units/uncertain.ts'
import {computedIn} from '../check/check-text.ts'
import {grams} from '../kitchen.ts'

const reading = {kind: 'weighing', subject: 'a reading'} as const

/** Full width of the rectangle that a reading may lie in, g: GUM 4.3.7, width/√12. */
function widthGrams(value: number, increment: number, scaleGrams: number): number {
  return Math.sqrt(12) * standardUncertainty(weighed(grams(value, increment), scaleGrams, reading))
}

describe('a weight', () => {
  test.each([
    ['500 g on a 1 g scale', 500, 1, 1, 1],
    ['500 g on a 5 g scale', 500, 1, 5, 5],
    ['500 g on a 0.1 g scale', 500, 1, 0.1, 0.1],
    ['0.3 g on a 0.1 g scale, which in doubles is no multiple', 0.3, 0.1, 0.1, 0.1],
  ])('%s may be anywhere within its step', (_, value, increment, scale, width) => {
    expect(widthGrams(value, increment, scale)).toBeCloseTo(width, 9)
  })

  test.each([
    ['13.5 g beside a 1 g scale', 13.5, 0.1, 1, 0.1],
    ['503 g beside a 5 g scale', 503, 1, 5, 1],
    ['8 oz beside a 5 g scale', 226.796, 28.35, 5, 5],
  ])('%s was read on a finer one, to the digit written', (_, value, increment, scale, width) => {
    expect(widthGrams(value, increment, scale)).toBeCloseTo(width, 9)
  })
})

describe('a measure the writer weighed', () => {
  const foods = [
    'syrup:',
    '  label: { per: 100 g, energy: 300 kcal }',
    '  measures: { cup: 330 g }',
    'frying oil:',
    '  same as: olive oil',
    '  measures: { cup: 230 g }',
    'flakes:',
    '  label: { per: 100 g, energy: 370 kcal }',
    '  measures: { dl: 40 g }',
  ].join('\n')

  function gramsOfDish(amount: string, cups: string): number | undefined {
    const ingredients = [amount]
    const {computed} = computedIn({ingredients, method: '', settings: [`cups: ${cups}`], foods})
    return computed.get('dish')?.lines[0]?.grams.value
  }

  // Spoons of 14.787 ml in US kitchens and 15 ml in others; cups of 236.588, 250 and 284.131 ml:
  // NIST Handbook 44, Appendix C; UK Weights and Measures Act 1985, Schedule 1.
  test.each([
    ['syrup: 1 cup', 'metric', 330],
    ['syrup: 1 tbsp', 'us', (330 * 14.786_764_781_25) / 236.588_236_5],
    ['syrup: 1 tbsp', 'metric', (330 * 15) / 250],
    ['syrup: 1 tbsp', 'imperial', (330 * 15) / 284.130_625],
    ['frying oil: 1 cup', 'us', 230],
    ['frying oil: 1 cup', 'metric', 230],
    ['frying oil: 1 cup', 'imperial', 230],
    ['flakes: 1 cup', 'metric', 100],
  ])('%s with %s cups is of their own size', (amount, cups, grams) => {
    expect(gramsOfDish(amount, cups)).toBeCloseTo(grams, 8)
  })

  // USDA SR28 (2015), NDB 04053 olive oil: 1 cup 216 g, 1 tbsp 13.5 g, both US customary.
  test.each([
    ['olive oil: 1 cup', 'us', 216],
    ['olive oil: 1 cup', 'metric', (216 * 250) / 236.588_236_5],
  ])('%s with %s cups is by the table where nobody weighed it', (amount, cups, grams) => {
    expect(gramsOfDish(amount, cups)).toBeCloseTo(grams, 8)
  })
})
