import {cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import path from 'node:path'
import {fileURLToPath} from 'node:url'
import packaged from '@sparticuz/chromium'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {bundledCommand} from '../cli/command.ts'
import {type ReadPdf, readPdf} from './pdf.ts'

/** The demo printed by the command as it is shipped, in the Chromium of the registry package. */

const content = fileURLToPath(new URL('../../content', import.meta.url))
/** A print takes seconds, and on a busy machine many of them. */
const patienceMilliseconds = 120_000

const scalepan = bundledCommand()
let folder: string
let chromium: string

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'scalepan-printed-'))
  chromium = await packaged.executablePath()
}, patienceMilliseconds)

afterAll(() => rmSync(folder, {recursive: true, force: true}))

/** Prints the demo with the sizes given. */
function printed(name: string, args: readonly string[], sizes: string): string {
  const here = path.join(folder, name)
  cpSync(content, path.join(here, 'content'), {recursive: true})
  const settings = path.join(here, 'content/cookbook.yaml')
  const text = readFileSync(settings, 'utf8')
  writeFileSync(settings, text.replace(/paper: \w+, cards: \w+/u, sizes))
  const out = `${name}.pdf`
  // Tests may run as root, whom a browser gives no sandbox.
  const {code, stderr} = scalepan.run(['print', ...args, '--out', out, '--no-sandbox'], {
    cwd: here,
    env: {CHROMIUM_PATH: chromium, SOURCE_DATE_EPOCH: '1764000000'},
  })
  if (code !== 0) throw new Error(`print ended with ${code}: ${stderr}`)
  return path.join(here, out)
}

/** Links that lead to neither the document nor the web. */
function localLinks({pages}: ReadPdf): readonly string[] {
  return pages.flatMap(({links}) => links.filter((link) => !/^https?:/u.test(link)))
}

/** Every word of the file, in the order of the alphabet. */
function words({pages}: ReadPdf): readonly string[] {
  return pages.flatMap(({lines}) => lines.flatMap((line) => line.split(' '))).sort()
}

/** Points: ISO 216 sizes and 8.5 × 11 in, of 72 pt, as a browser rounds them to its pixels. */
const papers = [
  {paper: 'A4', size: [595, 842]},
  {paper: 'A5', size: [420, 595]},
  {paper: 'Letter', size: [612, 792]},
] as const

describe.each(papers)('the cookbook on $paper', ({paper, size}) => {
  let pdf: ReadPdf
  let file: string

  beforeAll(async () => {
    file = printed(`cookbook-${paper}`, ['cookbook'], `paper: ${paper}, cards: A6`)
    pdf = await readPdf(file)
  }, patienceMilliseconds)

  /** Lines `title number` of the contents. */
  function contents(): readonly {readonly title: string; readonly page: number}[] {
    const last = pdf.bookmarks.find(({title}) => title === 'Breakfast')?.page ?? 0
    return pdf.pages.slice(1, last - 1).flatMap(({lines}) =>
      lines.flatMap((line) => {
        const [, title, page] = /^(\D.*?) (\d+)$/u.exec(line) ?? []
        return title === undefined ? [] : {title, page: Number(page)}
      }),
    )
  }

  function textOf(page: number): string {
    return pdf.pages[page - 1]?.lines.join(' ') ?? ''
  }

  test('has every page on its paper', () => {
    expect(pdf.pages.length).toBeGreaterThan(30)
    for (const page of pdf.pages) expect(page.size).toEqual(size)
  })

  test('says its name and language, and is tagged', () => {
    expect(pdf.title).toBe('Cookbook – The boathouse table')
    expect(pdf.language).toMatch(/^en\b/)
    expect(pdf.isTagged).toBe(true)
  })

  test('has a bookmark for every recipe, on the page that it names', () => {
    const titles = pdf.bookmarks.map(({title}) => title)
    expect(titles).toContain('Barley pot with lemon chicken')
    expect(titles).toContain('Index of ingredients')
    expect(pdf.bookmarks.length).toBeGreaterThan(40)
    for (const {title, page} of pdf.bookmarks) expect(textOf(page)).toContain(title)
  })

  test('names in its contents the pages on which things stand', () => {
    const lines = contents()
    // 26 recipes in 7 sections, 2 pages of text, 5 chapters.
    expect(lines.length).toBeGreaterThanOrEqual(40)
    for (const {title, page} of lines) {
      const marks = pdf.bookmarks.filter((mark) => mark.title === title)
      expect({title, pages: marks.map((mark) => mark.page)}).toEqual({title, pages: [page]})
    }
  })

  test('names in its index the pages that use an ingredient', () => {
    const from = pdf.bookmarks.find(({title}) => title === 'Index of ingredients')?.page ?? 0
    const index = pdf.pages
      .slice(from - 1)
      .flatMap(({lines}) => lines)
      .join(' ')
    for (const name of ['pearl barley', 'coconut milk, light', 'walnuts']) {
      const [, numbers = ''] = new RegExp(`${name} ((?:\\d+(?:, )?)+)`, 'u').exec(index) ?? []
      const pages = numbers.split(', ').filter(Boolean).map(Number)
      expect(pages.length).toBeGreaterThan(0)
      for (const page of pages) expect(textOf(page)).toContain(name)
    }
  })

  test('has its title and the section in the heads of its pages, and numbers below', () => {
    const page = pdf.bookmarks.find(({title}) => title === 'Lentil bowl with relish and feta')?.page
    const {lines = []} = pdf.pages[(page ?? 0) - 1] ?? {}
    const isLeft = (page ?? 0) % 2 === 0
    expect(lines[0]).toBe(isLeft ? 'The boathouse table' : 'Bowl')
    expect(lines.at(-1)).toBe(`${page}`)
    expect(pdf.pages[0]?.lines.at(-1)).not.toBe('1')
  })

  test('leaves no heading alone at the foot of a page', () => {
    const low = pdf.bookmarks.filter(({height}) => height < 70)
    expect(low).toEqual([])
  })

  test('gives a recipe its page, and a further one only for more than a line or two', () => {
    const starts = new Set(contents().map(({page}) => page))
    const recipes = contents().filter(({title}) => pdf.bookmarks.some((one) => one.title === title))
    const last = Math.max(...recipes.map(({page}) => page))
    const further = pdf.pages.slice(2, last).filter((_, index) => !starts.has(index + 3))
    for (const {lines} of further) expect(lines.length).toBeGreaterThan(6)
    expect(further.length).toBeLessThan(5)
  })

  test('links to nothing on the machine that printed it', () => {
    expect(localLinks(pdf)).toEqual([])
  })

  test('carries its fonts', () => {
    const descriptors = readFileSync(file, 'latin1')
      .split('endobj')
      .filter((object) => object.includes('/Type /FontDescriptor'))
    expect(descriptors.length).toBeGreaterThan(1)
    for (const descriptor of descriptors) expect(descriptor).toMatch(/\/FontFile[23]? /)
  })
})

test('the same cookbook gives the same bytes', () => {
  const sizes = 'paper: A4, cards: A6'
  const first = readFileSync(printed('first', ['list'], sizes))
  const second = readFileSync(printed('second', ['list'], sizes))
  expect(first.equals(second)).toBe(true)
})

test('a list has what the plan needs, on a sheet of its own to take along', async () => {
  const pdf = await readPdf(printed('list', ['list'], 'paper: Letter, cards: A6'))
  const [sheet = []] = pdf.pages.map(({lines}) => lines).filter(([first]) => first === 'To buy')
  expect(sheet.join(' ')).toContain('pearl barley')
  expect(sheet.join(' ')).not.toContain('Tick off')
  const text = pdf.pages.flatMap(({lines}) => lines).join(' ')
  expect(text).toContain('Sunday batch cooking')
  expect(text).toContain('pearl barley')
  expect(pdf.pages.flatMap(({links}) => links)).toContain(
    'https://boathouse.example/recipes/squash-soup/',
  )
  expect(localLinks(pdf)).toEqual([])
  for (const {size} of pdf.pages) expect(size).toEqual([612, 792])
})

/** A6 is 105 × 148 mm (ISO 216); the others are named by their inches. */
const cards = [
  {cards: 'A6', size: [298, 420], sheet: [595, 842]},
  {cards: '6x4', size: [432, 288], sheet: [595, 842]},
  {cards: '5x3', size: [360, 216], sheet: [842, 595]},
] as const

describe.each(cards)('cards of $cards', ({cards, size, sheet}) => {
  const sizes = `paper: A4, cards: ${cards}`
  let pdf: ReadPdf

  beforeAll(async () => {
    pdf = await readPdf(printed(`cards-${cards}`, ['cards'], sizes))
  }, patienceMilliseconds)

  test('are each on their size, front and back of every recipe', () => {
    // 26 recipes.
    expect(pdf.pages.length).toBeGreaterThanOrEqual(52)
    for (const page of pdf.pages) expect(page.size).toEqual(size)
    const titles = pdf.pages.map(({lines}) => lines[0])
    for (const title of ['Banana loaf', 'Griddled flatbreads', 'White bean base']) {
      expect(titles.filter((one) => one === title)).toHaveLength(2)
    }
    expect(localLinks(pdf)).toEqual([])
  })

  test('say on every face whose it is, a further one too', () => {
    const recipes = new Set(pdf.bookmarks.map(({title}) => title))
    expect(recipes).toContain('Salmon and brown rice bowl')
    for (const {lines} of pdf.pages) expect(recipes).toContain(lines[0])
  })

  test('leave no further card for a line or two', () => {
    const spare = pdf.pages.filter(({lines}) => lines.length < 4)
    expect(spare.map(({lines}) => lines)).toEqual([])
  })

  test('say all of a method', () => {
    const text = pdf.pages.flatMap(({lines}) => lines).join(' ')
    expect(text).toContain('Brown the mince')
    expect(text).toContain('Reheat to 74 °C (165 °F) all through')
  })

  test(
    'stand on sheets with not a word lost',
    async () => {
      const sheets = await readPdf(printed(`sheets-${cards}`, ['cards', '--sheets'], sizes))
      for (const page of sheets.pages) expect(page.size).toEqual(sheet)
      expect(words(sheets)).toEqual(words(pdf))
    },
    patienceMilliseconds,
  )
})

test('a browser that is not there is said, and nothing is written', () => {
  const {code, stderr} = scalepan.run(['print', 'list', '--content', content], {
    cwd: folder,
    env: {CHROMIUM_PATH: '/nowhere/chromium'},
  })
  expect(code).toBe(2)
  expect(stderr).toContain('There is no program at /nowhere/chromium, which CHROMIUM_PATH names')
})
