import {h} from 'hastscript'
import {expect, test} from 'vitest'
import {cookbookPage} from '../../templates/cookbook.tsx'
import {recipePage} from '../../templates/recipe.tsx'
import {at, computedOf, method, recipe, sampleSite} from './sample.ts'
import {byTag, textOf} from './tree.ts'

const body = h(null, [
  h('p', [
    'Serve the ',
    h('span', {class: 'amount', dataAnchor: 'leek', dataGrams: '300'}, '300 g'),
    ' beside ',
    h('a', {href: 'soup.md'}, ['the soup']),
    '.',
  ]),
])
const dish = recipe('dish', {
  serves: at(2),
  method: {...method('Serve the 300 g beside the soup.'), body},
})
const soup = recipe('soup', {serves: at(2), title: at('Soup')})
const site = sampleSite({}, {recipes: new Map([dish, soup].map((one) => [one.slug, one]))})

test('a page changes nothing in the text of the recipe that others show as well', () => {
  const before = JSON.stringify(body)
  expect(JSON.stringify(recipePage(site, computedOf(site, 'dish')).tree)).toContain('300 g')
  cookbookPage(site, {pageOf: () => '12', isClose: () => false})
  expect(JSON.stringify(body)).toBe(before)
})

test('a book that is printed again names the pages of the last print alone', () => {
  const [first, last] = ['00', '12'].map((page) => {
    const {tree} = cookbookPage(site, {pageOf: () => page, isClose: () => false})
    return byTag(tree, 'a').map(textOf)
  })
  expect(first).toContain('the soup (page 00)')
  expect(last).toContain('the soup (page 12)')
})
