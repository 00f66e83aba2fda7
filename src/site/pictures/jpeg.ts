import {ascii, uint16, uint16Little, uint32, uint32Little} from './bytes.ts'

/** A segment of a JPEG before its image data: ITU-T T.81 (1992), annex B. */
export interface JpegSegment {
  /** Second byte of the marker. */
  readonly marker: number
  readonly start: number
  /** Behind the last byte. */
  readonly end: number
}

const startOfScan = 0xda

export function isJpeg(bytes: Uint8Array): boolean {
  return bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff
}

/**
 * The segments before the image data, in order.
 * @returns undefined where the file is broken off or is not built so
 */
export function jpegSegments(bytes: Uint8Array): readonly JpegSegment[] | undefined {
  const segments: JpegSegment[] = []
  let at = 2
  while (at + 4 <= bytes.length) {
    // Any number of fill bytes may stand before a marker.
    while (bytes[at] === 0xff && bytes[at + 1] === 0xff) at++
    const marker = bytes[at + 1] ?? 0
    if (bytes[at] !== 0xff) return undefined
    if (marker === startOfScan) return segments
    const end = at + 2 + uint16(bytes, at + 2)
    if (end > bytes.length || end < at + 4) return undefined
    segments.push({marker, start: at, end})
    at = end
  }
  return undefined
}

/**
 * Where the image ends that begins at a place between its scans: behind its end marker. Telephones
 * put films and second pictures there.
 */
export function imageEnd(bytes: Uint8Array, from: number): number {
  let at = from
  while (at + 1 < bytes.length) {
    const marker = bytes[at + 1] ?? 0
    if (bytes[at] !== 0xff || marker === 0 || marker === 0xff || isRestart(marker)) at++
    else if (marker === 0xd9) return at + 2
    else at += 2 + uint16(bytes, at + 2)
  }
  return bytes.length
}

/** Stands within the image data, and is not followed by a length. */
function isRestart(marker: number): boolean {
  return marker >= 0xd0 && marker <= 0xd7
}

/** Frame headers, but for those that define tables (C4, C8, CC). */
export function isFrame({marker}: JpegSegment): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)
}

const exifName = 'Exif\0\0'
const orientationTag = 0x0112

/**
 * How the picture is turned to be looked at, 1 to 8 (CIPA DC-008, Exif 2.32, tag 0112); 1 where
 * nothing is said.
 */
export function orientationOf(bytes: Uint8Array, segments: readonly JpegSegment[]): number {
  const exif = segments.find(
    ({marker, start}) => marker === 0xe1 && ascii(bytes, start + 4, 6) === exifName,
  )
  if (exif === undefined) return 1
  const tiff = exif.start + 10
  const isLittle = ascii(bytes, tiff, 2) === 'II'
  const [short, long] = isLittle ? [uint16Little, uint32Little] : [uint16, uint32]
  const directory = tiff + long(bytes, tiff + 4)
  const entries = short(bytes, directory)
  for (let entry = 0; entry < entries; entry++) {
    const at = directory + 2 + entry * 12
    if (at + 12 > exif.end) return 1
    if (short(bytes, at) !== orientationTag) continue
    const orientation = short(bytes, at + 8)
    return orientation >= 1 && orientation <= 8 ? orientation : 1
  }
  return 1
}

/** An Exif segment that says how the picture is turned, and nothing else. */
export function orientationSegment(orientation: number): Uint8Array {
  const tiff = [
    ...[0x4d, 0x4d, 0, 42, 0, 0, 0, 8], // Big end first; the directory follows at once.
    ...[0, 1], // One entry:
    ...[1, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0], // the tag, one short number.
    ...[0, 0, 0, 0], // No directory behind it.
  ]
  const content = [...new TextEncoder().encode(exifName), ...tiff]
  return new Uint8Array([0xff, 0xe1, 0, content.length + 2, ...content])
}
