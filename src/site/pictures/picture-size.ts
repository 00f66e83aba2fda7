import {ascii, uint16, uint16Little, uint32} from './bytes.ts'
import {isFrame, isJpeg, jpegSegments, orientationOf} from './jpeg.ts'

/** Pixels, as the picture is looked at. */
export interface PictureSize {
  readonly width: number
  readonly height: number
}

/**
 * How large a picture is, read from its bytes, so that a page keeps its place before it has come.
 * @returns undefined for what is no PNG, JPEG, GIF, WebP or SVG, or does not say
 */
export function pictureSize(bytes: Uint8Array): PictureSize | undefined {
  const size = rawSize(bytes)
  return size && size.width > 0 && size.height > 0 ? size : undefined
}

function rawSize(bytes: Uint8Array): PictureSize | undefined {
  // PNG (W3C, third edition), 11.2.1: the header chunk comes first.
  if (ascii(bytes, 1, 3) === 'PNG') return {width: uint32(bytes, 16), height: uint32(bytes, 20)}
  if (isJpeg(bytes)) return jpegSize(bytes)
  // GIF89a, 18: the logical screen.
  if (ascii(bytes, 0, 4) === 'GIF8') {
    return {width: uint16Little(bytes, 6), height: uint16Little(bytes, 8)}
  }
  if (ascii(bytes, 0, 4) === 'RIFF' && ascii(bytes, 8, 4) === 'WEBP') return webpSize(bytes)
  return svgSize(bytes)
}

function jpegSize(bytes: Uint8Array): PictureSize | undefined {
  const segments = jpegSegments(bytes)
  const frame = segments?.find(isFrame)
  if (segments === undefined || frame === undefined) return undefined
  const [height, width] = [uint16(bytes, frame.start + 5), uint16(bytes, frame.start + 7)]
  // From 5 on the picture lies on its side.
  return orientationOf(bytes, segments) >= 5 ? {width: height, height: width} : {width, height}
}

/** RFC 9649 (WebP): lossy, lossless and extended files each say it in their first chunk. */
function webpSize(bytes: Uint8Array): PictureSize | undefined {
  switch (ascii(bytes, 12, 4)) {
    case 'VP8 ':
      return {
        width: uint16Little(bytes, 26) & 0x3fff,
        height: uint16Little(bytes, 28) & 0x3fff,
      }
    case 'VP8L': {
      const bits = uint16Little(bytes, 21) + uint16Little(bytes, 23) * 0x10000
      return {width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1}
    }
    case 'VP8X':
      return {width: uint24Little(bytes, 24) + 1, height: uint24Little(bytes, 27) + 1}
    default:
      return undefined
  }
}

function uint24Little(bytes: Uint8Array, at: number): number {
  return uint16Little(bytes, at) + (bytes[at + 2] ?? 0) * 0x10000
}

/** The beginning of an SVG says its size, or the box it is drawn in. */
const longestSvgHead = 4000

function svgSize(bytes: Uint8Array): PictureSize | undefined {
  const head = new TextDecoder().decode(bytes.subarray(0, longestSvgHead))
  const [root] = /<svg\b[^>]*>/.exec(head) ?? []
  if (root === undefined) return undefined
  const length = (name: string) =>
    Number(new RegExp(`\\s${name}\\s*=\\s*["']\\s*([\\d.]+)(?:px)?\\s*["']`).exec(root)?.[1])
  const [width, height] = [length('width'), length('height')]
  if (width > 0 && height > 0) return {width, height}
  const box = /\sviewBox\s*=\s*["']([^"']*)["']/
    .exec(root)?.[1]
    ?.trim()
    .split(/[\s,]+/)
    .map(Number)
  const [, , boxWidth = 0, boxHeight = 0] = box ?? []
  return {width: boxWidth, height: boxHeight}
}
