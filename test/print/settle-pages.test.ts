import {describe, expect, test} from 'vitest'
import {pdfDestinations} from '../../src/print/pdf-destinations.ts'
import {settlePages} from '../../src/print/settle-pages.ts'

/**
 * A PDF of `pages` pages with named destinations, as far as ISO 32000-1:2008 says how such objects
 * look (7.7.3.2, 12.3.2.3): the page tree has two levels, as for more than a few pages.
 */
function pdfWith(pages: number, landed: Readonly<Record<string, number>>): Buffer {
  const kids = Array.from({length: pages}, (_, index) => 10 + index)
  const half = Math.ceil(pages / 2)
  const refs = (numbers: readonly number[]) => numbers.map((number) => `${number} 0 R`).join(' ')
  const dests = Object.entries(landed).map(([id, page]) => `/${id} [${9 + page} 0 R /XYZ 0 0 0]`)
  return Buffer.from(
    [
      '%PDF-1.7',
      '1 0 obj\n<< /Type /Catalog /Pages 2 0 R /Dests 5 0 R >>\nendobj',
      '2 0 obj\n<< /Type /Pages /Kids [3 0 R 4 0 R] >>\nendobj',
      `3 0 obj\n<< /Type /Pages /Kids [${refs(kids.slice(0, half))}] >>\nendobj`,
      `4 0 obj\n<< /Type /Pages /Kids [${refs(kids.slice(half))}] >>\nendobj`,
      `5 0 obj\n<< ${dests.join('\n')} >>\nendobj`,
      ...kids.map((number) => `${number} 0 obj\n<< /Type /Page >>\nendobj`),
    ].join('\n'),
    'latin1',
  )
}

test('destinations name the page, counted through the tree', () => {
  const pdf = pdfWith(5, {'recipe-soup': 2, 'recipe-loaf--section-1': 5})
  expect([...pdfDestinations(pdf)]).toEqual([
    ['recipe-soup', 2],
    ['recipe-loaf--section-1', 5],
  ])
})

test('a file with packed objects is refused, not read as empty', () => {
  const packed = Buffer.from('1 0 obj\n<< /Type /ObjStm >>\nendobj', 'latin1')
  expect(() => pdfDestinations(packed)).toThrow('packed')
})

describe('printing until page numbers hold', () => {
  test('prints once more when a number moved what it counts', async () => {
    const asked: string[] = []
    const pdf = await settlePages(async ({pageOf}) => {
      const number = pageOf('soup') ?? ''
      asked.push(number)
      // With two digits the line wraps and the soup moves on.
      return pdfWith(12, {soup: number === '00' ? 10 : 11})
    })
    expect(asked).toEqual(['00', '10', '11'])
    expect(pdfDestinations(pdf).get('soup')).toBe(11)
  })

  /** A book of three recipes, the second of which is two pages long until it is set closer. */
  async function bookWith(long: (isClose: boolean) => number): Promise<readonly boolean[]> {
    const closes: boolean[] = []
    await settlePages(async ({pageOf, isClose}) => {
      const ids = ['stew', 'soup', 'loaf']
      for (const id of ids) pageOf(id)
      const isSoupClose = ids.map(isClose)[1] === true
      closes.push(isSoupClose)
      return pdfWith(9, {stew: 3, soup: 4, loaf: 4 + long(isSoupClose)})
    })
    return closes
  }

  test('sets a recipe closer that then ends on the page on which it begins', async () => {
    expect(await bookWith((isClose) => (isClose ? 1 : 2))).toEqual([false, true, true])
  })

  test('leaves a recipe as it is that is too long either way', async () => {
    expect(await bookWith(() => 2)).toEqual([false, true, false])
  })

  test('sets no recipe closer that has a page to itself', async () => {
    expect(await bookWith(() => 1)).toEqual([false, false])
  })

  test('prints once where no number is asked for', async () => {
    let prints = 0
    await settlePages(async () => {
      prints++
      return pdfWith(2, {soup: 1})
    })
    expect(prints).toBe(1)
  })

  test('gives up on numbers that never rest', async () => {
    let page = 0
    const restless = settlePages(async ({pageOf}) => {
      pageOf('soup')
      page = (page % 3) + 1
      return pdfWith(3, {soup: page})
    })
    await expect(restless).rejects.toThrow('still moved')
  })
})
