import {appendFileSync, closeSync, openSync, readSync} from 'node:fs'
import path from 'node:path'

/** Bytes of a bucket that are held before they go to the disk. */
const heldBytes = 16_384

/** Buckets that hold bytes at once: 32 MB. */
const mostHeld = 2_048

/** Bytes of a bucket's file that are read at once. */
const pieceBytes = 1_048_576

interface Held {
  readonly bytes: Buffer
  filled: number
}

/** Lines parted into buckets on the disk, so that one bucket at a time is in memory. */
export class SpilledLines {
  readonly #folder: string
  readonly #name: string
  /** What is not on the disk yet, outside the heap: millions of short texts would keep its collector busy. */
  readonly #held = new Map<number, Held>()
  readonly #buckets = new Set<number>()

  /**
   * @param folder for the buckets' files, there already
   * @param name before the number of each bucket
   */
  constructor(folder: string, name: string) {
    this.#folder = folder
    this.#name = name
  }

  /** @param line without line ends */
  add(bucket: number, line: string): void {
    this.#buckets.add(bucket)
    const text = `${line}\n`
    // UTF-8 takes three bytes at most for one UTF-16 code unit.
    const most = 3 * text.length
    const held = this.#heldOf(bucket, most)
    held.filled += held.bytes.write(text, held.filled)
  }

  /** Buckets with lines, in ascending order. */
  buckets(): readonly number[] {
    return [...this.#buckets].toSorted((left, right) => left - right)
  }

  /** The lines of a bucket, in the order they came, read as they are asked for. */
  *lines(bucket: number): Iterable<string> {
    if (!this.#buckets.has(bucket)) return
    this.#toDisk(bucket)
    const file = openSync(this.#file(bucket), 'r')
    try {
      yield* linesOf(file)
    } finally {
      closeSync(file)
    }
  }

  /** The bytes of a bucket, with room for so many more. */
  #heldOf(bucket: number, room: number): Held {
    const held = this.#held.get(bucket)
    if (held && held.filled + room <= held.bytes.length) return held
    const [oldest] = this.#held.keys()
    if (held) this.#toDisk(bucket)
    else if (this.#held.size >= mostHeld && oldest !== undefined) this.#toDisk(oldest)
    const fresh = {bytes: Buffer.allocUnsafe(Math.max(heldBytes, room)), filled: 0}
    this.#held.set(bucket, fresh)
    return fresh
  }

  #toDisk(bucket: number): void {
    const held = this.#held.get(bucket)
    if (!held) return
    appendFileSync(this.#file(bucket), held.bytes.subarray(0, held.filled))
    this.#held.delete(bucket)
  }

  #file(bucket: number): string {
    return path.join(this.#folder, `${this.#name}-${bucket}`)
  }
}

function* linesOf(file: number): Iterable<string> {
  let bytes = Buffer.allocUnsafe(pieceBytes)
  let filled = 0
  for (;;) {
    const read = readSync(file, bytes, filled, bytes.length - filled, null)
    filled += read
    const end = bytes.subarray(0, filled).lastIndexOf(10) + 1
    if (end > 0) yield* bytes.toString('utf8', 0, end - 1).split('\n')
    if (read === 0) return
    // What is left is the beginning of a line.
    const next = end === 0 ? Buffer.allocUnsafe(2 * bytes.length) : bytes
    bytes.copy(next, 0, end, filled)
    filled -= end
    bytes = next
  }
}
