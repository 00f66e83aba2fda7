import fc from 'fast-check'
import {expect, test} from 'vitest'
import {readRecipe} from '../../src/cookbook/read-recipe.ts'
import {recipeReader} from '../../src/cookbook/recipe-fields.ts'

const reader = recipeReader({cups: 'metric', measures: new Set()})

const sound = `---
title: Barley pot with lemon chicken
serves: 4
yield: 1480 g                 # finished batch, weighed
time: { hands-on: 20 min, total: 65 min }
pan: { round: 24 cm, depth: 7 cm }
keeps: { fridge: 3 days, freezer: 3 months }
tags: [one pot, "batch cooking"]
ingredients:
  pearl barley: 180 g
  lemon: { amount: 1 medium, bought: true }
  For the sauce:
    rice flour: { amount: 3 g, counted: false, because: dusting }
    tomato relish: { amount: 90 g, recipe: relish, instead: { jarred sauce: 90 g } }
stated: { energy: 455 kcal, protein: 38 g }
compared with: { recipe: classic-barley-pot, energy: 40 % less }
accepted: { stated-energy: weighed twice }
---

Rinse the [barley](#pearl-barley).
`

/** What a slip of the pen, or a file made to break the reader, leaves behind. */
const scrap = fc.constantFrom(
  ...[':', ' ', '\n', '\t', '\r', '-', '"', "'", '[', ']', '{', '}', '&a', '*a', '!!set', '#', '|'],
  ...['?', ',', '%', '@', '.nan', '.inf', '-1', '1e999', '½', '\u2028', '🍋', '__proto__', '---\n'],
  ...['<<: ', 'title: x\n', '  ', '- ', ': ', '1,5 kg', '...\n', '0', 'null', '~', '\uFEFF'],
)

const slip = fc.record({
  at: fc.nat(sound.length),
  without: fc.nat(12),
  scrap: fc.option(scrap, {nil: ''}),
})

const broken = fc
  .array(slip, {minLength: 1, maxLength: 6})
  .map((slips) =>
    slips.reduce(
      (text, {at, without, scrap: added}) => text.slice(0, at) + added + text.slice(at + without),
      sound,
    ),
  )

test('The recipe the slips are made in is sound', () => {
  const {recipe, problems} = readRecipe({path: 'recipes/pot.md', text: sound}, reader)
  expect(problems).toEqual([])
  expect(recipe?.slug).toBe('pot')
})

test('A broken recipe gives problems within the file, or a recipe, and never falls over', () => {
  fc.assert(
    fc.property(broken, (text) => {
      const {recipe, problems} = readRecipe({path: 'recipes/pot.md', text}, reader)
      if (!recipe) expect(problems).not.toEqual([])
      for (const {place, reason} of problems) {
        expect(reason).toMatch(/^[^\r\n]*[^.\r\n]$/)
        if (!place) continue
        const [start, end] = [place.start.offset ?? -1, place.end.offset ?? -1]
        expect(start).toBeGreaterThanOrEqual(0)
        expect(end).toBeGreaterThanOrEqual(start)
        expect(end).toBeLessThanOrEqual(text.length)
      }
    }),
    {numRuns: 300},
  )
})

test('Front matter of any text at all never falls over', () => {
  fc.assert(
    fc.property(fc.string({unit: 'binary', maxLength: 200}), (yaml) => {
      const text = `---\n${yaml}\n---\n`
      const {recipe, problems} = readRecipe({path: 'recipes/pot.md', text}, reader)
      if (!recipe) expect(problems).not.toEqual([])
    }),
    {numRuns: 100},
  )
})
