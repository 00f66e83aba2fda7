import {joined} from '../pictures/bytes.ts'
import {type Canvas, shades} from './canvas.ts'
import {zlibPacked} from './deflate.ts'

type Colour = readonly [red: number, green: number, blue: number]

/** A drawing as a PNG of 16 colours from paper to ink (W3C, PNG third edition). */
export function png(canvas: Canvas, paper: Colour, ink: Colour): Uint8Array {
  const {width, height, pixels} = canvas
  // Two pixels a byte; each row begins with how it is filtered: not at all.
  const rowLength = 1 + width / 2
  const rows = new Uint8Array(rowLength * height)
  for (let y = 0; y < height; y++) {
    for (let pair = 0; pair < width / 2; pair++) {
      const at = y * width + pair * 2
      rows[y * rowLength + 1 + pair] = ((pixels[at] ?? 0) << 4) | (pixels[at + 1] ?? 0)
    }
  }
  const palette = Array.from({length: shades}, (_, shade) =>
    paper.map((from, part) =>
      Math.round(from + ((ink[part] ?? 0) - from) * (shade / (shades - 1))),
    ),
  )
  return joined([
    new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    // Four bits a pixel, of a palette.
    chunk('IHDR', [...uint32Bytes(width), ...uint32Bytes(height), 4, 3, 0, 0, 0]),
    chunk('PLTE', palette.flat()),
    chunk('IDAT', zlibPacked(rows, rowLength)),
    chunk('IEND', []),
  ])
}

function chunk(name: string, content: ArrayLike<number>): Uint8Array {
  const body = joined([new TextEncoder().encode(name), Uint8Array.from(content)])
  return joined([
    new Uint8Array(uint32Bytes(content.length)),
    body,
    new Uint8Array(uint32Bytes(crc32(body))),
  ])
}

function uint32Bytes(value: number): readonly number[] {
  return [value >>> 24, (value >>> 16) & 0xff, (value >>> 8) & 0xff, value & 0xff]
}

/** PNG, annex D: the remainders of each byte, polynomial edb88320. */
const remainders = Array.from({length: 256}, (_, byte) => {
  let remainder = byte
  for (let bit = 0; bit < 8; bit++) {
    remainder = remainder & 1 ? (remainder >>> 1) ^ 0xedb88320 : remainder >>> 1
  }
  return remainder >>> 0
})

function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff
  for (const byte of bytes) sum = (remainders[(sum ^ byte) & 0xff] ?? 0) ^ (sum >>> 8)
  return (sum ^ 0xffffffff) >>> 0
}
