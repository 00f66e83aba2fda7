import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {jsonScript} from '../../templates/parts/json-script.ts'
import {recipeData} from '../../templates/parts/structured-recipe.ts'
import {at, computedOf, line, recipe, sampleSite, siteWith, weight} from './sample.ts'

const address = 'https://boathouse.example/'
const site = sampleSite({address})

/** The text of the script element a value becomes. */
function scriptText(value: unknown): string {
  const [child] = jsonScript(value, 'application/json').children
  return child?.type === 'text' ? child.value : ''
}

describe('the recipe in the words of schema.org', () => {
  const data = recipeData(site, computedOf(site, 'barley-pot'))

  // Property names and text forms: schema.org Recipe and NutritionInformation (release 30 has them
  // so; the Energy and Mass forms are "number unit").
  test('has its times as a pair, its yield and its lines', () => {
    expect(data).toMatchObject({
      '@context': 'https://schema.org',
      '@type': 'Recipe',
      name: 'Barley pot with lemon chicken',
      url: 'https://boathouse.example/recipes/barley-pot/',
      prepTime: 'PT20M',
      cookTime: 'PT45M',
      totalTime: 'PT1H5M',
      recipeYield: '4 servings',
      keywords: 'one pot, batch cooking',
    })
    expect(data.recipeIngredient).toContain('600 g chicken thigh, skinless')
    expect(data.recipeIngredient).toContain('30 g (2 tbsp) pepper paste')
    expect(data.recipeInstructions).toEqual([
      {'@type': 'HowToStep', text: 'Brown the chicken.'},
      {'@type': 'HowToStep', text: 'Add barley and stock; simmer for 35 minutes.'},
      {'@type': 'HowToStep', text: 'Finish with lemon.'},
    ])
  })

  test('publishes the stated figures, and no figure that is only a lower bound', () => {
    expect(data.nutrition).toEqual({
      '@type': 'NutritionInformation',
      servingSize: '370 g',
      calories: '395 calories',
      proteinContent: '35 g',
      carbohydrateContent: '47 g',
      fatContent: '7 g',
      fiberContent: '10 g',
      sodiumContent: expect.stringMatching(/^\d+ mg$/),
    })
  })

  test('gives no figures where there is no serving', () => {
    expect(recipeData(site, computedOf(site, 'brown-stock'))).not.toHaveProperty('nutrition')
  })

  test('names no address while the cookbook has none', () => {
    const without = sampleSite()
    expect(recipeData(without, computedOf(without, 'barley-pot'))).not.toHaveProperty('url')
  })

  test('makes no pair of times out of one', () => {
    const dish = recipe('dish', {
      totalMinutes: at(30),
      groups: [{lines: [line('carrot', weight(9))]}],
    })
    const {site, computed} = siteWith(dish)
    const data = recipeData(site, computed)
    expect(data).toMatchObject({totalTime: 'PT30M'})
    expect(data).not.toHaveProperty('prepTime')
    expect(data).not.toHaveProperty('cookTime')
  })
})

describe('a block of JSON', () => {
  test('cannot be ended by what is in it', () => {
    expect(scriptText({title: '</script><script>alert(1)</script><!--'})).not.toContain('<')
  })

  test('says what it was given', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = scriptText(value)
        expect(text).not.toContain('<')
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)))
      }),
    )
  })
})
