import {expect, test} from 'vitest'
import {judge} from '../../src/check/verdict.ts'
import type {EnergyMethod} from '../../src/cookbook/energy-method.ts'
import {computeCookbook} from '../../src/nutrition/compute-cookbook.ts'
import {declaration} from '../../src/nutrition/declaring/declaration.ts'
import {publishedBy, publishedFigure} from '../../src/nutrition/published.ts'
import {explain} from '../../src/report/explain.ts'
import {figureChoice} from '../../templates/parts/figure-rows.ts'
import {publishedFigures} from '../../templates/parts/published-figures.ts'
import {at, cookbook, food, line, nowhere, recipe} from '../kitchen.ts'

// USDA SR28 (2015), NDB 11090 broccoli, raw: 34 kcal by its specific factors; its macros (2.82 g,
// 0.37 g, 6.64 g) give 41 kcal by 4-4-9, 21 CFR 101.9(c)(1)(i)(B).
const broccoli = food('broccoli', {
  energy: 34,
  energyGeneral: 41,
  protein: 2.82,
  fat: 0.37,
  carbohydrate: 6.64,
})

/** Every place that tells the energy of a dish of 1 kg, kcal per serving. */
function toldEnergies(own: EnergyMethod | undefined, ofCookbook: EnergyMethod) {
  const figure = {
    nutrient: 'energy',
    value: 412,
    increment: 1,
    text: '410 kcal',
    place: nowhere,
  } as const
  const stated = {basis: 'batch', place: nowhere, figures: [figure]} as const
  const dish = recipe('dish', [line('broccoli', 1000)], {
    serves: at(1),
    ...(own && {energyMethod: at(own)}),
  })
  const book = cookbook([broccoli], [dish], {energyMethod: ofCookbook})
  const {computed: all} = computeCookbook(book)
  const computed = all.get('dish')
  if (!computed?.perServing) throw new Error('not computed')
  const {settings} = book
  const {figures} = explain(
    computed,
    {cookbook: book, computed: all},
    {filePath: (path) => path, messages: []},
  )
  const declared = declaration(computed, 'us', settings).kilocalories.perServing
  return {
    published: publishedFigure(computed.perServing, 'energy', publishedBy(settings, dish)).value,
    headline: publishedFigures(computed, settings).figures[0]?.value,
    table: publishedFigure(computed.perServing, 'energy', figureChoice(settings, computed)).value,
    explained: figures.energy?.value,
    judgedAgainst: judge(stated, computed, settings)[0]?.computed.value,
    declaredUnrounded: declared !== 'unknown' && declared?.kind === 'amount' && declared.value,
  }
}

test('the energy that a recipe asks for is told everywhere, whatever the cookbook asks for', () => {
  const general = Object.fromEntries(
    ['published', 'headline', 'table', 'explained', 'judgedAgainst'].map((place) => [place, 410]),
  )
  expect(toldEnergies('general', 'foods')).toEqual({...general, declaredUnrounded: 410})
  expect(toldEnergies(undefined, 'general')).toEqual({...general, declaredUnrounded: 410})
})

test('without a word of the recipe the cookbook decides, and it may overrule the cookbook', () => {
  for (const told of [toldEnergies('foods', 'general'), toldEnergies(undefined, 'foods')]) {
    expect(told).toEqual({
      published: 340,
      headline: 340,
      table: 340,
      explained: 340,
      judgedAgainst: 340,
      declaredUnrounded: 340,
    })
  }
})
