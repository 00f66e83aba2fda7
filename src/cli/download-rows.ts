import {createReadStream} from 'node:fs'
import {diskReason, EnvironmentFailure, errorCode} from '../cookbook/environment-failure.ts'
import {type DelimitedRow, delimitedReader} from '../food/import/delimited-rows.ts'

/** The rows of a delimited download, UTF-8, read as they are asked for. */
export async function* rowsOf(file: string, delimiter: string): AsyncIterable<DelimitedRow> {
  const reader = delimitedReader(delimiter)
  const decoder = new TextDecoder('utf-8', {fatal: true})
  for await (const bytes of chunksOf(file)) yield* reader.push(decoded(file, decoder, bytes))
  yield* reader.push(decoded(file, decoder))
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
export function refusal(file: string, {line}: DelimitedRow, expected: string): EnvironmentFailure {
  return new EnvironmentFailure(
    `${file}, line ${line}: expected ${expected}`,
    'Nothing was imported; the download may be cut off, or the mapping is that of another table',
  )
}
