/**
 * I/O: `npm run bench:browser`: what a reader's browser does with the pages of a built site. How to
 * read it: bench/README.md.
 */

import {readdirSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {parseArgs} from 'node:util'
import type {CDPSession, Page} from 'playwright-core'
import {openBrowser} from '../../test/browser/browser.ts'
import {type Act, loadMilliseconds, type, watchLongTasks} from './in-page.ts'
import {serveFolder} from './serve-folder.ts'

const {values: options} = parseArgs({
  options: {
    site: {type: 'string', default: 'site'},
    words: {type: 'string', default: 'leek barley'},
  },
})

/** Long enough for what a step leaves to be done, such as a layout. */
const restMilliseconds = 500

const [recipe = ''] = readdirSync(path.join(options.site, 'recipes'))
const finder = {field: '#find-words', status: '#find-status'}

/** Pages, with what a reader does on each; what a page has no field for is left out. */
const pages: readonly {
  readonly name: string
  readonly address: string
  readonly acts: readonly Act[]
}[] = [
  {name: 'a recipe', address: `recipes/${recipe}/`, acts: []},
  {
    name: 'the first page',
    address: '',
    acts: [
      {...finder, name: 'turn to the finder', text: '', done: /\d/u},
      {...finder, name: 'find', text: options.words.slice(0, 2), done: /\d/u},
      {...finder, name: 'find', text: options.words, done: /\d/u},
    ],
  },
  {
    name: 'the shopping list',
    address: 'shopping/',
    acts: [
      {
        name: 'look for a recipe',
        field: '#choose-find',
        status: '.choose label',
        text: options.words,
        done: /./u,
      },
      {
        name: 'choose a recipe',
        field: '.choose input',
        status: '#list-status',
        text: '4',
        done: /\d/u,
      },
    ],
  },
]

const site = await serveFolder(options.site)
const browser = await openBrowser()
try {
  process.stdout.write(`Chromium ${browser.version()}\n\n`)
  row(['what', 'fetched, kB', 'script, ms', 'tasks over 50 ms', 'done after, ms'])
  row(Array.from({length: 5}, () => '---'))
  for (const {name, address, acts} of pages) await measure(name, address, acts)
} finally {
  await browser.close()
  site.close()
}

async function measure(name: string, address: string, acts: readonly Act[]): Promise<void> {
  const context = await browser.newContext({serviceWorkers: 'block'})
  const page = await context.newPage()
  const session = await context.newCDPSession(page)
  await session.send('Performance.enable')
  await page.addInitScript(watchLongTasks)
  await measureStep(name, page, session, async () => {
    await page.goto(site.url(address), {waitUntil: 'load'})
    return page.evaluate(loadMilliseconds)
  })
  for (const {done, status, ...act} of acts) {
    if ((await page.$(act.field)) === null) continue
    const step = `${name}: ${act.name}${act.text && ` “${act.text}”`}`
    await measureStep(step, page, session, () =>
      page.evaluate(type, {...act, status, done: done.source}),
    )
  }
  await context.close()
}

/** @param step gives how long it took, ms */
async function measureStep(
  name: string,
  page: Page,
  session: CDPSession,
  step: () => Promise<number>,
): Promise<void> {
  const [bytes, script] = [site.bytes(), await scriptMilliseconds(session)]
  const took = await step()
  await page.waitForTimeout(restMilliseconds)
  const tasks: unknown = await page.evaluate(() => {
    const seen: unknown = Reflect.get(globalThis, 'longTasks')
    return Array.isArray(seen) ? seen.splice(0) : []
  })
  row([
    name,
    ((site.bytes() - bytes) / 1000).toFixed(0),
    ((await scriptMilliseconds(session)) - script).toFixed(0),
    String(tasks),
    took.toFixed(0),
  ])
}

/** Time spent in scripts since the page began, ms. */
async function scriptMilliseconds(session: CDPSession): Promise<number> {
  const {metrics} = await session.send('Performance.getMetrics')
  return (metrics.find(({name}) => name === 'ScriptDuration')?.value ?? 0) * 1000
}

function row(cells: readonly string[]): void {
  process.stdout.write(`| ${cells.join(' | ')} |\n`)
}
