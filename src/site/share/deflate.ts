/**
 * Packs bytes as RFC 1951 (DEFLATE) and RFC 1950 (zlib) have it, with the fixed codes. Written out,
 * because the packers of machines differ, and the same cookbook is to give the same bytes everywhere.
 * It looks for repetitions in two places only, the byte before and the row above, which is where a
 * drawing repeats itself.
 */
export function zlibPacked(bytes: Uint8Array, rowLength: number): Uint8Array {
  const bits = new BitWriter(bytes.length)
  bits.write(0x78, 8)
  bits.write(0x01, 8)
  // The last and only block, with the fixed codes.
  bits.write(1, 1)
  bits.write(1, 2)
  let at = 0
  while (at < bytes.length) {
    const before = repeated(bytes, at, 1)
    const above = before === longestMatch ? 0 : repeated(bytes, at, rowLength)
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
  const end = Math.min(bytes.length, at + longestMatch)
  let next = at
  while (next < end && bytes[next] === bytes[next - distance]) next++
  return next - at
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

/** The group of each length. */
const lengthCodes = Uint8Array.from({length: longestMatch + 1}, (_, length) =>
  Math.max(
    0,
    lengthStarts.findLastIndex((start) => start <= length),
  ),
)

function writeMatch(bits: BitWriter, length: number, distance: number): void {
  const code = lengthCodes[length] ?? 0
  writeCode(bits, 257 + code)
  const lengthBits = code < 8 || code === 28 ? 0 : (code - 4) >> 2
  bits.write(length - (lengthStarts[code] ?? 0), lengthBits)
  // A byte before, most of all, and else a row.
  const distanceCode =
    distance === 1 ? 0 : distanceStarts.findLastIndex((start) => start <= distance)
  bits.write(reversed(distanceCode, 5), 5)
  const distanceBits = distanceCode < 4 ? 0 : (distanceCode - 2) >> 1
  bits.write(distance - (distanceStarts[distanceCode] ?? 0), distanceBits)
}

/** A code of the tables, which stand with their highest bit first, as it is written. */
interface Code {
  readonly bits: number
  readonly length: number
}

/** The fixed codes of RFC 1951, 3.2.6, by symbol. */
const fixedCodes: readonly Code[] = Array.from({length: 288}, (_, symbol) => {
  if (symbol < 144) return {bits: reversed(0x30 + symbol, 8), length: 8}
  if (symbol < 256) return {bits: reversed(0x190 + symbol - 144, 9), length: 9}
  if (symbol < 280) return {bits: reversed(symbol - 256, 7), length: 7}
  return {bits: reversed(0xc0 + symbol - 280, 8), length: 8}
})

function writeCode(bits: BitWriter, symbol: number): void {
  const code = fixedCodes[symbol]
  if (code) bits.write(code.bits, code.length)
}

function reversed(code: number, length: number): number {
  let turned = 0
  for (let bit = 0; bit < length; bit++) turned = (turned << 1) | ((code >> bit) & 1)
  return turned
}

/** Bytes that can be summed before the sums outgrow 32 bits (RFC 1950 leaves it to arithmetic). */
const bytesBetweenRemainders = 3800

/** RFC 1950, 9: the sum behind the packed bytes, highest byte first. */
function adler32(bytes: Uint8Array): readonly number[] {
  let [low, high] = [1, 0]
  for (let start = 0; start < bytes.length; start += bytesBetweenRemainders) {
    const end = Math.min(bytes.length, start + bytesBetweenRemainders)
    for (let at = start; at < end; at++) {
      low += bytes[at] ?? 0
      high += low
    }
    low %= 65521
    high %= 65521
  }
  return [high >> 8, high & 0xff, low >> 8, low & 0xff]
}

/** Bits into bytes, the lowest first. */
class BitWriter {
  #bytes: Uint8Array
  #length = 0
  #pending = 0
  #count = 0

  /** @param expected bytes there will be room for at first */
  constructor(expected: number) {
    this.#bytes = new Uint8Array(expected + 64)
  }

  /** @param length at most 16 */
  write(value: number, length: number): void {
    this.#pending |= value << this.#count
    this.#count += length
    while (this.#count >= 8) {
      this.#push(this.#pending & 0xff)
      this.#pending >>>= 8
      this.#count -= 8
    }
  }

  toWholeByte(): void {
    if (this.#count > 0) this.write(0, 8 - this.#count)
  }

  bytes(): Uint8Array {
    return this.#bytes.slice(0, this.#length)
  }

  #push(byte: number): void {
    if (this.#length === this.#bytes.length) {
      const larger = new Uint8Array(2 * this.#length)
      larger.set(this.#bytes)
      this.#bytes = larger
    }
    this.#bytes[this.#length] = byte
    this.#length++
  }
}
