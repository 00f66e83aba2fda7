import type {Browser, Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {readAssets} from '../../src/site/read-assets.ts'
import {renderSite} from '../../src/site/render-site.ts'
import {siteInput} from '../templates/sample.ts'
import {addressOf, openBrowser, type SiteOnDisk, siteOnDisk} from './browser.ts'

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
    expect(lines).toContain('370 g pearl barley 1 × 500 g; 130 g left over; 1.20 EUR')
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
    const [address, before] = [await addressOf(page), await chosenList(page)]
    const again = await browser.newPage()
    await again.goto(address)
    expect(await chosenList(again)).toEqual(before)
    expect(before).toContain('200 g pearl barley 1 × 500 g; 300 g left over; 1.20 EUR')
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

  test('costs what the packs cost, and at least that where not every food has a price', async () => {
    const page = await browser.newPage()
    await page.goto(`${site.url('shopping/index.html')}#classic-pot=12`)
    // 600 g barley: two packs of 500 g at 1.20; chicken and butter have no price.
    const cost = page.locator('#list-cost')
    expect(await cost.textContent()).toBe(
      'The packs cost at least 2.40 EUR: not every food has a price.',
    )
    await page.getByLabel('At home: pearl barley').check()
    expect(await cost.textContent()).toBe('')
    await page.close()
  })

  test('remembers what is at home, and is empty of it after starting again', async () => {
    const context = await browser.newContext()
    const page = await context.newPage()
    await page.goto(`${site.url('shopping/index.html')}#classic-pot=4`)
    expect(await page.locator('#list-status').textContent()).toBe('3 to buy')
    await page.getByLabel('At home: butter').check()
    expect(await page.locator('#list-status').textContent()).toBe('2 to buy')
    await page.reload()
    expect(await page.getByLabel('At home: butter').isChecked()).toBe(true)
    await page.getByLabel('Classic barley pot').fill('6')
    expect(await page.getByLabel('At home: butter').isChecked()).toBe(true)
    await page.getByRole('button', {name: 'Start again'}).click()
    await page.getByLabel('Classic barley pot').fill('6')
    expect(await page.getByLabel('At home: butter').isChecked()).toBe(false)
    await context.close()
  })

  test('is the last one when the page is opened from a link within the site', async () => {
    const context = await browser.newContext()
    const page = await context.newPage()
    await page.goto(`${site.url('shopping/index.html')}#classic-pot=4&%2B=candles`)
    const before = await chosenList(page)
    await page.goto(site.url('index.html'))
    await page.getByRole('link', {name: 'Shopping list'}).click()
    expect(await chosenList(page)).toEqual(before)
    await context.close()
  })

  test('takes what is added by hand, with the keyboard alone, and hands it on', async () => {
    const page = await browser.newPage()
    await page.goto(site.url('shopping/index.html'))
    await page.getByLabel('Something else to buy').focus()
    await page.keyboard.type('kitchen roll & <b>foil</b>')
    await page.keyboard.press('Enter')
    await page.keyboard.type('candles')
    await page.keyboard.press('Enter')
    const own = ['kitchen roll & <b>foil</b> ×', 'candles ×']
    expect(await chosenList(page)).toEqual(own)
    const again = await browser.newPage()
    await again.goto(await addressOf(page))
    expect(await chosenList(again)).toEqual(own)
    await again.getByRole('button', {name: 'Take candles off the list'}).click()
    expect(await chosenList(again)).toEqual(own.slice(0, 1))
    await page.close()
    await again.close()
  })

  test('is copied as text, without what is at home', async () => {
    const page = await browser.newPage()
    await page.goto(`${site.url('shopping/index.html')}#classic-pot=4&%2B=candles`)
    await page.getByLabel('At home: butter').check()
    await page.getByRole('button', {name: 'Copy the list'}).click()
    const text = page.locator('.to-copy')
    // A page from a disk may not write to the clipboard: the text is there to be marked.
    await text
      .or(page.locator('#share-status', {hasText: 'Copied'}))
      .first()
      .waitFor()
    expect(await text.evaluate((area) => area.previousElementSibling?.textContent)).toBe(
      'Mark the text below and copy it.',
    )
    expect((await text.inputValue()).split('\n')).toEqual([
      'Poultry',
      '- 600 g chicken thigh, skinless',
      '',
      'Grains and pasta',
      '- 200 g pearl barley (1 × 500 g; 300 g left over; 1.20 EUR)',
      '',
      'Added by hand',
      '- candles',
    ])
    await page.close()
  })

  test('is reached from a plan, ready to be ticked off', async () => {
    const page = await browser.newPage()
    await page.goto(site.url('plans/sunday/index.html'))
    await page.getByRole('link', {name: 'Tick off and add to this list'}).click()
    expect(await page.getByLabel('Barley pot with lemon chicken').inputValue()).toBe('6')
    expect((await chosenList(page)).length).toBeGreaterThan(7)
    await page.close()
  })

  test('prints without the fields it was chosen by', async () => {
    const page = await browser.newPage()
    await page.goto(`${site.url('shopping/index.html')}#classic-pot=4`)
    await page.emulateMedia({media: 'print'})
    expect(await page.locator('#list').isVisible()).toBe(true)
    for (const gone of ['.choose', '#own', '#share', '[aria-labelledby="part-plans"]']) {
      expect([gone, await page.locator(gone).isVisible()]).toEqual([gone, false])
    }
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
