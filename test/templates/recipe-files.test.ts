import {expect, test} from 'vitest'
import {csvText, jsonLdText} from '../../templates/recipe-files.ts'
import {at, computedOf, recipe, sampleSite, siteWith} from './sample.ts'

const site = sampleSite()

test('the table of a recipe has its lines, the batch and the serving', () => {
  const rows = csvText(site, computedOf(site, 'barley-pot')).split('\r\n')
  expect(rows[0]).toBe('Ingredient,Grams,energy (kcal),protein (g),carbohydrate (g),fat (g)')
  // By hand: 600 g chicken × 121 kcal, 19.7 g, 0 g, 4.1 g per 100 g. A name with a comma is quoted.
  expect(rows[1]).toBe('"chicken thigh, skinless",600.0,726.00,118.20,0.00,24.60')
  // What is optional or not counted adds nothing to the batch, and so has no figures.
  expect(rows[5]).toBe('parsley,10.0,,,,')
  expect(rows.at(-3)).toMatch(/^Whole batch,1480\.0,/)
  expect(rows.at(-2)).toMatch(/^One serving,370\.0,/)
  expect(rows.at(-1)).toBe('')
})

test('a spreadsheet runs nothing that a writer wrote, and quotes stay in their cell', () => {
  const {site: odd, computed} = siteWith(recipe('odd', {serves: at(1)}))
  const [first] = computedOf(site, 'barley-pot').lines
  if (!first) throw new Error('the sample has no lines')
  const written = {...first, line: {...first.line, name: at('=HYPERLINK("https://x.example")')}}
  const [, row] = csvText(odd, {...computed, lines: [written]}).split('\r\n')
  expect(row).toMatch(/^"'=HYPERLINK\(""https:\/\/x\.example""\)",/)
})

test('the file for machines is the block of the page', () => {
  const data = JSON.parse(jsonLdText(site, computedOf(site, 'barley-pot')))
  expect(data).toMatchObject({'@type': 'Recipe', name: 'Barley pot with lemon chicken'})
})
