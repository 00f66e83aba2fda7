import {appendFileSync, readFileSync} from 'node:fs'
import path from 'node:path'

/** Bytes of a bucket that are held before they go to the disk. */
const heldBytes = 65_536

/** Buckets that hold bytes at once: 32 MB. Where there are more, all go to the disk. */
const mostHeld = 512

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

  /** The lines of a bucket, in the order they came. */
  lines(bucket: number): readonly string[] {
    if (!this.#buckets.has(bucket)) return []
    this.#toDisk(bucket)
    return readFileSync(this.#file(bucket), 'utf8').slice(0, -1).split('\n')
  }

  /** The bytes of a bucket, with room for so many more. */
  #heldOf(bucket: number, room: number): Held {
    const held = this.#held.get(bucket)
    if (held && held.filled + room <= held.bytes.length) return held
    if (held) this.#toDisk(bucket)
    else if (this.#held.size >= mostHeld) for (const each of this.#held.keys()) this.#toDisk(each)
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
