/** Samples of red, green, blue and opacity, 0 to 255, row by row from the top left. */
export interface Raster {
  readonly width: number
  readonly height: number
  readonly data: Uint8ClampedArray<ArrayBuffer>
}

const channels = 4

/**
 * The same picture in fewer pixels: each is the mean of the area it covers, so that nothing
 * flickers and no line is lost.
 * @param width pixels, no more than the picture has; the height follows
 */
export function shrunk(picture: Raster, width: number): Raster {
  const height = Math.max(1, Math.round((picture.height * width) / picture.width))
  const narrow = new Uint8ClampedArray(width * picture.height * channels)
  average(picture.data, narrow, {
    from: picture.width,
    to: width,
    lines: picture.height,
    step: channels,
    fromLine: picture.width * channels,
    toLine: width * channels,
  })
  const data = new Uint8ClampedArray(width * height * channels)
  average(narrow, data, {
    from: picture.height,
    to: height,
    lines: width,
    step: width * channels,
    fromLine: channels,
    toLine: channels,
  })
  return {width, height, data}
}

/** How samples lie along one direction. */
interface Direction {
  /** Samples along it, before and after. */
  readonly from: number
  readonly to: number
  readonly lines: number
  /** From one sample to the next along it. */
  readonly step: number
  /** From one line to the next, before and after. */
  readonly fromLine: number
  readonly toLine: number
}

/** Takes means along one direction; a sample that two share counts for each by its part. */
function average(
  source: Uint8ClampedArray,
  target: Uint8ClampedArray,
  {from, to, lines, step, fromLine, toLine}: Direction,
): void {
  const ratio = from / to
  for (let index = 0; index < to; index++) {
    const [begin, end] = [index * ratio, Math.min(from, (index + 1) * ratio)]
    const [first, last] = [Math.floor(begin), Math.min(from, Math.ceil(end - 1e-9)) - 1]
    for (let line = 0; line < lines; line++) {
      for (let channel = 0; channel < channels; channel++) {
        const row = line * fromLine + channel
        let sum = 0
        for (let at = first; at <= last; at++) {
          const share = Math.min(at + 1, end) - Math.max(at, begin)
          sum += share * (source[row + at * step] ?? 0)
        }
        target[line * toLine + index * step + channel] = sum / (end - begin)
      }
    }
  }
}
