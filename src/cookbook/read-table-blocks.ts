/** I/O: bytes of a large table's file, each block held to its checksum when it is first read. */

import {promises as disk} from 'node:fs'
import {crc32} from 'node:zlib'
import {
  blockBytes,
  type Layout,
  readTrailer,
  trailerBytes,
  trailerText,
  wordBytes,
} from '../food/large/layout.ts'
import {diskReason, EnvironmentFailure} from './environment-failure.ts'

/** Blocks held in memory: 4 MB. */
const mostBlocks = 64

/** A large table's file, open. */
export class TableBlocks {
  readonly layout: Layout
  readonly #file: disk.FileHandle
  readonly #path: string
  /** Checksums of the blocks. */
  readonly #checks: DataView
  /** By number; the block used longest ago comes first. */
  readonly #blocks = new Map<number, Buffer>()

  /** @param file path, for messages too */
  static async open(file: string): Promise<TableBlocks> {
    try {
      const handle = await disk.open(file, 'r')
      try {
        return await TableBlocks.#checked(file, handle)
      } catch (error) {
        await handle.close()
        throw error
      }
    } catch (error) {
      if (error instanceof EnvironmentFailure) throw error
      throw new EnvironmentFailure(`Cannot read ${file}: ${diskReason(error)}`)
    }
  }

  static async #checked(file: string, handle: disk.FileHandle): Promise<TableBlocks> {
    const {size} = await handle.stat()
    const end = await read(handle, Math.max(0, size - trailerBytes), size)
    const layout = readTrailer(end.toString('latin1'), size)
    if (!layout) throw damaged(file, 'it is cut off, or no table of this version')
    const checks = await read(handle, layout.checks, size - trailerBytes)
    const sum = crc32(trailerText(layout), crc32(checks))
    if (sum !== layout.sum) throw damaged(file, 'its checksums were changed')
    return new TableBlocks(file, handle, layout, checks)
  }

  private constructor(path: string, file: disk.FileHandle, layout: Layout, checks: Buffer) {
    this.#path = path
    this.#file = file
    this.layout = layout
    this.#checks = new DataView(checks.buffer, checks.byteOffset, checks.byteLength)
  }

  /** Bytes from one offset up to another, both within what is under checksums. */
  async bytes(from: number, to: number): Promise<Buffer> {
    if (from < 0 || to < from || to > this.layout.checks) throw this.damaged('it leads nowhere')
    const first = Math.floor(from / blockBytes)
    const parts: Buffer[] = []
    for (let number = first; number * blockBytes < to; number++) {
      const block = await this.#block(number)
      const start = number * blockBytes
      parts.push(block.subarray(Math.max(0, from - start), Math.min(block.length, to - start)))
    }
    const [only] = parts
    return parts.length === 1 && only ? only : Buffer.concat(parts)
  }

  /** A failure that says what is wrong with the file and how to make it again. */
  damaged(why: string): EnvironmentFailure {
    return damaged(this.#path, why)
  }

  async close(): Promise<void> {
    await this.#file.close()
  }

  async #block(number: number): Promise<Buffer> {
    const held = this.#blocks.get(number)
    this.#blocks.delete(number)
    const block = held ?? (await this.#checkedBlock(number))
    this.#blocks.set(number, block)
    const [oldest] = this.#blocks.keys()
    if (this.#blocks.size > mostBlocks && oldest !== undefined) this.#blocks.delete(oldest)
    return block
  }

  async #checkedBlock(number: number): Promise<Buffer> {
    const from = number * blockBytes
    const block = await read(this.#file, from, Math.min(from + blockBytes, this.layout.checks))
    const sum = this.#checks.getUint32(number * wordBytes, true)
    if (crc32(block) !== sum) throw this.damaged(`bytes ${from} to ${from + block.length} changed`)
    return block
  }
}

async function read(handle: disk.FileHandle, from: number, to: number): Promise<Buffer> {
  const bytes = Buffer.alloc(to - from)
  let filled = 0
  while (filled < bytes.length) {
    const {bytesRead} = await handle.read(bytes, filled, bytes.length - filled, from + filled)
    if (bytesRead === 0) break
    filled += bytesRead
  }
  return bytes.subarray(0, filled)
}

function damaged(file: string, why: string): EnvironmentFailure {
  return new EnvironmentFailure(
    `${file} cannot be used: ${why}`,
    'Make it again from the download: scalepan foods import DOWNLOAD --as NAME',
  )
}
