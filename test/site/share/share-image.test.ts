import {inflateSync} from 'node:zlib'
import {describe, expect, test} from 'vitest'
import {pictureSize} from '../../../src/site/pictures/picture-size.ts'
import {Canvas} from '../../../src/site/share/canvas.ts'
import {glyphs, marks} from '../../../src/site/share/glyphs.ts'
import {shareImage} from '../../../src/site/share/share-image.ts'
import {canWrite, textWidth} from '../../../src/site/share/stroke-text.ts'
import {writeText} from '../../../src/site/share/write-text.ts'
import {at, computedOf, recipe, sampleSite, siteWith} from '../../templates/sample.ts'

/** The shades of a picture, row by row, unpacked by the zlib of Node.js. */
function shadesOf(content: string | Uint8Array): readonly (readonly number[])[] {
  const bytes = Buffer.from(content)
  const start = bytes.indexOf('IDAT')
  const rows = inflateSync(bytes.subarray(start + 4, start + 4 + bytes.readUInt32BE(start - 4)))
  return Array.from({length: 420}, (_, y) =>
    [...rows.subarray(y * 401 + 1, (y + 1) * 401)].flatMap((pair) => [pair >> 4, pair & 15]),
  )
}

/** How many pixels of some rows are the ink. */
function inked(shades: readonly (readonly number[])[], from: number, to: number): number {
  return shades
    .slice(from, to)
    .flat()
    .filter((shade) => shade === 15).length
}

const site = sampleSite({address: 'https://boathouse.example/'})

describe('the picture of a link', () => {
  const {path, content} = shareImage(site, computedOf(site, 'barley-pot'))
  const shades = shadesOf(content)

  test('is 800 × 420, and small enough to be fetched for a glance', () => {
    expect(path).toBe('recipes/barley-pot/share.png')
    expect(pictureSize(new Uint8Array(Buffer.from(content)))).toEqual({width: 800, height: 420})
    expect(content.length).toBeLessThan(30_000)
  })

  test('has its rim, its title and its figures, and nothing at the edges', () => {
    expect(inked(shades, 0, 18)).toBe(18 * 800)
    expect(inked(shades, 60, 220)).toBeGreaterThan(3000)
    expect(inked(shades, 280, 315)).toBeGreaterThan(1000)
    for (const row of shades.slice(40)) {
      expect([...row.slice(0, 40), ...row.slice(770)].every((shade) => shade === 0)).toBe(true)
    }
  })

  test('has no title where it has not its letters: half a name would be another', () => {
    const title = at('ほうとう')
    const {site: foreign, computed} = siteWith(recipe('houtou', {title, serves: at(2)}))
    const blank = shadesOf(shareImage(foreign, computed).content)
    expect(inked(blank, 40, 220)).toBe(0)
    expect(inked(blank, 280, 315)).toBeGreaterThan(0)
  })

  test('holds a long name in smaller letters', () => {
    const title = at('Slowly roasted shoulder of mutton with pearl barley, sour cherries and kale')
    const {site: long, computed} = siteWith(recipe('long', {title, serves: at(2)}))
    const rows = shadesOf(shareImage(long, computed).content)
    expect(rows.slice(40).every((row) => row.slice(770).every((shade) => shade === 0))).toBe(true)
    expect(inked(rows, 247, 253)).toBe(0)
  })
})

describe('letters of one stroke', () => {
  test('are there for the languages of the pages, accents and all', () => {
    for (const text of ['Crème brûlée', 'Käsespätzle mit Röstzwiebeln, süß', 'Ñandú 3½ – “ok”']) {
      expect([text, canWrite(text)]).toEqual([text, true])
    }
    expect(canWrite('борщ')).toBe(false)
  })

  test('stand side by side, each as wide as it is drawn', () => {
    const [one, two] = [textWidth('H', 100), textWidth('HH', 100)]
    // An H is 6 of 10 columns wide, and 2.4 stand between two.
    expect(one).toBeCloseTo(60, 6)
    expect(two).toBeCloseTo(144, 6)
    const canvas = new Canvas(200, 220)
    writeText(canvas, 'HH', {x: 10, y: 200}, {size: 100, thickness: 2})
    const inked = [...canvas.pixels.entries()].filter(([, shade]) => shade > 7)
    const columns = inked.map(([place]) => place % canvas.width)
    const rows = inked.map(([place]) => Math.floor(place / canvas.width))
    // A pen of two pixels reaches one to each side.
    expect([Math.min(...columns), Math.max(...columns)]).toEqual([9, 10 + 144])
    expect([Math.min(...rows), Math.max(...rows)]).toEqual([99, 200])
  })

  test('that reach over the edge are cut there, and leave the other edge alone', () => {
    const canvas = new Canvas(40, 40)
    writeText(canvas, 'MM', {x: 20, y: 30}, {size: 20, thickness: 3})
    writeText(canvas, 'M', {x: -10, y: 30}, {size: 20, thickness: 3})
    // A stem 20 high, the pen's half at both ends, and the softened pixels around it.
    const inColumn = (column: number) =>
      canvas.pixels.filter((shade, place) => shade > 0 && place % 40 === column).length
    expect([inColumn(10), inColumn(11), inColumn(12), inColumn(39)]).toEqual([0, 0, 0, 24])
  })

  test('are drawn within their rows', () => {
    for (const [sign, drawn] of [...glyphs, ...marks]) {
      const points = drawn.split(/[ /]/).filter((point) => point !== '')
      for (const point of points) {
        expect([sign, point, /^[0-9][0-9a-d]\*?$/.test(point)]).toEqual([sign, point, true])
      }
    }
  })
})
