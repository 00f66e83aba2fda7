import type {Browser, Page} from 'playwright-core'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {loadJpegCodec} from '../../src/site/pictures/jpeg-codec.ts'
import {pictureSize} from '../../src/site/pictures/picture-size.ts'
import {smallerPictures} from '../../src/site/pictures/smaller-pictures.ts'
import {withoutMetadata} from '../../src/site/pictures/without-metadata.ts'
import {exif} from '../site/pictures/picture.ts'
import {openBrowser} from './browser.ts'

/** The browser draws and reads the pictures: it knows nothing of our readers. */

let browser: Browser
let page: Page

beforeAll(async () => {
  browser = await openBrowser()
  page = await browser.newPage()
})

afterAll(() => browser?.close())

/** A picture of 120 × 80, dark on its left, in the format asked for. */
async function drawn(type: string): Promise<Uint8Array> {
  const numbers = await page.evaluate(async (type) => {
    const canvas = Object.assign(document.createElement('canvas'), {width: 120, height: 80})
    const context = canvas.getContext('2d', {alpha: false})
    if (context) context.fillStyle = 'white'
    context?.fillRect(60, 0, 60, 80)
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, type))
    return [...new Uint8Array((await blob?.arrayBuffer()) ?? [])]
  }, type)
  return new Uint8Array(numbers)
}

/** What the browser makes of a picture: its size, and whether each corner is dark. */
async function seen(bytes: Uint8Array, type: string) {
  return page.evaluate(
    async ({numbers, type}) => {
      const image = new Image()
      image.src = URL.createObjectURL(new Blob([new Uint8Array(numbers)], {type}))
      await image.decode()
      const {naturalWidth: width, naturalHeight: height} = image
      const canvas = Object.assign(document.createElement('canvas'), {width, height})
      const context = canvas.getContext('2d')
      context?.drawImage(image, 0, 0)
      const corners = [
        [2, 2],
        [width - 3, 2],
        [2, height - 3],
        [width - 3, height - 3],
      ].map(([x = 0, y = 0]) => {
        const [red = 0, , , opacity = 0] = context?.getImageData(x, y, 1, 1).data ?? []
        return opacity > 200 && red < 60
      })
      return {width, height, corners}
    },
    {numbers: [...bytes], type},
  )
}

test.each(['image/png', 'image/jpeg', 'image/webp'])(
  'the browser sees the same %s with and without metadata, and the size we read',
  async (type) => {
    const bytes = await drawn(type)
    const before = await seen(bytes, type)
    expect(pictureSize(bytes)).toEqual({width: before.width, height: before.height})
    expect(before).toMatchObject({width: 120, height: 80})
    expect(await seen(withoutMetadata(bytes), type)).toEqual(before)
  },
)

test.each([1, 2, 3, 4, 5, 6, 7, 8])(
  'a photograph turned by Exif %i stays turned',
  async (turned) => {
    const plain = await drawn('image/jpeg')
    const bytes = new Uint8Array([...plain.slice(0, 2), ...exif(turned), ...plain.slice(2)])
    const before = await seen(bytes, 'image/jpeg')
    expect(pictureSize(bytes)).toEqual({width: before.width, height: before.height})
    const after = withoutMetadata(bytes)
    expect(new TextDecoder('latin1').decode(after)).not.toContain('boathouse')
    expect(await seen(after, 'image/jpeg')).toEqual(before)
  },
)

test.each([1, 3, 6, 8])(
  'a smaller photograph shows the same as one turned by Exif %i, and tells no place',
  async (turned) => {
    const plain = await drawn('image/jpeg')
    const bytes = new Uint8Array([...plain.slice(0, 2), ...exif(turned), ...plain.slice(2)])
    const whole = await seen(bytes, 'image/jpeg')
    const width = whole.width / 2
    const made = await smallerPictures(
      {path: 'bowl.jpg', bytes},
      new Map([[width, 'bowl.small.jpg']]),
      await loadJpegCodec(),
    )
    const [smaller] = made ?? []
    expect(smaller?.path).toBe('bowl.small.jpg')
    expect(new TextDecoder('latin1').decode(smaller?.bytes)).not.toContain('boathouse')
    const {corners} = whole
    const size = {width, height: whole.height / 2}
    expect(await seen(smaller?.bytes ?? new Uint8Array(), 'image/jpeg')).toEqual({...size, corners})
  },
)

test('what is no picture of the codec is said, not thrown', async () => {
  const codec = await loadJpegCodec()
  const bytes = new Uint8Array([0xff, 0xd8, 0xff, 0xd9])
  expect(await smallerPictures({path: 'x.jpg', bytes}, new Map(), codec)).toBeUndefined()
})
