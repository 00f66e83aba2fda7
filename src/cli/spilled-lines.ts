import {appendFileSync, readFileSync} from 'node:fs'
import path from 'node:path'

/** Characters of all buckets held before they go to the disk. */
const mostHeld = 16_777_216

/** Lines parted into buckets on the disk, so that one bucket at a time is in memory. */
export class SpilledLines {
  readonly #folder: string
  readonly #name: string
  /** Lines that are not on the disk yet, each with its line end. */
  readonly #held = new Map<number, string[]>()
  readonly #buckets = new Set<number>()
  #heldLength = 0

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
    const lines = this.#held.get(bucket)
    if (lines) lines.push(line)
    else this.#held.set(bucket, [line])
    this.#buckets.add(bucket)
    this.#heldLength += line.length
    if (this.#heldLength > mostHeld) this.#toDisk()
  }

  /** Buckets with lines, in ascending order. */
  buckets(): readonly number[] {
    return [...this.#buckets].toSorted((left, right) => left - right)
  }

  /** The lines of a bucket, in the order they came. */
  lines(bucket: number): readonly string[] {
    if (!this.#buckets.has(bucket)) return []
    this.#toDisk()
    return readFileSync(this.#file(bucket), 'utf8').slice(0, -1).split('\n')
  }

  #toDisk(): void {
    for (const [bucket, lines] of this.#held) {
      appendFileSync(this.#file(bucket), `${lines.join('\n')}\n`)
    }
    this.#held.clear()
    this.#heldLength = 0
  }

  #file(bucket: number): string {
    return path.join(this.#folder, `${this.#name}-${bucket}`)
  }
}
