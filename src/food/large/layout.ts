/**
 * The file that holds a table too large to be read whole, `tables/<name>.foods`. One after the
 * other: the table as text, rows in the order of their ids; an entry of fixed size for each row;
 * for each word of the names the numbers of the rows that have it; the words, with where their
 * numbers stand; a checksum for each block of all that; and the trailer, a line of text.
 */

/** Ending of its name. */
export const largeTableEnding = '.foods'

/** Bytes under one checksum, and read at once. */
export const blockBytes = 65_536

/** Ids are whole numbers below this. FoodData Central is at some three million. */
export const idLimit = 2 ** 32

/** Bytes of a checksum (CRC-32) and of a row's number, both little-endian. */
export const wordBytes = 4

/** Where the parts of the file begin, in bytes; the rows at 0. */
export interface Layout {
  readonly foods: number
  readonly entries: number
  readonly postings: number
  readonly words: number
  readonly checks: number
}

/** What is known of a row without reading it. */
export interface RowEntry {
  readonly id: number
  /** Of its first byte. */
  readonly offset: number
  /** In characters, at most 65,535: among names with the same words the shortest says least else. */
  readonly nameLength: number
}

export const entryBytes = 12

const longestNameLength = 0xffff

export function encodeEntry({id, offset, nameLength}: RowEntry): Uint8Array {
  const view = new DataView(new ArrayBuffer(entryBytes))
  view.setUint32(0, id, true)
  view.setUint32(4, offset % 2 ** 32, true)
  view.setUint16(8, Math.floor(offset / 2 ** 32), true)
  view.setUint16(10, Math.min(nameLength, longestNameLength), true)
  return new Uint8Array(view.buffer)
}

/** @param at offset of the entry in the bytes */
export function decodeEntry(bytes: Uint8Array, at: number): RowEntry {
  const view = new DataView(bytes.buffer, bytes.byteOffset + at, entryBytes)
  return {
    id: view.getUint32(0, true),
    offset: view.getUint16(8, true) * 2 ** 32 + view.getUint32(4, true),
    nameLength: view.getUint16(10, true),
  }
}

const digits = 13

const trailerPattern =
  /^scalepan foods 1: (?<foods>\d{13}) foods, entries (?<entries>\d{13}), postings (?<postings>\d{13}), words (?<words>\d{13}), checks (?<checks>\d{13}), (?<sum>[0-9a-f]{8})\n$/

/** The trailer without its own checksum. */
export function trailerText({foods, entries, postings, words, checks}: Layout): string {
  const [f, e, p, w, c] = [foods, entries, postings, words, checks].map((number) =>
    String(number).padStart(digits, '0'),
  )
  return `scalepan foods 1: ${f} foods, entries ${e}, postings ${p}, words ${w}, checks ${c}, `
}

/** The whole trailer. @param sum of the checksums and of `trailerText` */
export function withSum(text: string, sum: number): string {
  return `${text}${sum.toString(16).padStart(8, '0')}\n`
}

export const trailerBytes = withSum(
  trailerText({foods: 0, entries: 0, postings: 0, words: 0, checks: 0}),
  0,
).length

/**
 * @param fileBytes length of the whole file
 * @returns undefined where it is no trailer, or that of a file of another length
 */
export function readTrailer(
  text: string,
  fileBytes: number,
): (Layout & {readonly sum: number}) | undefined {
  const found = trailerPattern.exec(text)?.groups
  if (!found) return undefined
  const layout = {
    foods: Number(found.foods),
    entries: Number(found.entries),
    postings: Number(found.postings),
    words: Number(found.words),
    checks: Number(found.checks),
    sum: Number.parseInt(found.sum ?? '', 16),
  }
  const checks = Math.ceil(layout.checks / blockBytes) * wordBytes
  const isWhole =
    layout.postings === layout.entries + layout.foods * entryBytes &&
    layout.postings <= layout.words &&
    layout.words <= layout.checks &&
    layout.checks + checks + trailerBytes === fileBytes
  return isWhole ? layout : undefined
}
