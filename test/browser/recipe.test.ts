import {readFile} from 'node:fs/promises'
import {createRequire} from 'node:module'
import type {Browser, Page} from 'playwright-core'
import {afterAll, afterEach, beforeAll, beforeEach, describe, expect, test} from 'vitest'
import {openBrowser, type SiteOnDisk} from './browser.ts'
import {cookbookOnWeb} from './cookbook-on-web.ts'

/**
 * One dish whose figures can be worked out on paper. Batch: chicken 600 g × 1.2 + barley 200 g × 3.5
 * + butter 50 g × 7.2 = 720 + 700 + 360 = 1780 kcal, a quarter of it 445 kcal.
 */
const label = (name: string, kcal: number, protein = 0, carbohydrate = 0, fat = 0, more = '') =>
  `${name}: {label: {per: 100 g, energy: ${kcal} kcal, protein: ${protein} g, carbohydrate: ${carbohydrate} g, fat: ${fat} g, rules: us}, contains: []${more}}`

const foods = [
  label('chicken', 120, 20, 0, 4),
  label('barley', 350, 10, 77, 1),
  label('butter', 720, 1, 0, 80),
  label('oil', 900, 0, 0, 100),
  label('seeds', 600, 20, 20, 50),
  label('garlic', 0, 0, 0, 0, ', measures: {clove: 3 g}'),
].join('\n')

const pot = `---
title: Test pot
serves: 4
yield: 1500 g
pan: { round: 20 cm, depth: 7 cm }
ingredients:
  chicken: 600 g
  barley: 200 g
  garlic: 9 g (3 cloves)
  butter: { amount: 50 g, instead: { oil: 20 g } }
  seeds: { amount: 20 g, optional: true }
  water: 700 g
stated: { energy: 446 kcal }
---

1. Brown the [chicken](#chicken) in the [butter](#butter) for 8 min with the [garlic](#garlic).
2. Add the [barley](#barley), simmer for 35 min, and strew with [seeds](#seeds).
`

let browser: Browser
let site: SiteOnDisk
let page: Page

beforeAll(async () => {
  const texts = [
    {path: 'foods.yaml', text: foods},
    {path: 'recipes/pot.md', text: pot},
  ]
  site = await cookbookOnWeb(texts)
  browser = await openBrowser()
})

afterAll(async () => {
  await browser?.close()
  await site?.remove()
})

beforeEach(async () => {
  page = await (await browser.newContext({bypassCSP: true})).newPage()
  await page.goto(site.url('recipes/pot/'))
})

afterEach(() => page.context().close())

async function texts(selector: string): Promise<readonly string[]> {
  const found = await page.locator(selector).allInnerTexts()
  return found.map((text) => text.replaceAll(/\s+/g, ' ').trim())
}

/** The energy of the table: one serving, 100 g, whole batch; without ± and kJ. */
async function energies(): Promise<readonly string[]> {
  const cells = await texts('.figures [data-nutrient="energy"] td')
  return cells.map((cell) => cell.replace(/ ±.*/, ''))
}

const weights = () => texts('.ledger .weight')
const headline = () => texts('.headline dd')

describe('how much is made', () => {
  test('follows the servings: amounts and batch move, one serving stays', async () => {
    expect(await energies()).toEqual(['445 kcal', '119 kcal', '1780 kcal'])
    await page.getByLabel('Servings').fill('6')
    expect(await weights()).toEqual(['900 g', '300 g', '14 g', '75 g', '30 g', '1050 g'])
    expect(await texts('.method .amount')).toEqual([
      '900 g',
      '75 g',
      '14 g, 4½ cloves',
      '300 g',
      '30 g',
    ])
    expect(await energies()).toEqual(['445 kcal', '119 kcal', '2670 kcal'])
    expect((await headline())[0]).toBe('446 kcal')
    expect(await texts('.particulars dd')).toEqual(
      expect.arrayContaining(['6 instead of 4', '375 g', '2250 g']),
    )
  })

  test('follows what there is of an ingredient', async () => {
    await page.getByLabel('of', {exact: true}).selectOption('chicken, 600 g')
    await page.getByLabel('Grams at hand').fill('450')
    expect(await weights()).toEqual(['450 g', '150 g', '6.8 g', '38 g', '15 g', '525 g'])
    // 2¼ cloves of 3.
    expect(await texts('.ledger .measure')).toEqual([', 2¼ cloves'])
    expect(await page.getByLabel('Servings').inputValue()).toBe('3')
  })

  test('follows the tin: 26 cm for 20 cm is 1.69 times as much', async () => {
    expect(await page.getByLabel('Across').inputValue()).toBe('20')
    await page.getByLabel('Across').fill('26')
    expect((await weights())[0]).toBe('1014 g')
    expect(await page.locator('#cooking-status').textContent()).toContain('× 1.69')
  })

  test.each([
    // 21 × 11 × 6 cm = 1386 cm³ of π × 10² × 7 = 2199.1 cm³: 0.630.
    {tin: ['loaf, rectangle', '21', '11', '6'], factor: '0.63', chicken: '378 g'},
    // 23² ÷ (π × 10²), as deep a batter where the depth is left open: 1.68.
    {tin: ['square', '23', '', ''], factor: '1.68', chicken: '1008 g'},
    // π (12² − 4²) × 8 cm = 3216.99 cm³: 1.46.
    {tin: ['ring', '24', '8', '8'], factor: '1.46', chicken: '876 g'},
  ])(
    'follows a tin of any size: $tin',
    async ({tin: [shape = '', ...lengths], factor, chicken}) => {
      await page.getByLabel('Shape').selectOption(shape)
      for (const [index, name] of ['Across', 'Other side, tube', 'Depth'].entries()) {
        await page.getByLabel(name).fill(lengths[index] ?? '')
      }
      expect(await page.locator('#cooking-status').textContent()).toContain(`× ${factor};`)
      // To the hundredth of a serving that the field shows.
      const [grams] = await weights()
      expect(Math.abs(Number.parseFloat(grams ?? '') - Number.parseFloat(chicken))).toBeLessThan(2)
    },
  )

  test('leaves the tin behind when the servings are typed, and has it back as written', async () => {
    await page.getByLabel('Servings').fill('6')
    expect(await page.getByLabel('Across').inputValue()).toBe('')
    await page.getByRole('button', {name: 'As written'}).click()
    expect(await page.getByLabel('Across').inputValue()).toBe('20')
    expect(await page.getByLabel('Depth').inputValue()).toBe('7')
  })

  test('is not moved by nonsense', async () => {
    for (const nonsense of ['0', '-3', '']) {
      await page.getByLabel('Servings').fill(nonsense)
      expect((await weights())[0]).toBe('600 g')
    }
  })

  test('has its fields and lists of one height, so that what is beside each other lines up', async () => {
    const heights = await page.$$eval('#cooking :is(input[type="number"], select)', (fields) =>
      fields.map((field) => Math.round(field.getBoundingClientRect().height)),
    )
    expect(heights.length).toBeGreaterThan(5)
    expect(new Set(heights).size).toBe(1)
  })

  test('is typed with the keyboard alone', async () => {
    await page.getByLabel('Servings').focus()
    await page.keyboard.press('Control+A')
    await page.keyboard.type('2')
    await page.keyboard.press('Tab')
    await page.keyboard.type('1200')
    expect((await weights())[0]).toBe('1200 g')
  })
})

describe('what is put in', () => {
  test('moves the figures as the ingredients do, and says so', async () => {
    await page.getByLabel('Take oil instead').check()
    // 720 + 700 + 20 × 9 = 1600 kcal.
    expect(await energies()).toEqual(['400 kcal', '107 kcal', '1600 kcal'])
    expect((await headline())[0]).toBe('400 kcal')
    expect(await texts('.method .amount')).toContain('20 g oil')
    await page.getByLabel('Put seeds in').check()
    // And 20 × 6 = 120 kcal, in (1500 + 20) ÷ 4 g.
    expect(await energies()).toEqual(['430 kcal', '113 kcal', '1720 kcal'])
    expect(await texts('.headline > p')).toEqual([
      'One serving, 380 g',
      expect.stringContaining('Worked out for oil instead of butter, with seeds.'),
    ])
  })

  test('shares out the energy anew', async () => {
    const before = await texts('.beams li')
    await page.getByLabel('Take oil instead').check()
    // Grams × factor: protein 140 × 4, carbohydrate 154 × 4, fat 24 + 2 + 20 = 46 × 9; 1590 in all.
    expect(await texts('.beams li')).toEqual(['Protein 35 %', 'Carbohydrate 39 %', 'Fat 26 %'])
    expect(await texts('.beams li')).not.toEqual(before)
  })

  test('is scaled with the rest', async () => {
    await page.getByLabel('Take oil instead').check()
    await page.getByLabel('Servings').fill('8')
    expect(await weights()).toEqual(['1200 g', '400 g', '18 g', '40 g', '40 g', '1400 g'])
    expect((await energies())[2]).toBe('3200 kcal')
  })

  test('is as written again at the press of a button', async () => {
    const article = () =>
      page.$eval('article', (found) => found.innerHTML.replaceAll(/ class="[^"]*"/g, ''))
    const before = await article()
    await page.getByLabel('Take oil instead').check()
    await page.getByLabel('Put seeds in').check()
    await page.getByLabel('Servings').fill('7')
    expect(await article()).not.toBe(before)
    await page.getByRole('button', {name: 'As written'}).click()
    expect(await article()).toBe(before)
    expect(await page.getByLabel('Servings').inputValue()).toBe('4')
  })
})

describe('a cook who comes back', () => {
  test('finds the amounts, the choice and the ticks', async () => {
    await page.getByLabel('Servings').fill('2')
    await page.getByLabel('Take oil instead').check()
    await page.getByLabel('Done: barley').check()
    await page.getByLabel('Done: Brown the chicken').check()
    await page.reload()
    expect((await weights())[0]).toBe('300 g')
    expect(await page.getByLabel('Take oil instead').isChecked()).toBe(true)
    expect(await page.getByLabel('Done: barley').isChecked()).toBe(true)
    expect(await texts('.ticked .name')).toEqual(['barley'])
    expect(await page.locator('.method .ticked').count()).toBe(1)
  })

  test('a day later finds the recipe as it is written', async () => {
    await page.getByLabel('Servings').fill('2')
    await page.getByLabel('Done: barley').check()
    await page.clock.install({time: Date.now() + 25 * 60 * 60 * 1000})
    await page.reload()
    expect((await weights())[0]).toBe('600 g')
    expect(await page.locator('.ticked').count()).toBe(0)
  })

  test('finds a kept state that no longer fits the recipe left alone', async () => {
    await page.evaluate(() => {
      const value = {batches: 3, choices: [0, 7, 'x']}
      localStorage.setItem('scalepan recipe pot', JSON.stringify({savedAt: Date.now(), value}))
      localStorage.setItem('scalepan timers pot', '{"savedAt": 9e15, "value": [{"label": 1}]}')
    })
    await page.reload()
    expect((await weights())[0]).toBe('1800 g')
    expect((await energies())[0]).toBe('445 kcal')
  })
})

describe('a timer', () => {
  test('runs from the time of a step, and says when it is up', async () => {
    await page.clock.install()
    await page.reload()
    const start = page.getByRole('button', {name: 'Start a timer: 8 min'})
    await start.focus()
    await page.keyboard.press('Enter')
    await page.clock.runFor(60_000)
    // The clock of the page also runs between two presses.
    expect(await texts('.tray .left')).toEqual([expect.stringMatching(/^(7:0[01]|6:5\d)$/)])
    await page.reload()
    expect(await texts('.tray li')).toEqual([
      expect.stringMatching(/^(7:0[01]|6:5\d) 8 min, step 1 Stop$/),
    ])
    await page.clock.runFor(7 * 60_000 + 1000)
    expect(await texts('.tray .left')).toEqual(['Time is up'])
    expect(await page.locator('.tray .said').textContent()).toContain('Time is up: 8 min, step 1')
    await page.getByRole('button', {name: 'Stop: 8 min, step 1'}).click()
    expect(await page.locator('.tray').isVisible()).toBe(false)
  })
})

test('the recipe is copied as it is cooked', async () => {
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write'])
  await page.getByLabel('Servings').fill('8')
  await page.getByLabel('Take oil instead').check()
  await page.getByRole('button', {name: 'Copy as text'}).click()
  await page.locator('#cooking-status', {hasText: 'Copied'}).waitFor()
  const copied = await page.evaluate(() => navigator.clipboard.readText())
  expect(copied.split('\n')).toEqual([
    'Test pot',
    '8 servings',
    '',
    '1200 g chicken',
    '400 g barley',
    '18 g (6 cloves) garlic',
    '40 g oil',
    '40 g seeds, if wanted',
    '1400 g water',
    '',
    expect.stringMatching(/^One serving, 375 g: energy 400 kcal, protein /),
    '',
  ])
})

test('a recipe that is changed and ticked is accessible, by axe-core, light and dark', async () => {
  const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
  await page.getByLabel('Servings').fill('8')
  await page.getByLabel('Take oil instead').check()
  await page.getByLabel('Done: barley').check()
  await page.getByRole('button', {name: 'Start a timer: 8 min'}).click()
  await page.evaluate(axe)
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({colorScheme})
    const {violations} = await page.evaluate(() => Reflect.get(globalThis, 'axe').run(document))
    expect(violations.map(({id}: {id: string}) => id)).toEqual([])
  }
})

test('without scripts there is the recipe, and nothing that would not work', async () => {
  const context = await browser.newContext({javaScriptEnabled: false})
  const plain = await context.newPage()
  await plain.goto(site.url('recipes/pot/'))
  expect(await plain.locator('#cooking').isVisible()).toBe(false)
  expect(await plain.getByRole('checkbox').count()).toBe(0)
  expect(await plain.locator('.ledger').getByText('600 g').isVisible()).toBe(true)
  await context.close()
})
