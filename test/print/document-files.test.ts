import {visit} from 'unist-util-visit'
import {expect, test} from 'vitest'
import {documentFiles} from '../../src/print/document-files.ts'
import {readAssets} from '../../src/site/read-assets.ts'
import {siteOf} from '../../src/site/render-site.ts'
import {cardSheetsPage, cardsPage} from '../../templates/cards.tsx'
import {cookbookPage} from '../../templates/cookbook.tsx'
import {planPage} from '../../templates/plan.tsx'
import type {Page, Site} from '../../templates/site.ts'
import {siteInput} from '../templates/sample.ts'

const pages: readonly [string, (site: Site) => readonly Page[]][] = [
  ['the cookbook', (site) => [cookbookPage(site)]],
  ['the cards', (site) => [cardsPage(site)]],
  ['the sheets of cards', (site) => [cardSheetsPage(site)]],
  ['a plan', (site) => site.cookbook.plans.map((plan) => planPage(site, plan))],
]

/** Paths in the site of what a page loads; scripts are off when it is printed. */
function loaded({path, tree}: Page): readonly string[] {
  const addresses: string[] = []
  visit(tree, 'element', ({tagName, properties: {src, href, rel}}) => {
    const isSheet = tagName === 'link' && `${rel}`.includes('stylesheet')
    if (tagName === 'img') addresses.push(`${src}`)
    if (isSheet) addresses.push(`${href}`)
  })
  return addresses.map((address) =>
    decodeURIComponent(new URL(address, `https://site.invalid/${path}`).pathname.slice(1)),
  )
}

test.each(pages)('%s finds all it loads when it is printed', async (_, pagesOf) => {
  const input = {...siteInput(), assets: await readAssets()}
  const site = siteOf(input)
  const files = documentFiles(input, site).map(({path}) => path)
  const asked = pagesOf(site).flatMap(loaded)
  expect(asked.length).toBeGreaterThan(1)
  expect(files).toEqual(expect.arrayContaining(asked))
})
