import type {SourceImage} from '../../cookbook/sources.ts'
import {joined} from './bytes.ts'
import {isJpeg, jpegSegments} from './jpeg.ts'
import type {JpegCodec} from './jpeg-codec.ts'
import {pictureSize} from './picture-size.ts'
import {shrunk} from './shrink.ts'

/** Pixels: a telephone, a tablet or a sharp telephone, a sharp desk (common practice, no source). */
const widths = [1600, 800, 400] as const

/** A picture that is less than this much wider than a smaller one needs none. */
const leastRatio = 1.25

/** Where the smaller ones of a picture go, widest first; none for what is no wide JPEG. */
export function smallerPaths({path, bytes}: SourceImage): ReadonlyMap<number, string> {
  const size = isJpeg(bytes) ? pictureSize(bytes) : undefined
  if (size === undefined || isSmallerOne(path)) return new Map()
  const dot = path.lastIndexOf('.')
  return new Map(
    widths
      .filter((width) => size.width >= width * leastRatio)
      .map((width) => [width, `${path.slice(0, dot)}.${width}${path.slice(dot)}`]),
  )
}

/** `bowl.800.jpg` is a smaller one of `bowl.jpg`. */
function isSmallerOne(path: string): boolean {
  return /\.\d+\.[^./]+$/.test(path)
}

/**
 * Makes the smaller ones of a picture, with its colours and without what its camera wrote.
 * @returns undefined where the picture cannot be read
 */
export async function smallerPictures(
  image: SourceImage,
  paths: ReadonlyMap<number, string>,
  codec: JpegCodec,
): Promise<readonly SourceImage[] | undefined> {
  const whole = await codec.read(image.bytes)
  if (whole === undefined) return undefined
  const profile = colourProfile(image.bytes)
  const made: SourceImage[] = []
  let picture = whole
  for (const [width, path] of paths) {
    picture = shrunk(picture, width)
    const bytes = await codec.write(picture)
    made.push({path, bytes: joined([bytes.subarray(0, 2), ...profile, bytes.subarray(2)])})
  }
  return made
}

/** The segments that say which colours the numbers mean (ICC.1:2022, B.4: marker APP2). */
function colourProfile(bytes: Uint8Array): readonly Uint8Array[] {
  return (jpegSegments(bytes) ?? [])
    .filter(({marker}) => marker === 0xe2)
    .map(({start, end}) => bytes.subarray(start, end))
}
