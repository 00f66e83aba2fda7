import {ascii, joined, uint32, uint32Little} from './bytes.ts'
import {
  imageEnd,
  isJpeg,
  type JpegSegment,
  jpegSegments,
  orientationOf,
  orientationSegment,
} from './jpeg.ts'

/**
 * A picture without what its camera or editor wrote into it: where it was taken, when, by what and
 * by whom. The image itself, its colours and how it is turned stay as they are. A file that cannot
 * be read through is passed on whole.
 */
export function withoutMetadata(bytes: Uint8Array): Uint8Array {
  if (isJpeg(bytes)) return plainJpeg(bytes)
  if (ascii(bytes, 1, 3) === 'PNG') return plainPng(bytes)
  if (ascii(bytes, 0, 4) === 'RIFF' && ascii(bytes, 8, 4) === 'WEBP') return plainWebp(bytes)
  return bytes
}

/**
 * APP1 (Exif, XMP), APP3 to APP13 (maker notes, IPTC), APP15 and comments go. APP0 (JFIF), APP2
 * (colour profile) and APP14 (how colours are coded) say how to show the image.
 */
function isAbout({marker}: JpegSegment): boolean {
  return marker === 0xe1 || (marker >= 0xe3 && marker <= 0xed) || marker === 0xef || marker === 0xfe
}

function plainJpeg(bytes: Uint8Array): Uint8Array {
  const segments = jpegSegments(bytes)
  if (segments === undefined) return bytes
  const orientation = orientationOf(bytes, segments)
  const kept = segments.filter((segment) => !isAbout(segment))
  const behind = segments.at(-1)?.end ?? 2
  return joined([
    bytes.subarray(0, 2),
    ...(orientation === 1 ? [] : [orientationSegment(orientation)]),
    ...kept.map(({start, end}) => bytes.subarray(start, end)),
    bytes.subarray(behind, imageEnd(bytes, behind)),
  ])
}

/** Chunks of texts, times and camera data (W3C, PNG third edition, 11.3). */
const aboutChunks: ReadonlySet<string> = new Set(['eXIf', 'tEXt', 'iTXt', 'zTXt', 'tIME'])

function plainPng(bytes: Uint8Array): Uint8Array {
  const parts = [bytes.subarray(0, 8)]
  let at = 8
  while (at + 12 <= bytes.length) {
    const end = at + 12 + uint32(bytes, at)
    if (end > bytes.length) return bytes
    if (!aboutChunks.has(ascii(bytes, at + 4, 4))) parts.push(bytes.subarray(at, end))
    at = end
  }
  return joined(parts)
}

/** Bits of the extended header that announce Exif and XMP (RFC 9649, 2.7). */
const announced = 0b1100

function plainWebp(bytes: Uint8Array): Uint8Array {
  const parts: Uint8Array[] = []
  let at = 12
  while (at + 8 <= bytes.length) {
    const name = ascii(bytes, at, 4)
    const length = uint32Little(bytes, at + 4)
    // A chunk of odd length is followed by a byte that fills it up.
    const end = at + 8 + length + (length % 2)
    if (end > bytes.length) return bytes
    if (name === 'VP8X') parts.push(withoutAnnouncement(bytes.subarray(at, end)))
    else if (name !== 'EXIF' && name !== 'XMP ') parts.push(bytes.subarray(at, end))
    at = end
  }
  const body = joined(parts)
  const head = bytes.slice(0, 12)
  new DataView(head.buffer).setUint32(4, body.length + 4, true)
  return joined([head, body])
}

function withoutAnnouncement(chunk: Uint8Array): Uint8Array {
  const plain = chunk.slice()
  plain[8] = (plain[8] ?? 0) & ~announced
  return plain
}
