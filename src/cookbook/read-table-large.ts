/** I/O: a table too large to be read whole; rows by id and by name, a few blocks in memory. */

import path from 'node:path'
import {broughtFood, rowMacros} from '../food/brought-table.ts'
import type {Food} from '../food/food.ts'
import {
  decodeEntry,
  entryBytes,
  idLimit,
  largeTableEnding,
  type RowEntry,
  wordBytes,
} from '../food/large/layout.ts'
import {
  type AlikeWord,
  type IndexedWord,
  readIndexedWord,
  WantedWords,
} from '../food/large/name-words.ts'
import {BestRows, RowRanking} from '../food/large/row-ranking.ts'
import type {Macros} from '../food/nearest-foods.ts'
import {type HeaderColumn, readHeader} from '../food/table-header.ts'
import {TableBlocks} from './read-table-blocks.ts'

/** Bytes read at once where a part is read from beginning to end. */
const pieceBytes = 262_144

/** Bytes of the longest row; names are a line of a packet. */
const longestRow = 65_536

/** A row that somebody may make a food of. */
export interface LargeRow {
  readonly macros: Macros
  readonly food: () => Food
}

/** A large table, open; whoever opens it closes it. */
export class LargeTable {
  /** First part of its foods' ids. */
  readonly name: string
  /** Its first line, without the line end. */
  readonly header: string
  readonly #columns: readonly HeaderColumn[]
  readonly #blocks: TableBlocks

  /** @param file `…/tables/<name>.foods` */
  static async open(file: string): Promise<LargeTable> {
    const blocks = await TableBlocks.open(file)
    try {
      const header = await lineAt(blocks, 0)
      const columns = readHeader({text: header, line: 1, start: 0}, [])
      if (!columns) throw blocks.damaged('its columns are not those of a table')
      return new LargeTable(path.basename(file, largeTableEnding), {blocks, header, columns})
    } catch (error) {
      await blocks.close()
      throw error
    }
  }

  private constructor(
    name: string,
    opened: {
      readonly blocks: TableBlocks
      readonly header: string
      readonly columns: readonly HeaderColumn[]
    },
  ) {
    this.name = name
    this.header = opened.header
    this.#columns = opened.columns
    this.#blocks = opened.blocks
  }

  /** How many foods there are. */
  get size(): number {
    return this.#blocks.layout.foods
  }

  /** The row with an id, without its line end. */
  async row(id: string): Promise<string | undefined> {
    const wanted = /^\d{1,10}$/.test(id) ? Number(id) : idLimit
    let [low, high] = [0, this.size]
    while (low < high) {
      const middle = Math.floor((low + high) / 2)
      const entry = await this.#entry(middle)
      if (entry.id === wanted) return String(wanted) === id ? this.#rowAt(entry) : undefined
      if (entry.id < wanted) low = middle + 1
      else high = middle
    }
    return undefined
  }

  /** Every row whose figures are per 100 g, and not per 100 ml, in the order of ids. */
  async *rowsByWeight(): AsyncIterable<LargeRow> {
    const millilitres = this.#columns.indexOf('serving_ml')
    let isHeader = true
    for await (const line of this.#lines(0, this.#blocks.layout.entries)) {
      if (!isHeader && (line.split('\t')[millilitres] ?? '') === '') {
        yield {
          macros: rowMacros({columns: this.#columns, line}),
          food: () => this.#food(line),
        }
      }
      isHeader = false
    }
  }

  /**
   * The foods whose name is most like what was written, best first. Words may have slips of the
   * pen, stand in another order, and be the beginning of longer ones.
   * @param most length of the answer at most
   */
  async find(written: string, most: number): Promise<readonly Food[]> {
    const wanted = new WantedWords(written)
    const {words, checks} = this.#blocks.layout
    for await (const line of this.#lines(words, checks)) {
      const indexed = readIndexedWord(line)
      if (!indexed) throw this.#blocks.damaged('its words cannot be read')
      wanted.consider(indexed)
    }
    const ranking = new RowRanking(this.size)
    for (const {share, words: alike} of wanted.wanted) {
      ranking.nextWord()
      for (const word of alike) await this.#count(ranking, word, share)
    }
    const found: Food[] = []
    for (const {row} of await this.#best(ranking, most)) {
      found.push(this.#food(await this.#rowAt(await this.#entry(row))))
    }
    return found
  }

  async close(): Promise<void> {
    await this.#blocks.close()
  }

  #food(line: string): Food {
    return broughtFood({columns: this.#columns, line}, this.name)
  }

  async #entry(row: number): Promise<RowEntry> {
    const from = this.#blocks.layout.entries + row * entryBytes
    return decodeEntry(await this.#blocks.bytes(from, from + entryBytes), 0)
  }

  async #rowAt({id, offset}: RowEntry): Promise<string> {
    const line = await lineAt(this.#blocks, offset)
    if (!line.startsWith(`${id}\t`)) throw this.#blocks.damaged('an id leads to another row')
    return line
  }

  async #count(ranking: RowRanking, word: AlikeWord, share: number): Promise<void> {
    const {postings, words} = this.#blocks.layout
    for await (const bytes of this.#pieces(postingsRange(postings, words, word))) {
      for (let at = 0; at < bytes.length; at += wordBytes) {
        ranking.count(bytes.readUInt32LE(at), word.likeness * share)
      }
    }
  }

  async #best(ranking: RowRanking, most: number) {
    const best = new BestRows(most)
    const {entries, postings} = this.#blocks.layout
    let row = 0
    for await (const bytes of this.#pieces({from: entries, to: postings})) {
      for (let at = 0; at < bytes.length; at += entryBytes, row++) {
        const score = ranking.scoreOf(row)
        if (score === undefined) continue
        best.add({row, score, nameLength: decodeEntry(bytes, at).nameLength})
      }
    }
    return best.best()
  }

  /** Pieces of whole entries and postings: their length is a multiple of both. */
  async *#pieces({from, to}: Range): AsyncIterable<Buffer> {
    const step = pieceBytes - (pieceBytes % entryBytes)
    for (let at = from; at < to; at += step) {
      yield await this.#blocks.bytes(at, Math.min(at + step, to))
    }
  }

  async *#lines(from: number, to: number): AsyncIterable<string> {
    let rest = Buffer.alloc(0)
    for (let at = from; at < to; at += pieceBytes) {
      const piece = await this.#blocks.bytes(at, Math.min(at + pieceBytes, to))
      const bytes = rest.length === 0 ? piece : Buffer.concat([rest, piece])
      const end = bytes.lastIndexOf(10) + 1
      if (end > 0) yield* bytes.toString('utf8', 0, end - 1).split('\n')
      rest = Buffer.from(bytes.subarray(end))
    }
  }
}

interface Range {
  readonly from: number
  readonly to: number
}

/** Bytes of a word's postings; the checksum holds, but the file may come from anybody. */
function postingsRange(postings: number, words: number, {from, count}: IndexedWord): Range {
  const start = postings + from * wordBytes
  return {from: start, to: Math.min(start + count * wordBytes, words)}
}

async function lineAt(blocks: TableBlocks, offset: number): Promise<string> {
  const {entries} = blocks.layout
  const bytes = await blocks.bytes(offset, Math.min(offset + longestRow, entries))
  const end = bytes.indexOf(10)
  if (end === -1) throw blocks.damaged('a row has no end')
  return bytes.toString('utf8', 0, end)
}
