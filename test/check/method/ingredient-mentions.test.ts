/** Where a method names its ingredients, and which of them it means. */

import {expect, test} from 'vitest'
import {ingredientMentions, stepsOf} from '../../../src/check/method/ingredient-mentions.ts'
import {computedIn} from '../check-text.ts'

const pot = ['pearl barley: 180 g', 'olive oil: 15 g', 'sesame oil: 5 g', 'barley flour: 20 g']

/** The words of each mention, and the lines they can mean. */
function mentions(method: string, ingredients = pot): readonly string[] {
  const {computed} = computedIn({ingredients, method})
  const dish = computed.get('dish')
  if (!dish) throw new Error('not computed')
  return ingredientMentions(dish).map(
    ({passage, from, to, lines}) =>
      `${passage.text.slice(from, to)} → ${lines.map(({line}) => line.name.value).join(', ')}`,
  )
}

test('names stand for the line they fit best, and for several where they fit as well', () => {
  expect(mentions('Heat the olive oil, add the barley, then the oil.')).toEqual([
    'olive oil → olive oil',
    'barley → pearl barley, barley flour',
    'oil → olive oil, sesame oil',
  ])
  expect(mentions('Stir the barley flour into the pearl barley.')).toEqual([
    'barley flour → barley flour',
    'pearl barley → pearl barley',
  ])
})

test('a link says which line is meant, whatever its words are, and is told once', () => {
  expect(mentions('Heat [the oil](#sesame-oil) and add [it](#pearl-barley).')).toEqual([
    'the oil → sesame oil',
    'it → pearl barley',
  ])
  expect(mentions('Heat [oil](#sesame-oil), oil and [barley](#pearl-barley).')).toEqual([
    'oil → sesame oil',
    'oil → olive oil, sesame oil',
    'barley → pearl barley',
  ])
})

test('links belong to the step they stand in, in the order of the text', () => {
  expect(
    mentions('1. Add [it](#pearl-barley).\n2. Warm the olive oil; stir in [that](#barley-flour).'),
  ).toEqual(['it → pearl barley', 'olive oil → olive oil', 'that → barley flour'])
})

test('words of two ingredients with other words between them are two mentions', () => {
  expect(mentions('Olive and sesame oil.')).toEqual([
    'Olive → olive oil',
    'sesame oil → sesame oil',
  ])
  expect(mentions('Pearl-barley and flour.')).toEqual([
    'Pearl-barley → pearl barley',
    'flour → barley flour',
  ])
})

test('headings are no steps, and no more than 500 steps are read', () => {
  const {cookbook} = computedIn({
    ingredients: pot,
    method: `## The barley\n\nBoil.\n\n${'Stir.\n\n'.repeat(600)}`,
  })
  const recipe = cookbook.recipes.get('dish')
  const steps = recipe ? stepsOf(recipe) : []
  expect(steps[0]?.text).toBe('Boil.')
  expect(steps).toHaveLength(500)
})

test('a step longer than 5,000 characters is not read', () => {
  expect(mentions(`Add the flour. ${'x'.repeat(4985)}`)).toEqual(['flour → barley flour'])
  expect(mentions(`Add the flour. ${'x'.repeat(4986)}`)).toEqual([])
})
