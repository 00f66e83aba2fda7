/** Pictures put together byte by byte, as their standards have them. */

const text = (words: string) => [...new TextEncoder().encode(words)]

function segment(marker: number, content: readonly number[]): readonly number[] {
  const length = content.length + 2
  return [0xff, marker, length >> 8, length & 0xff, ...content]
}

/** An Exif segment, little end first, with an orientation and the name of a place. */
export function exif(orientation: number): readonly number[] {
  return segment(0xe1, [
    ...text('Exif\0\0II'),
    ...[42, 0, 8, 0, 0, 0],
    ...[1, 0],
    ...[0x12, 1, 3, 0, 1, 0, 0, 0, orientation, 0, 0, 0],
    ...[0, 0, 0, 0],
    ...text('GPS: the boathouse'),
  ])
}

/** A JPEG of 300 × 200 whose image data is not worth looking at. */
export function jpeg(...about: readonly (readonly number[])[]): Uint8Array {
  return new Uint8Array([
    ...[0xff, 0xd8],
    ...segment(0xe0, text('JFIF\0 (kept)')),
    ...about.flat(),
    ...segment(0xe2, text('ICC_PROFILE (kept)')),
    ...segment(0xfe, text('a comment that goes')),
    ...segment(0xc2, [8, 0, 200, 1, 44, 3, 0, 0, 0]),
    ...segment(0xda, [1, 2, 3]),
    ...[0x11, 0x22, 0xff, 0x00, 0x33, 0xff, 0xd9],
  ])
}

function chunk(name: string, content: readonly number[]): readonly number[] {
  return [0, 0, 0, content.length, ...text(name), ...content, 1, 2, 3, 4]
}

export function png(): Uint8Array {
  return new Uint8Array([
    ...[0x89, ...text('PNG\r\n'), 0x1a, 0x0a],
    ...chunk('IHDR', [0, 0, 1, 44, 0, 0, 0, 200, 8, 2, 0, 0, 0]),
    ...chunk('tEXt', text('Location\0the boathouse')),
    ...chunk('eXIf', text('camera')),
    ...chunk('IDAT', [7, 7, 7]),
    ...chunk('IEND', []),
  ])
}

export {text}
