import type {Browser} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {readAssets} from '../../src/site/read-assets.ts'
import {renderSite} from '../../src/site/render-site.ts'
import {at, cookbook, line, recipe, siteInput, weight} from '../templates/sample.ts'
import {openBrowser, type SiteOnDisk, siteOnDisk} from './browser.ts'

let browser: Browser
let site: SiteOnDisk

const long = recipe('long', {
  title: at('A long one'),
  groups: [
    {
      lines: Array.from({length: 60}, (_, index) =>
        line(index % 2 === 0 ? 'carrot' : 'butter', weight(10 + index), {
          anchor: `line-${index}`,
        }),
      ),
    },
  ],
})

beforeAll(async () => {
  const recipes = new Map([...cookbook.recipes, [long.slug, long]])
  const input = siteInput({address: 'https://boathouse.example/'}, {recipes})
  site = await siteOnDisk(renderSite({...input, assets: await readAssets()}))
  browser = await openBrowser()
})

afterAll(async () => {
  await browser?.close()
  await site?.remove()
})

/** Sizes of the printed pages, in points of 1/72 in. */
async function printedSizes(slug: string, size?: string): Promise<readonly (readonly number[])[]> {
  const page = await browser.newPage()
  await page.goto(site.url(`recipes/${slug}/card/index.html`))
  if (size) await page.getByLabel(size).check()
  const pdf = await page.pdf({preferCSSPageSize: true})
  await page.close()
  return [...pdf.toString('latin1').matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(
    ([, width, height]) => [Math.round(Number(width)), Math.round(Number(height))],
  )
}

describe('a card', () => {
  // ISO 216: A6 is 105 × 148 mm; 1 in is 25.4 mm and 72 pt, so 298 × 420 pt.
  test('prints as two sides of A6', async () => {
    expect(await printedSizes('barley-pot')).toEqual([
      [298, 420],
      [298, 420],
    ])
  })

  test('prints as two sides of 6 × 4 in', async () => {
    expect(await printedSizes('barley-pot', '6 × 4 in')).toEqual([
      [432, 288],
      [432, 288],
    ])
  })

  test('prints as two sides of 5 × 3 in', async () => {
    expect(await printedSizes('barley-pot', '5 × 3 in')).toEqual([
      [360, 216],
      [360, 216],
    ])
  })

  test('that is too long flows to a further card of the same size', async () => {
    const sizes = await printedSizes('long')
    expect(sizes.length).toBeGreaterThan(2)
    for (const size of sizes) expect(size).toEqual([298, 420])
  })
})
