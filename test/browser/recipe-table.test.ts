import {readFile} from 'node:fs/promises'
import {createRequire} from 'node:module'
import type {Browser, Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {build} from '../../src/build.ts'
import {readFolder} from '../../src/cookbook/read-folder.ts'
import {readAssets} from '../../src/site/read-assets.ts'
import {renderSite} from '../../src/site/render-site.ts'
import {siteInput} from '../templates/sample.ts'
import {addressOf, openBrowser, type SiteOnDisk, siteOnDisk} from './browser.ts'

let browser: Browser
let site: SiteOnDisk
let demo: SiteOnDisk

beforeAll(async () => {
  const assets = await readAssets()
  site = await siteOnDisk(renderSite({...siteInput(), assets}))
  demo = await siteOnDisk(build(await readFolder('content'), assets).files)
  browser = await openBrowser()
})

afterAll(async () => {
  await browser?.close()
  await site?.remove()
  await demo?.remove()
})

async function names(page: Page): Promise<readonly string[]> {
  return page.$$eval('#recipe-table tbody tr:not([hidden]) th', (heads) =>
    heads.map(({textContent}) => textContent),
  )
}

describe('the table of recipes', () => {
  const pot = 'Barley pot with lemon chicken'
  const classic = 'Classic barley pot'

  test('is sorted by a figure with the keyboard, either way', async () => {
    const page = await browser.newPage()
    await page.goto(site.url('index.html'))
    const energy = page.getByRole('button', {name: /^Energy/})
    await energy.focus()
    await page.keyboard.press('Enter')
    expect(await names(page)).toEqual([pot, classic])
    await page.keyboard.press('Enter')
    expect(await names(page)).toEqual([classic, pot])
    const head = page.locator('#recipe-table th', {has: energy})
    expect(await head.getAttribute('aria-sort')).toBe('descending')
    await page.close()
  })

  test('puts what is not known last, either way', async () => {
    const page = await browser.newPage()
    await page.goto(site.url('index.html'))
    const time = page.getByRole('button', {name: 'Time'})
    await time.click()
    expect(await names(page)).toEqual([pot, classic])
    await time.click()
    expect(await names(page)).toEqual([pot, classic])
    await page.close()
  })

  test('is narrowed by words, tags and figures', async () => {
    const page = await browser.newPage()
    await page.goto(site.url('index.html'))
    const words = page.getByLabel('Name, tag or ingredient')
    await words.fill('CLÀSSIC')
    expect(await names(page)).toEqual([classic])
    await words.fill('batch cooking')
    expect(await names(page)).toEqual([pot])
    await words.fill('')
    await page.getByLabel('Energy at most').fill('400')
    expect(await names(page)).toEqual([pot])
    expect(await page.locator('#find-status').textContent()).toBe('1 of 2 shown')
    await page.getByLabel('Protein at least, g').fill('36')
    expect(await names(page)).toEqual([])
    await page.close()
  })

  test('is all there without a script', async () => {
    const context = await browser.newContext({javaScriptEnabled: false})
    const page = await context.newPage()
    await page.goto(site.url('index.html'))
    expect(await names(page)).toEqual([pot, classic])
    expect(await page.locator('#finder').isVisible()).toBe(false)
    await context.close()
  })
})

describe('the table of the demo', () => {
  test('is found through slips of the pen, by ingredient too', async () => {
    const page = await browser.newPage()
    await page.goto(demo.url('index.html'))
    const words = page.getByLabel('Name, tag or ingredient')
    await words.fill('chikpea')
    expect(await names(page)).toEqual(['Chickpea and spinach pot'])
    await words.fill('samlon rise')
    expect(await names(page)).toEqual(['Salmon and brown rice bowl'])
    await words.fill('walnu')
    expect(await names(page)).toContain('Banana loaf')
    await page.close()
  })

  test('leaves out, without milk, every dish that holds it or may', async () => {
    const page = await browser.newPage()
    await page.goto(demo.url('index.html'))
    const all = await names(page)
    await page.getByLabel('Without').selectOption('milk')
    const left = await names(page)
    expect(left.length).toBeGreaterThan(0)
    expect(await page.getByText('Left out are also recipes with traces').isVisible()).toBe(true)
    for (const name of all) {
      await page.goto(demo.url('index.html'))
      await page.getByRole('link', {name, exact: true}).click()
      const told = await page
        .locator('section[aria-labelledby="part-allergens"] > p')
        .allTextContents()
      const holds = told.some((line) => /^(Contains|In what|May contain|Outside).*milk/.test(line))
      const isOpen = told.some((line) => line.startsWith('Not stated'))
      expect([name, left.includes(name)]).toEqual([name, !holds && !isOpen])
    }
    await page.close()
  })

  test('is asked for by its address, and writes what is asked into it', async () => {
    const page = await browser.newPage()
    await page.goto(`${demo.url('index.html')}#energy=450&protein=25&diet=vegetarian&down=protein`)
    expect(await page.getByLabel('Energy at most, kcal').inputValue()).toBe('450')
    const proteins = await page.$$eval('#recipe-table tbody tr:not([hidden])', (rows) =>
      rows.map((row) => Number(row.querySelectorAll('td')[1]?.textContent)),
    )
    expect(proteins).toEqual(proteins.toSorted((left, right) => right - left))
    await page.getByLabel('Tag', {exact: true}).selectOption('soup')
    await page.getByLabel('Suits').selectOption('')
    await page.getByLabel('Protein at least, g').fill('')
    const [address, found] = [await addressOf(page), await names(page)]
    expect(address).toMatch(/#energy=450&tag=soup&down=protein$/)
    expect(found.length).toBeGreaterThan(0)
    const again = await browser.newPage()
    await again.goto(address)
    expect(await names(again)).toEqual(found)
    await again.getByRole('button', {name: 'Show all'}).click()
    expect(await names(again)).toHaveLength(20)
    expect(await addressOf(again)).toBe(demo.url('index.html'))
    await page.close()
    await again.close()
  })

  test('is not moved by an address of nonsense, nor by a place on the page', async () => {
    const page = await browser.newPage()
    await page.goto(`${demo.url('index.html')}#energy=lots&tag=no such&up=nothing&find=`)
    expect(await names(page)).toHaveLength(20)
    await page.getByLabel('Energy at most, kcal').fill('300')
    const found = await names(page)
    await page.evaluate(() => location.assign('#main'))
    expect(await names(page)).toEqual(found)
    await page.close()
  })

  test('is accessible while it is narrowed and sorted, by axe-core', async () => {
    const axe = await readFile(
      createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
      'utf8',
    )
    const context = await browser.newContext({bypassCSP: true, viewport: {width: 320, height: 700}})
    const page = await context.newPage()
    await page.goto(`${demo.url('index.html')}#without=milk&energy=450&down=protein`)
    await page.evaluate(axe)
    const {violations} = await page.evaluate(() => Reflect.get(globalThis, 'axe').run(document))
    expect(violations.map(({id}: {id: string}) => id)).toEqual([])
    await context.close()
  })
})
