import {describe, expect, test} from 'vitest'
import type {Stated} from '../../src/cookbook/recipe.ts'
import {publishedNutrients} from '../../src/food/nutrients.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {filePathBelow} from '../../src/report/file-path.ts'
import {jsonReport} from '../../src/report/json-report.ts'
import {recipeReport} from '../../src/report/recipe-report.ts'
import type {RecipeReport} from '../../src/report/report.ts'
import {at, cookbook, food, grams, line, nowhere, recipe, settings} from '../kitchen.ts'

const oats = food('oats', {energy: 379, protein: 13.15, fat: 6.52, carbohydrate: 67.7})
const milk = food('milk', {energy: 61, protein: 3.15, fat: 3.27, carbohydrate: 4.78})
const stated: Stated = {
  basis: 'serving',
  place: nowhere,
  figures: [
    {nutrient: 'energy', value: 312, increment: 1, text: '312 kcal', place: nowhere},
    {nutrient: 'protein', value: 20, increment: 1, text: '20 g', place: nowhere},
  ],
}

function report(more: Parameters<typeof recipe>[2]): RecipeReport {
  const bowl = recipe('bowl', [line('oats', 100), line('milk', 400)], more)
  const {computed} = computeCookbook(cookbook([oats, milk], [bowl]))
  const [one] = [...computed.values()].map((each) =>
    recipeReport(each, settings, filePathBelow('content')),
  )
  if (one === undefined) throw new Error('the bowl cannot be computed')
  return one
}

describe('the report of a recipe', () => {
  // By hand: 100 g × 3.79 + 400 g × 0.61 = 623 kcal a batch, 311.5 kcal each for two.
  const whole = report({serves: at(2), batch: at(grams(450)), stated})

  test('has every nutrient per serving and per 100 g, with uncertainty and unit', () => {
    expect(Object.keys(whole.perServing ?? {})).toEqual(publishedNutrients)
    expect(Object.keys(whole.per100g ?? {})).toEqual(publishedNutrients)
    expect(whole.perServing?.energy).toMatchObject({value: 311.5, unit: 'kcal'})
    expect(whole.per100g?.energy?.value).toBeCloseTo(623 / 4.5, 9)
    // Oats weighed to 1 g: 3.79/√12 kcal; milk 0.61/√12; labels printed to 0.01: negligible. k = 2.
    const byHand = (2 * Math.hypot(3.79, 0.61)) / Math.sqrt(12) / 2
    expect(whole.perServing?.energy?.uncertainty).toBeCloseTo(byHand, 2)
  })

  test('has weights, stated figures and verdicts', () => {
    expect(whole).toMatchObject({
      slug: 'bowl',
      file: 'content/recipes/bowl.md',
      serves: 2,
      batchGrams: 450,
      portionGrams: 225,
      statedPer: 'serving',
      stated: {energy: {value: 312, unit: 'kcal'}, protein: {value: 20, unit: 'g'}},
      verdicts: {energy: 'agrees', protein: 'drift'},
    })
  })

  test('says "at least" where a food’s figure is unknown, and only there', () => {
    expect(whole.perServing?.fibre).toEqual({
      value: 0,
      uncertainty: 0,
      unit: 'g',
      atLeast: true,
    })
    expect(whole.perServing?.energy).not.toHaveProperty('atLeast')
  })

  test('leaves out what cannot be computed instead of saying 0', () => {
    const component = report({})
    expect(Object.keys(component)).toEqual(['slug', 'file', 'verdicts'])
    expect(component.verdicts).toEqual({})
  })
})

describe('the JSON', () => {
  test('is one valid document, a recipe and a message a line, in pieces', () => {
    const one = report({serves: at(2), stated})
    const pieces = [...jsonReport({recipes: [one, one], messages: []})]
    const text = pieces.join('')
    expect(JSON.parse(text)).toEqual({recipes: [one, one], messages: []})
    expect(text.trimEnd().split('\n')).toHaveLength(6)
    expect(pieces.length).toBeGreaterThan(4)
  })

  test('of nothing is valid, too', () => {
    expect(JSON.parse([...jsonReport({recipes: [], messages: []})].join(''))).toEqual({
      recipes: [],
      messages: [],
    })
  })

  test('a recipe is only made when its turn comes', () => {
    const made: string[] = []
    function* recipes() {
      for (const slug of ['first', 'second']) {
        made.push(slug)
        yield {...report({}), slug}
      }
    }
    const pieces = jsonReport({recipes: recipes(), messages: []})[Symbol.iterator]()
    pieces.next()
    pieces.next()
    expect(made).toEqual(['first'])
  })
})
