import {describe, expect, test} from 'vitest'
import {renderSite} from '../../src/site/render-site.ts'
import {siteInput} from '../templates/sample.ts'

const address = 'https://boathouse.example/kitchen/'

function paths(...input: Parameters<typeof siteInput>): readonly string[] {
  return renderSite(siteInput(...input)).map(({path}) => path)
}

describe('a site', () => {
  test('has every page, in path order', () => {
    expect(paths()).toEqual([
      '404.html',
      'assets/mark.svg',
      'assets/site.css',
      'cards/index.html',
      'cards/sheets/index.html',
      'cookbook/heads.css',
      'cookbook/index.html',
      'figures/index.html',
      'foods/index.html',
      'index.html',
      'pages/about/index.html',
      'plans/sunday/index.html',
      'recipes/barley-pot/caption.txt',
      'recipes/barley-pot/card/index.html',
      'recipes/barley-pot/index.html',
      'recipes/barley-pot/recipe.csv',
      'recipes/barley-pot/recipe.jsonld',
      'recipes/brown-stock/caption.txt',
      'recipes/brown-stock/card/index.html',
      'recipes/brown-stock/index.html',
      'recipes/brown-stock/recipe.csv',
      'recipes/brown-stock/recipe.jsonld',
      'recipes/classic-pot/caption.txt',
      'recipes/classic-pot/card/index.html',
      'recipes/classic-pot/index.html',
      'recipes/classic-pot/recipe.csv',
      'recipes/classic-pot/recipe.jsonld',
      'rules/index.html',
      'shopping/index.html',
      'style/index.html',
    ])
  })

  test('has a feed, a site map and pictures for links once its address is known', () => {
    const more = paths({address}).filter((path) => !paths().includes(path))
    expect(more).toEqual([
      'feed.xml',
      'recipes/barley-pot/share.png',
      'recipes/brown-stock/share.png',
      'recipes/classic-pot/share.png',
      'sitemap.xml',
    ])
  })

  test('is the same to the byte when it is rendered again', () => {
    expect(renderSite(siteInput({address}))).toEqual(renderSite(siteInput({address})))
  })

  test('does not depend on the order the recipes were computed in', () => {
    const input = siteInput({address})
    const reversed = new Map([...input.computed].reverse())
    expect(renderSite({...input, computed: reversed})).toEqual(renderSite(input))
  })

  test('carries the pictures as they are', () => {
    const bytes = new Uint8Array([1, 2, 3])
    const files = renderSite({...siteInput(), images: [{path: 'rack/pot.jpg', bytes}]})
    expect(files).toContainEqual({path: 'images/rack/pot.jpg', content: bytes})
  })
})

describe('the feed', () => {
  const feed = renderSite(siteInput({address})).find(({path}) => path === 'feed.xml')?.content

  test('has an entry for each recipe with its figures', () => {
    const text = String(feed)
    expect(text.match(/<item>/g)).toHaveLength(3)
    expect(text).toContain('<link>https://boathouse.example/kitchen/recipes/barley-pot/</link>')
    expect(text).toContain('One pot, four bowls, warm hands. energy 395 kcal, protein 35 g')
  })
})

test('the site map names pages by their address, and not the one for lost addresses', () => {
  const map = renderSite(siteInput({address})).find(({path}) => path === 'sitemap.xml')?.content
  expect(String(map)).toContain('<loc>https://boathouse.example/kitchen/</loc>')
  expect(String(map)).toContain('<loc>https://boathouse.example/kitchen/plans/sunday/</loc>')
  expect(String(map)).not.toContain('404')
})
