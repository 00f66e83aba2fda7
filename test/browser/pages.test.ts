import {readFile} from 'node:fs/promises'
import {createRequire} from 'node:module'
import type {Browser, Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {readAssets} from '../../src/site/read-assets.ts'
import {renderSite} from '../../src/site/render-site.ts'
import type {SiteFile} from '../../src/site/site-file.ts'
import {attack} from '../templates/attack.ts'
import {siteInput} from '../templates/sample.ts'
import {openBrowser, type SiteOnDisk, siteOnDisk} from './browser.ts'
import {views} from './views.ts'

/** WCAG 2.2 AA, and what axe-core counts as good practice. */
const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

let browser: Browser
let site: SiteOnDisk
let files: readonly SiteFile[]
let axe: string

beforeAll(async () => {
  const assets = await readAssets()
  const address = 'https://boathouse.example/kitchen/'
  files = renderSite({...siteInput({address, declare: 'us', netCarbohydrate: true}), assets})
  site = await siteOnDisk(files)
  browser = await openBrowser()
  axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
})

afterAll(async () => {
  await browser?.close()
  await site?.remove()
})

function pagePaths(): readonly string[] {
  return files.map(({path}) => path).filter((path) => path.endsWith('.html'))
}

/** Opens a page, and gathers whatever it complains of or asks the world for. */
async function opened(page: Page, path: string): Promise<readonly string[]> {
  const noise: string[] = []
  page.on('console', (message) => noise.push(`console: ${message.text()}`))
  page.on('pageerror', (error) => noise.push(`error: ${error.message}`))
  page.on('request', (request) => {
    if (!request.url().startsWith(site.url(''))) noise.push(`request: ${request.url()}`)
  })
  page.on('requestfailed', (request) => noise.push(`failed: ${request.url()}`))
  await page.goto(site.url(path))
  return noise
}

describe.each(views(800))('every page $name', ({colorScheme, media, width}) => {
  test('is accessible, by axe-core', async () => {
    const context = await browser.newContext({
      // The policy of the pages forbids a script from outside, and axe-core is one.
      bypassCSP: true,
      colorScheme,
      viewport: {width, height: 800},
    })
    const page = await context.newPage()
    const found: string[] = []
    for (const path of pagePaths()) {
      await page.emulateMedia({media, colorScheme})
      await page.goto(site.url(path))
      await page.evaluate(axe)
      const violations = await page.evaluate(
        (options) => Reflect.get(globalThis, 'axe').run(document, options),
        // Nobody taps paper.
        {runOnly: standards, rules: {'target-size': {enabled: media === 'screen'}}},
      )
      for (const {id, nodes} of violations.violations) {
        for (const {target} of nodes) found.push(`${path}: ${id} at ${target}`)
      }
    }
    await context.close()
    expect(found).toEqual([])
  })

  test('keeps within its width', async () => {
    const context = await browser.newContext({colorScheme, viewport: {width, height: 800}})
    const page = await context.newPage()
    const tooWide: string[] = []
    for (const path of pagePaths()) {
      await page.emulateMedia({media, colorScheme})
      await page.goto(site.url(path))
      const over = await page.evaluate(() => {
        const {scrollWidth, clientWidth} = document.documentElement
        return scrollWidth - clientWidth
      })
      if (over > 0) tooWide.push(`${path}: ${over} px`)
    }
    await context.close()
    expect(tooWide).toEqual([])
  })
})

test('no page says anything on the console or asks for anything from elsewhere', async () => {
  const page = await browser.newPage()
  const noise: string[] = []
  for (const path of pagePaths()) {
    page.removeAllListeners()
    noise.push(...(await opened(page, path)).map((line) => `${path}: ${line}`))
  }
  await page.close()
  expect(noise).toEqual([])
})

test('every link of every page leads to something that is there', async () => {
  const page = await browser.newPage()
  const broken: string[] = []
  const paths = new Set(files.map(({path}) => site.url(path)))
  for (const path of pagePaths()) {
    await page.goto(site.url(path))
    const hrefs = await page.$$eval('a[href]', (links) =>
      links.map((link) => (link instanceof HTMLAnchorElement ? link.href : '')),
    )
    for (const href of hrefs) {
      const {hash} = new URL(href)
      const file = hash === '' ? href : href.slice(0, -hash.length)
      const isOutside = !href.startsWith('file:')
      if (!isOutside && !paths.has(file)) broken.push(`${path}: ${href}`)
      if (file === site.url(path) && hash !== '') {
        const count = await page.locator(`[id="${decodeURIComponent(hash.slice(1))}"]`).count()
        if (count !== 1) broken.push(`${path}: ${hash} is there ${count} times`)
      }
    }
  }
  await page.close()
  expect(broken).toEqual([])
})

test('nothing a writer writes becomes an element or runs', async () => {
  const hostile = renderSite({...attack(), assets: await readAssets()})
  const attacked = await siteOnDisk(hostile)
  // Without the policy of the pages: escaping alone has to hold.
  const context = await browser.newContext({bypassCSP: true})
  const page = await context.newPage()
  const found: string[] = []
  page.on('dialog', (dialog) => {
    found.push(`dialog: ${dialog.message()}`)
    dialog.dismiss()
  })
  for (const {path} of hostile.filter(({path}) => path.endsWith('.html'))) {
    await page.goto(attacked.url(path))
    const strange = await page.$$eval(
      'script:not([src]):not([type^="application/"]), img[src="x"], [onerror]',
      (elements) => elements.map(({outerHTML}) => outerHTML),
    )
    found.push(...strange.map((html) => `${path}: ${html}`))
  }
  await context.close()
  await attacked.remove()
  expect(found).toEqual([])
})

test('a recipe page weighs less than 60 kB with all it loads', () => {
  const size = (path: string) => {
    const content = files.find((file) => file.path === path)?.content
    if (content === undefined) throw new Error(`${path} is not in the site`)
    return Buffer.byteLength(content)
  }
  const page = size('recipes/barley-pot/index.html')
  const assets = ['assets/site.css', 'assets/mark.svg', 'assets/recipe.js'].map(size)
  expect(assets.reduce((sum, bytes) => sum + bytes, page)).toBeLessThan(60_000)
  expect(
    size('shopping/index.html') + size('assets/site.css') + size('assets/shopping-list.js'),
  ).toBeLessThan(60_000)
})
