import type {Element} from 'hast'
import {withElements} from '../../../templates/parts/with-elements.ts'
import type {Page} from '../../../templates/site.ts'
import type {SourceImage} from '../../cookbook/sources.ts'
import {type PictureSize, pictureSize} from './picture-size.ts'

/** Sizes of the cookbook's pictures, by path in the site. */
export type PictureSizes = ReadonlyMap<string, PictureSize>

export function pictureSizes(images: readonly SourceImage[]): PictureSizes {
  return new Map(
    images.flatMap(({path, bytes}) => {
      const size = pictureSize(bytes)
      return size ? [[`images/${path}`, size] as const] : []
    }),
  )
}

/**
 * Tells a page how large its pictures are, so that nothing moves when they come, and which smaller
 * ones there are: `bowl.800.jpg` beside `bowl.jpg`, whatever its number says.
 */
export function withPlacedPictures({path, tree}: Page, sizes: PictureSizes): Page {
  if (sizes.size === 0) return {path, tree}
  const children = withElements(tree.children, (element) =>
    element.tagName === 'img' ? placed(element, path, sizes) : element,
  )
  return {path, tree: {...tree, children}}
}

/**
 * How wide a picture gets: as a line of text, which is 44rem of 18 px; in this attribute, 1rem is the
 * browser's own 16 px (HTML Living Standard, source size list).
 */
const shownWide = '(min-width: 50rem) 50rem, 100vw'

function placed(picture: Element, page: string, sizes: PictureSizes): Element {
  const {src} = picture.properties
  const path = typeof src === 'string' ? pathInSite(src, page) : ''
  const size = sizes.get(path)
  if (typeof src !== 'string' || size === undefined) return picture
  const {width = Math.round(size.width), height = Math.round(size.height)} = picture.properties
  const properties = {...picture.properties, width, height}
  const smaller = smallerOnes(path, size, sizes)
  if (smaller.length === 0) return {...picture, properties}
  const folder = src.slice(0, src.lastIndexOf('/') + 1)
  const name = (file: string) => encodeURIComponent(file.slice(file.lastIndexOf('/') + 1))
  const files = [...smaller, [path, size] as const]
  const srcSet = files
    .map(([file, {width}]) => `${folder}${name(file)} ${Math.round(width)}w`)
    .join(', ')
  return {...picture, properties: {...properties, srcSet, sizes: shownWide}}
}

/** Pictures named like this one with a number before the ending, narrowest first. */
function smallerOnes(path: string, {width}: PictureSize, sizes: PictureSizes) {
  const dot = path.lastIndexOf('.')
  const [stem, ending] = [path.slice(0, dot), path.slice(dot)]
  return [...sizes]
    .filter(
      ([other, size]) =>
        other.startsWith(`${stem}.`) &&
        other.endsWith(ending) &&
        /^\d+$/.test(other.slice(stem.length + 1, -ending.length)) &&
        size.width < width,
    )
    .toSorted(([, left], [, right]) => left.width - right.width)
}

/** The file in the site that an address on a page means. */
function pathInSite(address: string, page: string): string {
  const base = new URL(page, 'https://site.invalid/')
  return decodeURIComponent(new URL(address, base).pathname.slice(1))
}
