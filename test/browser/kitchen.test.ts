import type {Browser, Page} from 'playwright-core'
import {afterAll, afterEach, beforeAll, beforeEach, describe, expect, test} from 'vitest'
import {openBrowser, type SiteOnDisk} from './browser.ts'
import {cookbookOnWeb} from './cookbook-on-web.ts'

const soup = `---
title: Soup
serves: 4
ingredients:
  barley: 200 g
---

1. Toast the [barley](#barley) for 8 min.
2. Simmer for 35 min.
`

const foods =
  'barley: {label: {per: 100 g, energy: 350 kcal, protein: 10 g, carbohydrate: 75 g, fat: 1 g, rules: us}, contains: []}'

let browser: Browser
let site: SiteOnDisk
let page: Page
let errors: string[]

beforeAll(async () => {
  const texts = [
    {path: 'foods.yaml', text: foods},
    {path: 'recipes/soup.md', text: soup},
  ]
  site = await cookbookOnWeb(texts)
  browser = await openBrowser()
})

afterAll(async () => {
  await browser?.close()
  await site?.remove()
})

/** Stands in for the device: what was asked of it is told in `heard`. */
function standIns(): void {
  const heard: string[] = []
  Reflect.set(globalThis, 'heard', heard)
  const request = async (type: string) => {
    if (Reflect.get(globalThis, 'isBatteryLow')) throw new DOMException('', 'NotAllowedError')
    heard.push(`lock ${type}`)
    const lock = {
      released: false,
      release: async () => {
        lock.released = true
        heard.push('release')
      },
    }
    return lock
  }
  Object.defineProperty(navigator, 'wakeLock', {value: {request}})
  let visibility = 'visible'
  Object.defineProperty(document, 'visibilityState', {get: () => visibility})
  Reflect.set(globalThis, 'look', (next: string) => {
    visibility = next
    document.dispatchEvent(new Event('visibilitychange'))
  })
  const start = OscillatorNode.prototype.start
  OscillatorNode.prototype.start = function (when?: number) {
    heard.push(`${this.frequency.value.toFixed(0)} Hz`)
    start.call(this, when)
  }
}

const heard = () => page.evaluate(() => [...Reflect.get(globalThis, 'heard')])

async function look(visibility: 'visible' | 'hidden'): Promise<void> {
  await page.evaluate((next) => Reflect.get(globalThis, 'look')(next), visibility)
}

beforeEach(async () => {
  page = await (await browser.newContext()).newPage()
  errors = []
  page.on('pageerror', ({message}) => errors.push(message))
  await page.addInitScript(standIns)
  await page.clock.install({time: new Date('2026-03-01T17:00:00')})
  await page.goto(site.url('recipes/soup/'))
})

afterEach(async () => {
  await page.context().close()
  expect(errors).toEqual([])
})

describe('the screen', () => {
  test('stays on from a press of the space bar to the next, while it is looked at', async () => {
    const box = page.getByLabel('Keep the screen on')
    await box.focus()
    await page.keyboard.press('Space')
    await expect.poll(heard).toEqual(['lock screen'])
    await look('hidden')
    await expect.poll(heard).toEqual(['lock screen', 'release'])
    await look('visible')
    await expect.poll(heard).toEqual(['lock screen', 'release', 'lock screen'])
    await page.keyboard.press('Space')
    await expect.poll(heard).toEqual(['lock screen', 'release', 'lock screen', 'release'])
    await look('visible')
    expect(await heard()).toHaveLength(4)
  })

  test('may go dark where the device refuses, and is asked for again later', async () => {
    await page.evaluate(() => Reflect.set(globalThis, 'isBatteryLow', true))
    await page.getByLabel('Keep the screen on').check()
    await page.evaluate(() => Reflect.set(globalThis, 'isBatteryLow', false))
    await look('visible')
    await expect.poll(heard).toEqual(['lock screen'])
  })
})

describe('timers', () => {
  const left = () => page.locator('.tray .left').allTextContents()

  test('run side by side, ring once each, and outlive a reload', async () => {
    for (const time of ['8 min', '35 min']) {
      await page.getByRole('button', {name: `Start a timer: ${time}`}).focus()
      await page.keyboard.press('Enter')
    }
    await page.clock.runFor('08:01')
    expect(await left()).toEqual(['Time is up', expect.stringMatching(/^2[67]:\d\d$/)])
    expect(await heard()).toEqual(['880 Hz', '880 Hz', '1175 Hz'])
    expect(await page.locator('.tray [role=status]').textContent()).toBe(
      'Time is up: 8 min, step 1',
    )
    await page.clock.runFor('05:00')
    expect(await heard()).toHaveLength(3)
    await page.reload()
    expect(await left()).toEqual(['Time is up', expect.stringMatching(/^2[12]:\d\d$/)])
    await page.clock.runFor('00:05')
    expect(await heard()).toEqual([])
    await page.clock.runFor('23:00')
    expect(await left()).toEqual(['Time is up', 'Time is up'])
    expect(await heard()).toEqual(['880 Hz', '880 Hz', '1175 Hz'])
  })

  test('that ended while the page was away are over without a sound, and are put away', async () => {
    await page.getByRole('button', {name: 'Start a timer: 8 min'}).press('Enter')
    await page.getByRole('button', {name: 'Start a timer: 35 min'}).press('Enter')
    await page.goto('about:blank')
    await page.clock.setSystemTime(new Date('2026-03-01T17:20:00'))
    await page.goto(site.url('recipes/soup/'))
    await page.clock.runFor('00:02')
    expect(await left()).toEqual(['Time is up', expect.stringMatching(/^1[45]:\d\d$/)])
    expect(await heard()).toEqual([])
    await page.getByRole('button', {name: 'Stop: 8 min, step 1'}).press('Enter')
    expect(await left()).toEqual([expect.stringMatching(/^1[45]:\d\d$/)])
    await page.getByRole('button', {name: 'Stop: 35 min, step 2'}).press('Enter')
    expect(await page.locator('.tray').isVisible()).toBe(false)
    await page.reload()
    expect(await left()).toEqual([])
  })
})
