import {describe, expect, test} from 'vitest'
import {absoluteHref, relativeHref} from '../../templates/addresses.ts'

describe('the way from a page to another', () => {
  test.each([
    ['index.html', 'recipes/stock/index.html', 'recipes/stock/index.html'],
    ['recipes/pot/index.html', 'index.html', '../../index.html'],
    ['recipes/pot/index.html', 'recipes/stock/index.html', '../stock/index.html'],
    ['recipes/pot/index.html', 'recipes/pot/card/index.html', 'card/index.html'],
    ['recipes/pot/card/index.html', 'recipes/pot/index.html', '../index.html'],
    ['recipes/pot/card/index.html', 'assets/site.css', '../../../assets/site.css'],
    ['recipes/pot/index.html', 'recipes/pot/index.html', 'index.html'],
    ['index.html', 'images/a b%.jpg', 'images/a%20b%25.jpg'],
  ])('%s to %s is %s', (from, to, href) => {
    expect(relativeHref(from, to)).toBe(href)
  })

  test('may end at a place on it', () => {
    expect(relativeHref('figures/index.html', 'rules/index.html', 'stated-macros')).toBe(
      '../rules/index.html#stated-macros',
    )
    expect(relativeHref('index.html', 'index.html', 'a')).toBe('#a')
  })

  test('is what a browser resolves', () => {
    const base = 'https://boathouse.example/kitchen/'
    const href = relativeHref('recipes/pot/card/index.html', 'plans/a week/index.html')
    expect(new URL(href, `${base}recipes/pot/card/index.html`).href).toBe(
      `${base}plans/a%20week/index.html`,
    )
  })
})

test('the address on the web leaves index.html out', () => {
  const address = 'https://boathouse.example/kitchen/'
  expect(absoluteHref(address, 'recipes/pot/index.html')).toBe(`${address}recipes/pot/`)
  expect(absoluteHref(address, 'index.html')).toBe(address)
  expect(absoluteHref(address, 'feed.xml')).toBe(`${address}feed.xml`)
})
