/**
 * Packs bytes as RFC 1951 (DEFLATE) and RFC 1950 (zlib) have it, with the fixed codes. Written out,
 * because the packers of machines differ, and the same cookbook is to give the same bytes everywhere.
 * It looks for repetitions in two places only, the byte before and the row above, which is where a
 * drawing repeats itself.
 */
export function zlibPacked(bytes: Uint8Array, rowLength: number): Uint8Array {
  const bits = new BitWriter()
  bits.write(0x78, 8)
  bits.write(0x01, 8)
  // The last and only block, with the fixed codes.
  bits.write(1, 1)
  bits.write(1, 2)
  let at = 0
  while (at < bytes.length) {
    const before = repeated(bytes, at, 1)
    const above = repeated(bytes, at, rowLength)
    const length = Math.max(before, above)
    if (length >= shortestMatch) {
      writeMatch(bits, length, above > before ? rowLength : 1)
      at += length
    } else {
      writeCode(bits, bytes[at] ?? 0)
      at++
    }
  }
  writeCode(bits, endOfBlock)
  bits.toWholeByte()
  for (const byte of adler32(bytes)) bits.write(byte, 8)
  return bits.bytes()
}

const shortestMatch = 3
const longestMatch = 258
const endOfBlock = 256

function repeated(bytes: Uint8Array, at: number, distance: number): number {
  if (distance > at) return 0
  let length = 0
  while (
    length < longestMatch &&
    at + length < bytes.length &&
    bytes[at + length] === bytes[at + length - distance]
  ) {
    length++
  }
  return length
}

/** RFC 1951, 3.2.5: the first of each group of lengths and of distances; the rest are extra bits. */
const lengthStarts = [
  3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131,
  163, 195, 227, 258,
]
const distanceStarts = [
  1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049,
  3073, 4097, 6145, 8193, 12289, 16385, 24577,
]

function writeMatch(bits: BitWriter, length: number, distance: number): void {
  const code = lengthStarts.findLastIndex((start) => start <= length)
  writeCode(bits, 257 + code)
  const lengthBits = code < 8 || code === 28 ? 0 : (code - 4) >> 2
  bits.write(length - (lengthStarts[code] ?? 0), lengthBits)
  const distanceCode = distanceStarts.findLastIndex((start) => start <= distance)
  bits.writeReversed(distanceCode, 5)
  const distanceBits = distanceCode < 4 ? 0 : (distanceCode - 2) >> 1
  bits.write(distance - (distanceStarts[distanceCode] ?? 0), distanceBits)
}

/** The fixed codes of RFC 1951, 3.2.6. */
function writeCode(bits: BitWriter, symbol: number): void {
  if (symbol < 144) bits.writeReversed(0x30 + symbol, 8)
  else if (symbol < 256) bits.writeReversed(0x190 + symbol - 144, 9)
  else if (symbol < 280) bits.writeReversed(symbol - 256, 7)
  else bits.writeReversed(0xc0 + symbol - 280, 8)
}

/** RFC 1950, 9: the sum behind the packed bytes, highest byte first. */
function adler32(bytes: Uint8Array): readonly number[] {
  let [low, high] = [1, 0]
  for (const byte of bytes) {
    low = (low + byte) % 65521
    high = (high + low) % 65521
  }
  return [high >> 8, high & 0xff, low >> 8, low & 0xff]
}

/** Bits into bytes, the lowest first. */
class BitWriter {
  readonly #bytes: number[] = []
  #byte = 0
  #count = 0

  write(value: number, length: number): void {
    for (let bit = 0; bit < length; bit++) this.#bit((value >> bit) & 1)
  }

  /** Codes of the tables stand with their highest bit first. */
  writeReversed(value: number, length: number): void {
    for (let bit = length - 1; bit >= 0; bit--) this.#bit((value >> bit) & 1)
  }

  toWholeByte(): void {
    while (this.#count > 0) this.#bit(0)
  }

  bytes(): Uint8Array {
    return new Uint8Array(this.#bytes)
  }

  #bit(bit: number): void {
    this.#byte |= bit << this.#count
    this.#count++
    if (this.#count < 8) return
    this.#bytes.push(this.#byte)
    this.#byte = 0
    this.#count = 0
  }
}
