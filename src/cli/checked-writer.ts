import {closeSync, openSync, readSync, writeSync} from 'node:fs'
import {crc32} from 'node:zlib'
import {blockBytes} from '../food/large/layout.ts'

/** Writes a file from beginning to end in blocks, and keeps the checksum of each. */
export class CheckedWriter {
  readonly #file: number
  readonly #block = Buffer.alloc(blockBytes)
  readonly #sums: number[] = []
  #filled = 0
  #written = 0

  /** @param file descriptor of a file open for writing */
  constructor(file: number) {
    this.#file = file
  }

  /** Bytes so far. */
  get offset(): number {
    return this.#written + this.#filled
  }

  write(bytes: Uint8Array): void {
    for (let at = 0; at < bytes.length; ) {
      const part = bytes.subarray(at, at + blockBytes - this.#filled)
      this.#block.set(part, this.#filled)
      this.#filled += part.length
      at += part.length
      if (this.#filled === blockBytes) this.#endBlock()
    }
  }

  writeText(text: string): void {
    this.write(Buffer.from(text))
  }

  /** Puts the bytes of another file behind what is there. */
  writeFile(path: string): void {
    const from = openSync(path, 'r')
    try {
      const piece = Buffer.alloc(blockBytes)
      for (let read = readSync(from, piece); read > 0; read = readSync(from, piece)) {
        this.write(piece.subarray(0, read))
      }
    } finally {
      closeSync(from)
    }
  }

  /** Ends the last block. @returns the checksums, in the order of the blocks */
  end(): readonly number[] {
    if (this.#filled > 0) this.#endBlock()
    return this.#sums
  }

  #endBlock(): void {
    const block = this.#block.subarray(0, this.#filled)
    this.#sums.push(crc32(block))
    for (let at = 0; at < block.length; ) at += writeSync(this.#file, block, at)
    this.#written += this.#filled
    this.#filled = 0
  }
}
