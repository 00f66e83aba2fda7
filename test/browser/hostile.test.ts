/** A cookbook by somebody who means harm, built as any other and opened in a browser: nothing runs. */

import {fileURLToPath} from 'node:url'
import type {Browser, BrowserContext, Page} from 'playwright-core'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {type Built, build} from '../../src/build.ts'
import {readFolder} from '../../src/cookbook/read-folder.ts'
import {readAssets} from '../../src/site/read-assets.ts'
import {openBrowser, type SiteOnDisk, siteOnDisk} from './browser.ts'

const cookbook = fileURLToPath(new URL('../fixtures/hostile', import.meta.url))

let built: Built
let browser: Browser
let site: SiteOnDisk

beforeAll(async () => {
  built = build(await readFolder(cookbook), await readAssets())
  site = await siteOnDisk(built.files)
  browser = await openBrowser()
}, 60_000)

afterAll(async () => {
  await browser?.close()
  await site?.remove()
})

test('it builds: what can only be text is text', () => {
  const errors = built.problems.filter(({severity}) => severity === 'error')
  expect(errors.map(({file, reason}) => `${file}: ${reason}`)).toEqual([])
  const attacked = pages().filter(({content}) => String(content).includes('alert('))
  expect(attacked.length).toBe(pages().length)
})

test('every page has the whole policy, before anything it could load', () => {
  for (const {path, content} of pages()) {
    const [head = ''] = String(content).split(/<(?:link|script|style|img)/)
    const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/i.exec(head)?.[1]
    expect(policy?.replaceAll('&#x27;', "'").split('; '), path).toEqual([
      "default-src 'none'",
      "style-src 'self'",
      "script-src 'self'",
      "img-src 'self'",
      "base-uri 'none'",
      "form-action 'none'",
    ])
  }
})

test('nothing runs, nothing leaves, and no page complains', async () => {
  expect(await heardOn(await browser.newContext())).toEqual([])
})

test('nor without the policy of the pages: what is written stays text by itself', async () => {
  expect(await heardOn(await browser.newContext({bypassCSP: true}))).toEqual([])
})

// CWE-1236. A spreadsheet set to another language takes semicolons for what parts the cells.
test('no cell of a table for spreadsheets begins as a formula does', () => {
  const tables = built.files.filter(({path}) => path.endsWith('.csv'))
  const cells = tables.flatMap(({content}) => String(content).match(cell) ?? [])
  expect(cells.some((text) => text.includes('HYPERLINK'))).toBe(true)
  expect(cells.some((text) => text.includes('oats;=1+1'))).toBe(true)
  expect(cells.filter((text) => /^"?[\s]*[=+@-]/.test(text))).toEqual([])
})

/** Quoted as a whole, or up to the next sign that parts cells in any language. */
const cell = /"(?:[^"]|"")*"|[^,;\t\r\n]+/g

test('data for machines is JSON, and within a page it ends where its element ends', () => {
  const files = built.files.filter(({path}) => path.endsWith('.jsonld'))
  expect(files).not.toEqual([])
  const blocks = pages().flatMap(({content}) => [
    ...String(content).matchAll(/<script type="application\/(?:ld\+)?json"[^>]*>(.*?)<\/script>/gs),
  ])
  expect(blocks.length).toBeGreaterThan(1)
  const texts = [
    ...files.map(({content}) => String(content)),
    ...blocks.map(([, json = '']) => json),
  ]
  expect(texts.filter((json) => typeof JSON.parse(json) !== 'object')).toEqual([])
  // With it, HTML would read on past the end of the block (HTML Living Standard, 4.12.1.3).
  expect(blocks.filter(([, json = '']) => /<!--|<\/?script/i.test(json))).toEqual([])
})

function pages() {
  return built.files.filter(({path}) => path.endsWith('.html'))
}

/** Opens every page and picture, moves over and into whatever is there, and tells what happened. */
async function heardOn(context: BrowserContext): Promise<readonly string[]> {
  const heard: string[] = []
  const page = await context.newPage()
  await context.exposeFunction('alert', (said: unknown) => heard.push(`alert: ${said}`))
  listen(page, heard)
  const opened = built.files.filter(({path}) => /\.(?:html|svg)$/.test(path))
  for (const {path} of opened) {
    const before = heard.length
    await page.goto(site.url(path))
    await page.evaluate(touchEverything)
    heard.push(...(await page.evaluate(strangeElements)))
    for (let index = before; index < heard.length; index++)
      heard[index] = `${path}: ${heard[index]}`
  }
  expect(opened.length).toBeGreaterThan(10)
  await context.close()
  return heard
}

function listen(page: Page, heard: string[]): void {
  page.on('console', (message) => heard.push(`console: ${message.text()}`))
  page.on('pageerror', (error) => heard.push(`error: ${error.message}`))
  page.on('dialog', async (dialog) => {
    heard.push(`dialog: ${dialog.message()}`)
    await dialog.dismiss()
  })
  page.on('popup', (popup) => heard.push(`popup: ${popup.url()}`))
  page.on('framenavigated', (frame) => {
    if (!frame.url().startsWith(site.url(''))) heard.push(`went to: ${frame.url()}`)
  })
  page.on('request', (request) => {
    if (!request.url().startsWith(site.url(''))) heard.push(`request: ${request.url()}`)
  })
}

/** Runs in the page: what an `on…` attribute would wait for. */
function touchEverything(): void {
  for (const element of document.querySelectorAll('body *')) {
    for (const type of ['mouseover', 'focus', 'load', 'error', 'pointerdown']) {
      element.dispatchEvent(new Event(type))
    }
  }
}

/** Runs in the page: elements and attributes that no template writes. */
function strangeElements(): readonly string[] {
  const found: string[] = []
  const never =
    'iframe, object, embed, base, html style, foreignObject, animate, set, [srcdoc], [style]'
  for (const element of document.querySelectorAll(`${never}, meta[http-equiv="refresh"]`)) {
    found.push(`strange: ${element.outerHTML.slice(0, 80)}`)
  }
  for (const element of document.querySelectorAll('*')) {
    for (const {name, value} of element.attributes) {
      const isHandler = /^on/i.test(name)
      const leadsIntoScript =
        /^(?:href|src|action)$/i.test(name) && /^\s*(?:javascript|data|vbscript):/i.test(value)
      if (isHandler || leadsIntoScript) found.push(`strange: ${name}="${value.slice(0, 80)}"`)
    }
  }
  return found
}
