import type {Browser, Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {readAssets} from '../../src/site/read-assets.ts'
import {renderSite} from '../../src/site/render-site.ts'
import {siteInput} from '../templates/sample.ts'
import {openBrowser, type SiteOnDisk, siteOnDisk} from './browser.ts'

let browser: Browser
let site: SiteOnDisk

beforeAll(async () => {
  site = await siteOnDisk(renderSite({...siteInput(), assets: await readAssets()}))
  browser = await openBrowser()
})

afterAll(async () => {
  await browser?.close()
  await site?.remove()
})

/** The chosen list, one line of text an entry. */
async function chosenList(page: Page): Promise<readonly string[]> {
  return page.$$eval('#list li', (items) =>
    items.map((item) => item.textContent.replaceAll(/\s+/g, ' ').trim()),
  )
}

describe('the shopping list', () => {
  test('is summed from the servings a reader types, with the keyboard alone', async () => {
    const page = await browser.newPage()
    await page.goto(site.url('shopping/index.html'))
    await page.getByLabel('Barley pot with lemon chicken').focus()
    await page.keyboard.press('Control+A')
    await page.keyboard.type('6')
    await page.getByLabel('Classic barley pot').focus()
    await page.keyboard.press('Control+A')
    await page.keyboard.type('2')
    // By hand: 6 of 4 servings are 1½ batches: 900 g chicken, 270 g barley, 1350 g of a stock that
    // takes 500 g prepared carrots a kilogram: 675 g, as bought 675 ÷ 0.89 = 758 g; half a classic
    // pot: 300 g chicken, 100 g barley, 30 g butter. Rounded up as a shopper asks for it.
    const lines = await chosenList(page)
    expect(lines).toContain('1.35 kg Brown stock 135 % of a batch')
    expect(lines).toContain('1.2 kg chicken thigh, skinless')
    expect(lines).toContain('370 g pearl barley 1 × 500 g; 130 g left over')
    expect(lines).toContain('760 g carrot')
    expect(lines).toContain('30 g butter 1 × 250 g; 220 g left over')
    await page.close()
  })

  test('starts from a plan at the press of a key, and then equals the list of the plan', async () => {
    const page = await browser.newPage()
    await page.goto(site.url('shopping/index.html'))
    await page.getByRole('button', {name: 'Sunday batch'}).focus()
    await page.keyboard.press('Enter')
    const chosen = await chosenList(page)
    await page.goto(site.url('plans/sunday/index.html'))
    const planned = await page.$$eval('.shopping li', (items) =>
      items.map((item) => item.textContent.replaceAll(/\s+/g, ' ').trim()),
    )
    expect(planned.length).toBeGreaterThan(7)
    expect(chosen).toEqual(planned)
    await page.close()
  })

  test('stays when its address is opened again', async () => {
    const page = await browser.newPage()
    await page.goto(site.url('shopping/index.html'))
    await page.getByLabel('Classic barley pot').fill('4')
    const [address, before] = [page.url(), await chosenList(page)]
    const again = await browser.newPage()
    await again.goto(address)
    expect(await chosenList(again)).toEqual(before)
    expect(before).toContain('200 g pearl barley 1 × 500 g; 300 g left over')
    await page.close()
    await again.close()
  })

  test('is empty again after starting again', async () => {
    const page = await browser.newPage()
    await page.goto(`${site.url('shopping/index.html')}#classic-pot=4`)
    expect(await chosenList(page)).not.toEqual([])
    await page.getByRole('button', {name: 'Start again'}).click()
    expect(await chosenList(page)).toEqual([])
    expect(await page.locator('#list-status').textContent()).toContain('Choose servings')
    await page.close()
  })

  test('of each plan is there without a script', async () => {
    const context = await browser.newContext({javaScriptEnabled: false})
    const page = await context.newPage()
    await page.goto(site.url('shopping/index.html'))
    expect(await page.locator('#chooser').isVisible()).toBe(false)
    expect(await page.getByText('760 g').isVisible()).toBe(true)
    await context.close()
  })
})
