import {readFile} from 'node:fs/promises'
import {createRequire} from 'node:module'
import type {Browser} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {build} from '../../src/build.ts'
import {readFolder} from '../../src/cookbook/read-folder.ts'
import {readAssets} from '../../src/site/read-assets.ts'
import type {SiteFile} from '../../src/site/site-file.ts'
import {openBrowser, type SiteOnDisk, siteOnDisk} from './browser.ts'
import {views} from './views.ts'

/** Pages of the demo that between them show every part there is. */
const pages = [
  'index.html',
  'recipes/barley-pot/index.html',
  'recipes/banana-loaf/index.html',
  'recipes/lentil-bowl/index.html',
  'recipes/boathouse-dough/index.html',
  'recipes/beef-and-bean-pot/card/index.html',
  'shopping/index.html',
  'plans/sunday-batch/index.html',
  'figures/index.html',
  'foods/index.html',
  'rules/index.html',
  'style/index.html',
  'pages/about/index.html',
  '404.html',
]

let browser: Browser
let site: SiteOnDisk
let files: readonly SiteFile[]
let axe: string

beforeAll(async () => {
  files = build(await readFolder('content'), await readAssets()).files
  site = await siteOnDisk(files)
  browser = await openBrowser()
  axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
})

afterAll(async () => {
  await browser?.close()
  await site?.remove()
})

describe.each(views(700))('the demo $name', ({colorScheme, media, width}) => {
  test('is accessible by axe-core, keeps within its width and is quiet', async () => {
    const viewport = {width, height: 800}
    const context = await browser.newContext({bypassCSP: true, colorScheme, viewport})
    const page = await context.newPage()
    const found: string[] = []
    page.on('console', (message) => found.push(`console: ${message.text()}`))
    page.on('pageerror', (error) => found.push(`error: ${error.message}`))
    page.on('request', (request) => {
      if (!request.url().startsWith(site.url(''))) found.push(`request: ${request.url()}`)
    })
    await page.emulateMedia({media, colorScheme})
    for (const path of pages) {
      await page.goto(site.url(path))
      await page.evaluate(axe)
      const {violations} = await page.evaluate(() => Reflect.get(globalThis, 'axe').run(document))
      for (const {id, nodes} of violations) found.push(`${path}: ${id} at ${nodes[0].target}`)
      const over = await page.evaluate(() => {
        const {scrollWidth, clientWidth} = document.documentElement
        return scrollWidth - clientWidth
      })
      if (over > 0) found.push(`${path}: ${over} px too wide`)
    }
    await context.close()
    expect(found).toEqual([])
  })
})

test('no recipe page weighs 60 kB with every style sheet, script and icon that it loads', () => {
  const textAt = (path: string) => {
    const content = files.find((file) => file.path === path)?.content
    if (typeof content !== 'string') throw new Error(`${path} is no text of the site`)
    return content
  }
  const recipes = files.filter(({path}) => /^recipes\/[^/]+\/index\.html$/.test(path))
  expect(recipes.length).toBeGreaterThan(20)
  for (const {path} of recipes) {
    const page = textAt(path)
    const loaded = new Set(page.match(/(?<=")\.\.\/\.\.\/assets\/[^"]+/g))
    expect([...loaded]).toEqual(expect.arrayContaining(['../../assets/recipe.js']))
    const texts = [page, ...[...loaded].map((asset) => textAt(asset.replace('../../', '')))]
    const bytes = texts.reduce((sum, text) => sum + Buffer.byteLength(text), 0)
    expect([path, bytes < 60_000, bytes]).toEqual([path, true, bytes])
  }
})

test('every recipe page can be cooked from: its amounts double and come back', async () => {
  const page = await browser.newPage()
  const errors: string[] = []
  page.on('pageerror', (error) => errors.push(error.message))
  for (const {path} of files.filter(({path}) => /^recipes\/[^/]+\/index\.html$/.test(path))) {
    await page.goto(site.url(path))
    const before = await page.locator('main').textContent()
    const field = page.locator('#cooking-servings')
    await field.fill(String(Number(await field.inputValue()) * 2))
    const [batch, doubled] = await Promise.all(
      ['[data-shows="batch"]', '#cooking-status'].map((place) => page.locator(place).textContent()),
    )
    expect([path, doubled?.includes('× 2')]).toEqual([path, true])
    expect([path, batch === '']).toEqual([path, false])
    await page.getByRole('button', {name: 'As written'}).click()
    expect(await page.locator('main').textContent()).toBe(before)
  }
  await page.close()
  expect(errors).toEqual([])
})
