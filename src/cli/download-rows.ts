import {createReadStream} from 'node:fs'
import {diskReason, EnvironmentFailure, errorCode} from '../cookbook/environment-failure.ts'
import {type DelimitedRow, delimitedReader} from '../food/import/delimited-rows.ts'

/** The rows of a delimited download, UTF-8, read as they are asked for. */
export async function* rowsOf(file: string, delimiter: string): AsyncIterable<DelimitedRow> {
  const reader = delimitedReader(delimiter)
  for await (const text of textsOf(file)) yield* reader.push(text)
  const open = reader.openQuote()
  if (open !== undefined) {
    throw new EnvironmentFailure(
      `${file}, line ${open}: a quote is never closed`,
      'The download is cut off, or its cells are parted by something else',
    )
  }
  const last = reader.end()
  if (last) yield last
}

/** A row by its headings. */
export interface HeadedRow<H extends string> {
  readonly row: DelimitedRow
  /** Blanks around it taken off. */
  readonly cell: (heading: H) => string
}

/** Rows of a CSV by the headings asked for; every row has as many cells as the header. */
export async function* headedRowsOf<const H extends string>(
  file: string,
  headings: readonly H[],
): AsyncIterable<HeadedRow<H>> {
  let width: number | undefined
  const places = new Map<H, number>()
  for await (const row of rowsOf(file, ',')) {
    const {cells} = row
    if (width === undefined) {
      width = cells.length
      for (const heading of headings) places.set(heading, cells.indexOf(heading))
      const missing = headings.find((heading) => !cells.includes(heading))
      if (missing !== undefined) throw refusal(file, row, `a column \`${missing}\``)
    } else if (cells.length !== width) {
      throw refusal(file, row, `\`${width}\` cells, not \`${cells.length}\``)
    } else yield {row, cell: (heading) => cells[places.get(heading) ?? -1]?.trim() ?? ''}
  }
}

/** A text in UTF-8, piece by piece. */
export async function* textsOf(file: string): AsyncIterable<string> {
  const decoder = new TextDecoder('utf-8', {fatal: true})
  for await (const bytes of chunksOf(file)) yield decoded(file, decoder, bytes)
  yield decoded(file, decoder)
}

async function* chunksOf(file: string): AsyncIterable<Uint8Array> {
  try {
    for await (const chunk of createReadStream(file)) yield chunk
  } catch (error) {
    if (errorCode(error) === undefined) throw error
    throw new EnvironmentFailure(`Cannot read ${file}: ${diskReason(error)}`)
  }
}

function decoded(file: string, decoder: TextDecoder, bytes?: Uint8Array): string {
  try {
    return decoder.decode(bytes, {stream: bytes !== undefined})
  } catch {
    throw new EnvironmentFailure(`${file} is no plain text in UTF-8`, 'Save it as UTF-8 first')
  }
}

/** A row that cannot be understood. */
export function refusal(
  file: string,
  {line}: Pick<DelimitedRow, 'line'>,
  expected: string,
): EnvironmentFailure {
  return new EnvironmentFailure(
    `${file}, line ${line}: expected ${expected}`,
    'Nothing was imported; the download may be cut off, or the mapping is that of another table',
  )
}
