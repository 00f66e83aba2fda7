import {readFile} from 'node:fs/promises'
import {createRequire} from 'node:module'
import type {Browser, Page} from 'playwright-core'
import {afterAll, afterEach, beforeAll, beforeEach, describe, expect, test} from 'vitest'
import {partOfSlug} from '../../src/shopping/shopping-parts.ts'
import {htmlText} from '../../src/site/html.ts'
import {readAssets} from '../../src/site/read-assets.ts'
import {renderSite, siteOf} from '../../src/site/render-site.ts'
import type {SiteFile} from '../../src/site/site-file.ts'
import {recipeIndex} from '../../templates/index.tsx'
import {shoppingFiles, shoppingPage} from '../../templates/shopping.tsx'
import {crookedTitle, manyRecipes} from '../templates/many.ts'
import {siteInput} from '../templates/sample.ts'
import {openBrowser, type SiteOnDisk, siteOnDisk, siteOnWeb} from './browser.ts'

/** A cookbook that no page holds whole: what is looked for is fetched when it is looked for. */

let browser: Browser
let files: readonly SiteFile[]

/** Of 500 dishes, the sample's and a crooked one; pages of recipes are left out. */
const input = manyRecipes(500, 250)
const partsOfShopping = 32

beforeAll(async () => {
  browser = await openBrowser()
  const site = siteOf(input)
  const index = recipeIndex(site)
  const pages = [...index.pages.map(({page}) => page()), shoppingPage(site)]
  const own = [
    ...pages.map(({path, tree}) => ({path, content: htmlText(tree)})),
    ...index.files.map(({path, make}) => ({path, content: make()})),
    ...shoppingFiles(site),
  ]
  const paths = new Set(own.map(({path}) => path))
  const small = renderSite({...siteInput(), assets: await readAssets()})
  files = [...own, ...small.filter(({path}) => !paths.has(path))]
})

afterAll(() => browser?.close())

let site: SiteOnDisk
let page: Page
let fetched: string[]

beforeEach(async () => {
  site = await siteOnWeb(files)
  const context = await browser.newContext({serviceWorkers: 'block'})
  page = await context.newPage()
  fetched = []
  page.on('request', (request) => fetched.push(new URL(request.url()).pathname.slice(1)))
})

afterEach(async () => {
  await page.context().close()
  await site.remove()
})

async function titles(): Promise<readonly string[]> {
  return page.$$eval('#recipe-table tbody th', (heads) => heads.map(({textContent}) => textContent))
}

describe('the table of many recipes', () => {
  const status = () => page.locator('#find-status')

  test('fetches what is searched when somebody turns to it, and not before', async () => {
    await page.goto(site.url('index.html'))
    expect(await titles()).toHaveLength(200)
    expect(fetched).not.toContain('dishes/finding.js')
    await page.getByLabel('Name, tag or ingredient').focus()
    await status().getByText('200 shown').waitFor()
    expect(await status().textContent()).toBe('503 of 503 found, the first 200 shown')
    expect(fetched.filter((path) => path === 'dishes/finding.js')).toHaveLength(1)
  })

  test('finds in every part, and links to what it finds', async () => {
    await page.goto(site.url('index.html'))
    await page.getByLabel('Name, tag or ingredient').fill('pot 499')
    await status().getByText('1 of 503 shown').waitFor()
    expect(await titles()).toEqual(['Pot 499'])
    const row = page.locator('#recipe-table tbody tr')
    // As in its part: the classic pot of the sample.
    expect(await row.locator('td').allTextContents()).toEqual([
      ...['465', '35', '39', '19', '7.4', '', '', 'at least 0.12'],
    ])
    expect(await row.locator('a').getAttribute('href')).toBe('recipes/dish-499/index.html')
    expect(await page.locator('#recipe-parts').isVisible()).toBe(false)
  })

  test('shows more of what it found at the press of a button', async () => {
    await page.goto(`${site.url('index.html')}#down=title`)
    await status().getByText('200 shown').waitFor()
    const more = page.getByRole('button', {name: 'Show more'})
    await more.click()
    expect(await titles()).toHaveLength(400)
    await more.click()
    const all = await titles()
    expect(all).toHaveLength(503)
    expect([all[0], all.at(-1)]).toEqual(['Pot 99', 'Barley pot with lemon chicken'])
    expect(await more.isVisible()).toBe(false)
  })

  test('shows a title as it is written, whatever signs are in it', async () => {
    await page.goto(`${site.url('index.html')}#find=cook+script`)
    await status().getByText('1 of 503 shown').waitFor()
    expect(await titles()).toEqual([crookedTitle])
  })

  test('says so when what is searched cannot be fetched, and tries again', async () => {
    await page.goto(site.url('index.html'))
    await page.route('**/finding.js', (route) => route.abort())
    const words = page.getByLabel('Name, tag or ingredient')
    await words.fill('pot 499')
    await status().getByText('cannot be fetched').waitFor()
    expect(await titles()).toHaveLength(200)
    await page.unroute('**/finding.js')
    await words.fill('pot 498')
    await status().getByText('1 of 503 shown').waitFor()
    expect(await titles()).toEqual(['Pot 498'])
  })

  test('works from a disk, where nothing but scripts may be loaded', async () => {
    const disk = await siteOnDisk(files)
    await page.goto(`${disk.url('index.html')}#find=pot+321`)
    await status().getByText('1 of 503 shown').waitFor()
    expect(await titles()).toEqual(['Pot 321'])
    await disk.remove()
  })

  test('is walked through without a script, part by part', async () => {
    const context = await browser.newContext({javaScriptEnabled: false})
    const plain = await context.newPage()
    await plain.goto(site.url('index.html'))
    const seen = new Set<string>()
    for (const part of [0, 1, 2]) {
      const links = plain.getByRole('navigation', {name: 'All recipes by name'}).getByRole('link')
      await links.nth(part).click()
      const heads = await plain.locator('#recipe-table tbody th').allTextContents()
      for (const title of heads) seen.add(title)
    }
    expect(seen.size).toBe(503)
    await context.close()
  })
})

describe('the shopping list over many recipes', () => {
  const status = () => page.locator('#list-status')
  const find = () => page.getByLabel('Find a recipe')
  const list = () =>
    page.$$eval('#list li', (items) =>
      items.map((item) => item.textContent.replaceAll(/\s+/g, ' ').trim()),
    )
  const parts = () => fetched.filter((path) => path.startsWith('shopping/parts/'))

  test('fetches the names when one is looked for, and only the part of what is chosen', async () => {
    await page.goto(site.url('shopping/index.html'))
    expect(fetched.filter((path) => path.startsWith('shopping/'))).toEqual(['shopping/index.html'])
    await find().fill('pot 321')
    const field = page.getByLabel('Pot 321', {exact: true})
    await field.waitFor()
    expect(parts()).toEqual([])
    await field.fill('8')
    await status().getByText('3 to buy').waitFor()
    // By hand: 8 of 4 servings are two batches of 600 g chicken, 200 g barley, 60 g butter.
    expect(await list()).toEqual([
      '120 g butter 1 × 250 g; 130 g left over',
      '1.2 kg chicken thigh, skinless',
      '400 g pearl barley 1 × 500 g; 100 g left over; 1.20 EUR',
    ])
    expect(parts()).toEqual([`shopping/parts/${partOfSlug('dish-321', partsOfShopping)}.js`])
  })

  test('keeps what is chosen in sight while something else is looked for', async () => {
    await page.goto(site.url('shopping/index.html'))
    await find().fill('pot 321')
    await page.getByLabel('Pot 321', {exact: true}).fill('4')
    await find().fill('stock 17')
    await page.getByLabel('Stock 17, batches', {exact: true}).fill('1')
    await find().fill('no such thing')
    await page.locator('#choose-status').getByText('No recipe is called so.').waitFor()
    expect(await page.locator('.choose label').allTextContents()).toEqual([
      'Pot 321',
      'Stock 17, batches',
    ])
    await status().getByText('4 to buy').waitFor()
  })

  test('goes on taking a number while the part is fetched', async () => {
    await page.route('**/parts/*.js', async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 300))
      await route.continue()
    })
    await page.goto(site.url('shopping/index.html'))
    await find().fill('pot 321')
    await page.getByLabel('Pot 321', {exact: true}).focus()
    await page.keyboard.press('Control+A')
    await page.keyboard.type('1')
    await status().getByText('to buy').waitFor()
    await page.keyboard.type('2')
    // 12 of 4 servings: three batches.
    await page.locator('#list').getByText('600 g', {exact: true}).waitFor()
    expect(await list()).toContain('600 g pearl barley 2 × 500 g; 400 g left over; 2.40 EUR')
  })

  test('is asked for by its address, and leaves out what the cookbook has no more', async () => {
    await page.goto(`${site.url('shopping/index.html')}#dish-7=4&gone=2&stock-3=2`)
    await status().getByText('4 to buy').waitFor()
    expect(await page.locator('.choose label').allTextContents()).toEqual([
      'Pot 7',
      'Stock 3, batches',
    ])
  })

  test('equals the list of the plan', async () => {
    await page.goto(site.url('shopping/index.html'))
    await page.getByRole('button', {name: 'Sunday batch'}).click()
    await status().getByText('to buy').waitFor()
    const chosen = await list()
    await page.goto(site.url('plans/sunday/index.html'))
    const planned = await page.$$eval('.shopping li', (items) =>
      items.map((item) => item.textContent.replaceAll(/\s+/g, ' ').trim()),
    )
    expect(chosen).toEqual(planned)
  })

  test('names what it cannot fetch, and fetches it when something changes', async () => {
    await page.route('**/parts/*.js', (route) => route.abort())
    await page.goto(`${site.url('shopping/index.html')}#dish-7=4`)
    await status().getByText('Not on the list, as it cannot be fetched: dish-7.').waitFor()
    await page.unroute('**/parts/*.js')
    await page.getByLabel('Something else to buy').fill('candles')
    await page.keyboard.press('Enter')
    await status().getByText('4 to buy').waitFor()
  })

  test('is accessible with something found and chosen, by axe-core', async () => {
    const axe = await readFile(
      createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
      'utf8',
    )
    const context = await browser.newContext({bypassCSP: true, serviceWorkers: 'block'})
    for (const [address, ready] of [
      ['shopping/index.html#dish-7=4', '3 to buy'],
      ['index.html#find=pot&up=energy', '503 of 503 found'],
    ] as const) {
      const checked = await context.newPage()
      await checked.goto(site.url(address))
      await checked.getByText(ready).waitFor()
      await checked.evaluate(axe)
      const {violations} = await checked.evaluate(() =>
        Reflect.get(globalThis, 'axe').run(document),
      )
      expect(violations.map(({id}: {id: string}) => id)).toEqual([])
    }
    await context.close()
  })
})

test('what was chosen once is there without a network', async () => {
  const context = await browser.newContext()
  const first = await context.newPage()
  await first.goto(site.url('shopping/'))
  await first.locator('#offline').waitFor()
  await first.reload()
  await first.getByLabel('Find a recipe').fill('pot 321')
  await first.getByLabel('Pot 321', {exact: true}).fill('4')
  await first.getByText('3 to buy').waitFor()
  await site.remove()
  await first.reload()
  await first.getByText('3 to buy').waitFor()
  await first.getByLabel('Pot 321', {exact: true}).fill('8')
  await first.getByText('400 g', {exact: true}).waitFor()
  await context.close()
})
