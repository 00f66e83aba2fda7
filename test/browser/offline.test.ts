import type {Browser} from 'playwright-core'
import {afterAll, beforeAll, beforeEach, expect, test} from 'vitest'
import {readAssets} from '../../src/site/read-assets.ts'
import {renderSite} from '../../src/site/render-site.ts'
import {siteInput} from '../templates/sample.ts'
import {openBrowser, type SiteOnDisk, siteOnWeb} from './browser.ts'

/** A worker may use a network that a tab may not: each test takes its server away. */

let browser: Browser
let site: SiteOnDisk

beforeAll(async () => {
  browser = await openBrowser()
})

beforeEach(async () => {
  site = await siteOnWeb(renderSite({...siteInput(), assets: await readAssets()}))
})

afterAll(() => browser?.close())

test('after one visit the list opens, sums and keeps its ticks without a network', async () => {
  const context = await browser.newContext()
  const page = await context.newPage()
  await page.goto(site.url('shopping/'))
  await page.locator('#offline').waitFor()
  await page.getByLabel('Classic barley pot').fill('4')
  await page.getByLabel('At home: butter').check()
  await site.remove()
  await page.reload()
  expect(await page.getByLabel('At home: butter').isChecked()).toBe(true)
  await page.getByLabel('Classic barley pot').fill('8')
  const texts = await page.locator('#list li').allTextContents()
  expect(texts.map((text) => text.replaceAll(/\s+/g, ' ').trim())).toContain(
    '400 g pearl barley 1 × 500 g; 100 g left over; 1.20 EUR',
  )
  // With its style sheet: the ledger sets its rows in columns.
  const display = await page
    .locator('#list li')
    .first()
    .evaluate((item) => getComputedStyle(item).display)
  expect(display).toBe('grid')
  await page.goto(site.url(''))
  expect(await page.locator('#recipe-table').isVisible()).toBe(true)
  await context.close()
})

test('a recipe that was read once opens without a network, and no other does', async () => {
  const context = await browser.newContext()
  const page = await context.newPage()
  await page.goto(site.url('shopping/'))
  await page.locator('#offline').waitFor()
  await page.goto(site.url('recipes/barley-pot/'))
  await site.remove()
  await page.reload()
  expect(await page.getByRole('heading', {level: 1}).textContent()).toBe(
    'Barley pot with lemon chicken',
  )
  await expect(page.goto(site.url('recipes/classic-pot/'))).rejects.toThrow('ERR_FAILED')
  await context.close()
})

test('what changed on the server is seen as soon as there is a network', async () => {
  const before = renderSite({...siteInput(), assets: await readAssets()})
  const after = renderSite({...siteInput({title: 'Renamed'}), assets: await readAssets()})
  const files = [...before]
  await site.remove()
  const changing = await siteOnWeb(files)
  const context = await browser.newContext()
  const page = await context.newPage()
  await page.goto(changing.url('shopping/'))
  await page.locator('#offline').waitFor()
  files.splice(0, files.length, ...after)
  await page.reload()
  expect(await page.title()).toContain('Renamed')
  await context.close()
  await changing.remove()
})
