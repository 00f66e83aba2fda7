import {expect, test} from 'vitest'
import {captionText} from '../../templates/caption.ts'
import {computedOf, sampleSite} from './sample.ts'

test('the text to copy has ingredients, figures, allergens and the link', () => {
  const site = sampleSite({address: 'https://boathouse.example/'})
  expect(captionText(site, computedOf(site, 'classic-pot'))).toBe(
    [
      'Classic barley pot',
      '4 servings',
      '',
      '600 g chicken thigh, skinless',
      '200 g pearl barley',
      '60 g butter',
      '',
      'One serving: energy 465 kcal, protein 35 g, carbohydrate 39 g, fat 19 g',
      'Contains: cereals containing gluten (barley), milk.',
      'Recipe: https://boathouse.example/recipes/classic-pot/',
      '',
    ].join('\n'),
  )
})

test('without an address there is no link, and what is optional says so', () => {
  const site = sampleSite()
  const text = captionText(site, computedOf(site, 'barley-pot'))
  expect(text).not.toContain('http')
  expect(text).toContain('10 g parsley, if wanted')
  expect(text).toContain('Not stated for: pepper paste.')
  expect(text).toContain('30 g (2 tbsp) pepper paste')
})
