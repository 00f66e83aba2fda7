import {closeSync, openSync, writeFileSync, writeSync} from 'node:fs'
import path from 'node:path'
import {setImmediate as nextTurn} from 'node:timers/promises'
import {crc32} from 'node:zlib'
import {encodeEntry, trailerText, withSum, wordBytes} from '../food/large/layout.ts'
import {indexedWordText, nameWords} from '../food/large/name-words.ts'
import {CheckedWriter} from './checked-writer.ts'
import {SpilledLines} from './spilled-lines.ts'

/** Words are gathered in so many parts, one in memory at a time. */
const wordBuckets = 64

/** A food on its way into the file. */
export interface WrittenFood {
  readonly id: number
  readonly name: string
  /** Its row, without the line end. */
  readonly line: string
}

/** Writes a large table's file (src/food/large/layout.ts), foods in the order of their ids. */
export class LargeTableWriter {
  readonly #file: number
  readonly #out: CheckedWriter
  readonly #entriesPath: string
  readonly #entriesFile: number
  readonly #entries: CheckedWriter
  readonly #wordsPath: string
  readonly #rowsOfWords: SpilledLines
  #foods = 0

  /**
   * @param file descriptor of an empty file, open for writing
   * @param folder for what is gathered beside it; the caller removes it
   */
  constructor(file: number, folder: string, header: string) {
    this.#file = file
    this.#out = new CheckedWriter(file)
    this.#entriesPath = path.join(folder, 'entries')
    this.#entriesFile = openSync(this.#entriesPath, 'wx')
    this.#entries = new CheckedWriter(this.#entriesFile)
    this.#wordsPath = path.join(folder, 'words')
    this.#rowsOfWords = new SpilledLines(folder, 'word')
    this.#out.writeText(`${header}\n`)
  }

  add({id, name, line}: WrittenFood): void {
    this.#entries.write(encodeEntry({id, offset: this.#out.offset, nameLength: name.length}))
    this.#out.writeText(`${line}\n`)
    for (const word of nameWords(name)) {
      this.#rowsOfWords.add(crc32(word) % wordBuckets, `${word}\t${this.#foods}`)
    }
    this.#foods++
  }

  /** @returns how many foods there are */
  async end(): Promise<number> {
    const entries = this.#out.offset
    this.#entries.end()
    this.#out.writeFile(this.#entriesPath)
    const postings = this.#out.offset
    await this.#writePostings()
    const words = this.#out.offset
    this.#out.writeFile(this.#wordsPath)
    const checks = this.#out.offset
    const sums = littleEndian(this.#out.end())
    const trailer = trailerText({foods: this.#foods, entries, postings, words, checks})
    const text = withSum(trailer, crc32(trailer, crc32(sums)))
    for (let at = 0; at < sums.length; ) at += writeSync(this.#file, sums, at)
    writeSync(this.#file, text)
    return this.#foods
  }

  /** Frees what is open; harmless after `end`. */
  close(): void {
    closeSync(this.#entriesFile)
  }

  /** The numbers of the rows of each word; the words go beside, to stand behind them. */
  async #writePostings(): Promise<void> {
    let from = 0
    writeFileSync(this.#wordsPath, '')
    for (const bucket of this.#rowsOfWords.buckets()) {
      // Lets a signal stop it.
      await nextTurn()
      const rows = new Map<string, number[]>()
      for (const line of this.#rowsOfWords.lines(bucket)) {
        const tab = line.indexOf('\t')
        const word = line.slice(0, tab)
        const row = Number(line.slice(tab + 1))
        const others = rows.get(word)
        if (others) others.push(row)
        else rows.set(word, [row])
      }
      const words = [...rows].toSorted(([left], [right]) => (left < right ? -1 : 1))
      let text = ''
      for (const [word, numbers] of words) {
        text += indexedWordText({word, from, count: numbers.length})
        this.#out.write(littleEndian(numbers))
        from += numbers.length
      }
      writeFileSync(this.#wordsPath, text, {flag: 'a'})
    }
  }
}

/** Whole numbers below 2³², as the file has them on every machine. */
function littleEndian(numbers: readonly number[]): Buffer {
  const bytes = Buffer.alloc(numbers.length * wordBytes)
  for (const [index, number] of numbers.entries()) bytes.writeUInt32LE(number, index * wordBytes)
  return bytes
}
