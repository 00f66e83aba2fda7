import type {Browser, Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {previewScriptPath, previewStylesheetPath} from '../../src/preview/addresses.ts'
import {type PreviewServer, startPreview} from '../../src/preview/preview-server.ts'
import {type PreviewSite, previewSite} from '../../src/preview/preview-site.ts'
import {readAsset, readAssets} from '../../src/site/read-assets.ts'
import {kitchen, porridge} from '../preview/kitchen.ts'
import {openBrowser} from './browser.ts'

let browser: Browser
let server: PreviewServer
let show: (text: string, generation: string) => PreviewSite

beforeAll(async () => {
  const site = await readAssets()
  const own = [
    {path: previewScriptPath, content: await readAsset('preview.js')},
    {path: previewStylesheetPath, content: await readAsset('preview.css')},
  ]
  show = (text, generation) => previewSite(kitchen({porridge: text}), {site, own}, {generation})
  const listening = {host: '127.0.0.1', port: 0, addresses: ['127.0.0.1']}
  server = await startPreview(show(porridge, 'one'), listening)
  browser = await openBrowser()
})

afterAll(async () => {
  await browser?.close()
  await server?.close()
})

const drifted = porridge.replace('190 kcal', '290 kcal')

async function opened(page: Page, path: string): Promise<readonly string[]> {
  const noise: string[] = []
  page.on('console', (message) => noise.push(message.text()))
  page.on('pageerror', (error) => noise.push(error.message))
  await page.goto(`http://127.0.0.1:${server.port}/${path}`)
  return noise
}

async function newPage(): Promise<Page> {
  return browser.newPage({viewport: {width: 800, height: 400}})
}

describe('a save that breaks a figure', () => {
  test('shows on the open page at the figure, and the page keeps its place', async () => {
    server.show(show(porridge, 'one'))
    const page = await newPage()
    const noise = await opened(page, 'recipes/porridge/')
    expect(await page.locator('.finding').count()).toBe(0)
    await page.locator('#part-method').evaluate((part) => part.scrollIntoView())
    await page.evaluate(() => scrollBy(0, -20))
    const topOfMethod = () =>
      page.locator('#part-method').evaluate((part) => part.getBoundingClientRect().top)
    const before = await topOfMethod()
    expect(before).toBeLessThan(100)
    server.show(show(drifted, 'two'))
    const mark = page.locator('table.stated tr:has-text("Energy") .finding')
    await mark.waitFor()
    expect(await mark.textContent()).toMatch(/^error: Stated energy `290 kcal`/u)
    await page.waitForLoadState()
    expect(await topOfMethod()).toBeCloseTo(before, 0)
    expect(noise).toEqual([])
    await page.close()
  })

  test('leaves what was typed, and what follows from it', async () => {
    server.show(show(porridge, 'one'))
    const page = await newPage()
    await opened(page, 'index.html')
    await page.locator('#find-words').fill('nothing of the kind')
    const status = await page.locator('#find-status').textContent()
    server.show(show(drifted, 'two'))
    await page.locator('.findings .found-error').waitFor({state: 'attached'})
    expect(await page.locator('#find-words').inputValue()).toBe('nothing of the kind')
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('find-words')
    expect(status).not.toBe('')
    expect(await page.locator('#find-status').textContent()).toBe(status)
    await page.close()
  })

  test('before the page began to listen reloads it too', async () => {
    server.show(show(porridge, 'three'))
    const page = await newPage()
    await page.route('**/.preview/events', async (route) => {
      server.show(show(drifted, 'four'))
      await route.continue()
    })
    await opened(page, 'recipes/porridge/')
    await page.locator('table.stated .finding').waitFor()
    await page.close()
  })
})
