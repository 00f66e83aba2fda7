import {expect, test} from 'vitest'
import {generatedCookbook} from '../../bench/cookbook/generate.ts'
import {examine} from '../../src/build.ts'

const texts = [...generatedCookbook(100)]
const examined = examine({sources: {texts, images: []}, problems: []}, {today: '2026-11-25'})

test('a generated cookbook is one that nothing is to be said about', () => {
  expect(examined.problems).toEqual([])
  expect(examined.computed.size).toBe(100)
})

test('a fifth of its recipes are components, and each is part of a dish', () => {
  const components = [...examined.cookbook.recipes.values()].filter(({serves}) => !serves)
  expect(components).toHaveLength(20)
})

test('it has 200 packets, a plan and a page for every hundred recipes', () => {
  expect(examined.cookbook.foods.own).toHaveLength(200)
  expect(examined.cookbook.plans).toHaveLength(1)
  expect(examined.cookbook.pages).toHaveLength(1)
})

test('every recipe states its energy and macros', () => {
  for (const {stated} of examined.cookbook.recipes.values()) {
    expect(stated?.figures.map(({nutrient}) => nutrient)).toEqual(
      expect.arrayContaining(['energy', 'protein', 'carbohydrate', 'fat']),
    )
  }
})

test('its recipes are as long as those that the targets were set for: 5 to 6 kB in the mean', () => {
  const recipes = texts.filter(({path}) => path.startsWith('recipes/'))
  const bytes = recipes.reduce((sum, {text}) => sum + Buffer.byteLength(text), 0)
  expect(bytes / recipes.length).toBeGreaterThan(5_000)
  expect(bytes / recipes.length).toBeLessThan(6_000)
})

test('it is the same in every run, and no two of its recipes are alike', () => {
  expect([...generatedCookbook(100)]).toEqual(texts)
  expect(new Set(texts.map(({text}) => text)).size).toBe(texts.length)
})
