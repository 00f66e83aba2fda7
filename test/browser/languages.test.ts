import type {Browser, Page} from 'playwright-core'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {readAssets} from '../../src/site/read-assets.ts'
import {renderSite} from '../../src/site/render-site.ts'
import {siteInput} from '../templates/sample.ts'
import {openBrowser, type SiteOnDisk, siteOnDisk} from './browser.ts'

let browser: Browser
let german: SiteOnDisk
let hebrew: SiteOnDisk

beforeAll(async () => {
  const assets = await readAssets()
  german = await siteOnDisk(renderSite({...siteInput({language: 'de'}), assets}))
  hebrew = await siteOnDisk(renderSite({...siteInput({language: 'he'}), assets}))
  browser = await openBrowser()
})

afterAll(async () => {
  await browser?.close()
  await german?.remove()
  await hebrew?.remove()
})

test('scripts speak German too, with its commas', async () => {
  const page = await browser.newPage()
  await page.goto(german.url('recipes/barley-pot/index.html'))
  await page.getByLabel('Portionen').fill('6')
  // 3 g flour and 30 g paste for four, half as much again; the batch weighs 2220 g.
  const weights = await page.locator('.ledger .weight').allTextContents()
  expect(weights).toEqual(['900 g', '270 g', '87 g', '1350 g', '15 g', '45 g', '4,5 g'])
  expect(await page.locator('#cooking-status').textContent()).toContain('Jede Menge × 1,5;')
  await page.getByLabel('Stattdessen butter nehmen').check()
  expect(await page.locator('#chosen').textContent()).toContain('mit butter statt pepper paste')
  const fat = await page.locator('.figures [data-nutrient="fat"] td').first().textContent()
  // By hand: chicken 24.6, barley 2.16, lemon 0.09, stock 0.9, butter 16.22 g: 43.97 ÷ 4.
  expect(fat).toMatch(/^11,0 g ± 0,\d$/)
  await page.goto(`${german.url('shopping/index.html')}#barley-pot=10`)
  const list = await page.locator('#list li').allTextContents()
  expect(list.map((text) => text.replaceAll(/\s+/g, ' ').trim())).toContain(
    '450 g pearl barley 1 × 500 g; 50 g bleiben übrig; 1,20 EUR',
  )
  await page.close()
})

const pages = ['index', 'recipes/barley-pot/index', 'shopping/index', 'plans/sunday/index']
const more = ['figures/index', 'foods/index', 'cards/index', 'style/index', 'rules/index']

/** How much wider than its window each page is, of those that are. */
async function tooWide(site: SiteOnDisk, page: Page): Promise<readonly string[]> {
  const found: string[] = []
  for (const path of [...pages, ...more]) {
    await page.goto(site.url(`${path}.html`))
    const over = await page.evaluate(() => {
      const {scrollWidth, clientWidth} = document.documentElement
      return scrollWidth - clientWidth
    })
    if (over > 0) found.push(`${path}: ${over} px`)
  }
  return found
}

test('German words are longer, and fit a phone', async () => {
  const page = await browser.newPage({viewport: {width: 390, height: 800}})
  expect(await tooWide(german, page)).toEqual([])
  expect(await page.locator('html').getAttribute('lang')).toBe('de')
  await page.close()
})

test('pages that run from right to left keep their width, and turn their ledger round', async () => {
  const page = await browser.newPage({viewport: {width: 320, height: 800}})
  expect(await tooWide(hebrew, page)).toEqual([])
  expect(await page.locator('html').getAttribute('dir')).toBe('rtl')
  await page.goto(hebrew.url('recipes/barley-pot/index.html'))
  const [weight, what] = await Promise.all(
    ['.ledger .weight', '.ledger .what'].map((place) => page.locator(place).first().boundingBox()),
  )
  expect(weight?.x).toBeGreaterThan(what?.x ?? 0)
  await page.close()
})
