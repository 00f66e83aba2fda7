import {expect, test} from 'vitest'
import {type PublishedNutrient, publishedNutrients} from '../../src/food/nutrients.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {explain} from '../../src/report/explain.ts'
import type {Explanation} from '../../src/report/explanation.ts'
import {filePathBelow} from '../../src/report/file-path.ts'
import {plainPaint} from '../../src/report/paint.ts'
import {textExplanation} from '../../src/report/text-explanation.ts'
import {at, cookbook, food, line, nowhere, recipe} from '../kitchen.ts'

/** A dish whose only food has the energy given, and the macros that its page states. */
function panel(
  energyKcal: number,
  stated: Partial<Record<PublishedNutrient, number>>,
): Explanation {
  const meal = food('meal', {
    energy: energyKcal,
    energyGeneral: 629,
    protein: 47,
    carbohydrate: 72,
    availableCarbohydrate: 65,
    fibre: 7,
    fat: 17,
  })
  const figures = publishedNutrients.flatMap((nutrient) => {
    const value = stated[nutrient]
    if (value === undefined) return []
    return [{nutrient, value, increment: 1, text: `${value}`, place: nowhere}]
  })
  const dish = recipe('dish', [line('meal', 100)], {
    serves: at(1),
    stated: {basis: 'serving', place: nowhere, figures},
  })
  const book = cookbook([meal], [dish], {netCarbohydrate: true, tolerance: 'strict'})
  const {computed} = computeCookbook(book)
  const one = computed.get('dish')
  if (one === undefined) throw new Error('the dish cannot be computed')
  return explain(
    one,
    {cookbook: book, computed},
    {filePath: filePathBelow('content'), messages: []},
  )
}

const macros = {protein: 47, carbohydrate: 72, fat: 17}

// A panel of 615 kcal, 47 g protein, 72 g carbohydrate, 17 g fat (common practice, no source):
// 4 × 47 + 4 × 72 + 9 × 17 = 629 kcal, and 14 of 615 are 2.3 %.
test('stated macros are multiplied out by every method, with the limits of their rounding', () => {
  const {energy} = panel(615, {energy: 615, ...macros})
  // Half a gram of each is 2 + 2 + 4.5 kcal. The 7 g of fibre, computed, give 0 to 2 kcal/g.
  expect(energy?.byMethod[0]).toEqual({method: 'general', value: 629, low: 620.5, high: 637.5})
  expect(energy?.byMethod.map(({method}) => method)).toEqual(['general', 'digestible', 'eu'])
  expect(energy?.gapPercent).toBeCloseTo((100 * 14) / 615, 9)
  expect(energy?.wouldExplain.join()).toContain('3.5 g of insoluble fibre')
  // 47 × 4 + 65 × 4 + 17 × 9 + 7 × 2 = 615, which the fibre of the food explains by EU factors, and by
  // the US ones with fibre at its own.
  expect(energy?.fits).toBe('digestible')
})

test('a stated energy names the method that it fits, a sum of the foods first', () => {
  const method = (kcal: number, stated: number) =>
    panel(kcal, {energy: stated, ...macros}).comparison[0]
  expect(method(615, 615)).toMatchObject({method: 'foods', verdict: 'agrees'})
  expect(method(615, 629)).toMatchObject({method: 'general', verdict: 'agrees'})
  expect(method(629, 900)).toMatchObject({method: 'foods', verdict: 'drift'})
})

test('without all of energy and macros there is nothing to set beside each other', () => {
  expect(panel(615, {energy: 615, protein: 47}).energy).toBeUndefined()
})

test('the text says it', () => {
  const text = [...textExplanation(panel(615, {energy: 615, ...macros}), plainPaint)].join('')
  expect(text).toContain('general factors 4-4-9, 21 CFR 101.9(c)(1)(i)(B)')
  expect(text).toMatch(/629 kcal +621 to 638/)
  expect(text).toContain('stated: 615 kcal, 2.3 % from the general factors')
  expect(text).toContain('of insoluble fibre')
})

test('net carbohydrate is told where the cookbook asks', () => {
  const explanation = panel(615, macros)
  expect(explanation.netCarbohydrate).toMatchObject({value: 65, unit: 'g'})
  expect([...textExplanation(explanation, plainPaint)].join('')).toMatch(
    /Net carb.*\n65.* g per serving/,
  )
})
