import type {Browser, Page} from 'playwright-core'
import {afterAll, afterEach, beforeAll, beforeEach, expect, test} from 'vitest'
import {openBrowser, type SiteOnDisk} from './browser.ts'
import {cookbookOnWeb} from './cookbook-on-web.ts'

const dough = `---
title: Dough
yield: 590 g
time: { hands-on: 20 min, total: 1 h 50 min }
ingredients:
  flour: 600 g
---

1. Stir the [flour](#flour) to a dough.
2. Knead for 10 min.
3. Leave to rise for 1 h 30 min.
`

const foods =
  'flour: {label: {per: 100 g, energy: 350 kcal, protein: 10 g, carbohydrate: 75 g, fat: 1 g, rules: us}, contains: [wheat]}'

let browser: Browser
let site: SiteOnDisk
let page: Page

beforeAll(async () => {
  const texts = [
    {path: 'foods.yaml', text: foods},
    {path: 'recipes/dough.md', text: dough},
  ]
  site = await cookbookOnWeb(texts)
  browser = await openBrowser()
})

afterAll(async () => {
  await browser?.close()
  await site?.remove()
})

beforeEach(async () => {
  page = await (await browser.newContext({locale: 'en-GB'})).newPage()
  await page.goto(site.url('recipes/dough/'))
})

afterEach(() => page.context().close())

/** The first column, and the times of the waits. */
async function times(from: Page = page): Promise<readonly string[]> {
  const found = await from.locator('.timetable [data-at]').allInnerTexts()
  return found.map((text) => text.replaceAll(/\s+/g, ' ').trim())
}

/*
 * 110 minutes: 10 of kneading, 90 of rising, and 10 of work that no step tells, 4, 3 and 3. So the
 * steps begin after 0, 4 and 17 minutes, the wait lies between 20 and 110.
 */
const fromStart = ['0:00', '0:04', '0:17', '0:20–1:50', '1:50']

test('counts from the start, without scripts too', async () => {
  expect(await times()).toEqual(fromStart)
  const context = await browser.newContext({javaScriptEnabled: false})
  const plain = await context.newPage()
  await plain.goto(site.url('recipes/dough/'))
  expect(await times(plain)).toEqual(fromStart)
  expect(await plain.locator('.timetable tbody tr').allInnerTexts()).toEqual([
    expect.stringMatching(/1\. Stir the flour to a dough\s+4 min/),
    expect.stringMatching(/2\. Knead for 10 min\s+13 min/),
    expect.stringMatching(/3\. Leave to rise for 1 h 30 min\s+3 min\s+1 h 30 min/),
  ])
  expect(await plain.locator('#clock').isVisible()).toBe(false)
  await context.close()
})

test('has clock times from a start, typed with the keyboard', async () => {
  await page.getByLabel('Start at').focus()
  await page.keyboard.type('0930AM')
  expect(await times()).toEqual(['09:30', '09:34', '09:47', '09:50–11:20', '11:20'])
  expect(await page.getByLabel('Ready by').inputValue()).toBe('11:20')
  expect(await page.locator('#clock [role=status]').textContent()).toBe(
    'Start at 09:30, ready at 11:20.',
  )
})

test('begins the day before for what is ready soon after midnight, and ends the day after', async () => {
  await page.getByLabel('Ready by').fill('00:30')
  expect(await page.getByLabel('Start at').inputValue()).toBe('22:40')
  expect(await times()).toEqual([
    '22:40 -1 day',
    '22:44 -1 day',
    '22:57 -1 day',
    '23:00–00:30',
    '00:30',
  ])
  await page.getByLabel('Start at').fill('23:00')
  expect((await times()).slice(-2)).toEqual(['23:20–00:50', '00:50 +1 day'])
})

test('is there again after a reload, and gone when the field is emptied', async () => {
  await page.getByLabel('Ready by').fill('19:00')
  await page.reload()
  expect(await page.getByLabel('Start at').inputValue()).toBe('17:10')
  expect((await times())[0]).toBe('17:10')
  await page.getByLabel('Ready by').fill('')
  expect(await times()).toEqual(fromStart)
  expect(await page.getByLabel('Start at').inputValue()).toBe('')
})

test('draws what it says: each bar begins where the one before ends', async () => {
  const ends = await page
    .locator('.bars line')
    .evaluateAll((lines) =>
      lines.map((line) =>
        ['x1', 'x2'].map((name) => Number.parseFloat(line.getAttribute(name) ?? '')),
      ),
    )
  // 4, 13, 3 and 90 of 110 minutes.
  expect(ends).toEqual([
    [0, 3.6],
    [3.6, 15.5],
    [15.5, 18.2],
    [18.2, 100],
  ])
})
