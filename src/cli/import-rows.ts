import type {promises as disk} from 'node:fs'
import {EnvironmentFailure} from '../cookbook/environment-failure.ts'
import {limits} from '../cookbook/limits.ts'
import {type MapRow, rowMapper} from '../food/import/mapped-row.ts'
import type {TableMapping} from '../food/import/table-mapping.ts'
import {nameKey} from '../food/name-key.ts'
import {refusal, rowsOf} from './download-rows.ts'

/** Rows are written in pieces of about so many characters. */
const pieceLength = 65_536

/**
 * Turns a published table into the text of a brought one, row by row: beside the ids no more than
 * a piece of it is in memory. Throws at the first row that cannot be understood, with its line.
 * @param file the download, UTF-8
 * @param out where the table goes; it holds a part of one when this throws
 * @returns how many foods there are
 */
export async function importRows(
  file: string,
  mapping: TableMapping,
  out: disk.FileHandle,
): Promise<number> {
  const ids = new Map<string, number>()
  let mapRow: MapRow | undefined
  let piece = `${mapping.columns.map(({column}) => column).join('\t')}\n`
  let bytes = 0
  const write = async (): Promise<void> => {
    bytes += Buffer.byteLength(piece)
    if (bytes > limits.tableFileBytes) throw tooLarge(file)
    await out.write(piece)
    piece = ''
  }
  for await (const row of rowsOf(file, mapping.delimiter)) {
    if (row.cells.length === 1 && row.cells[0] === '') continue
    if (!mapRow) {
      const mapper = rowMapper(mapping, row)
      if (!mapper.ok) throw refusal(file, row, mapper.expected)
      mapRow = mapper.value
      continue
    }
    const line = mapRow(row)
    if (!line.ok) throw refusal(file, row, line.expected)
    const id = nameKey(line.value.slice(0, line.value.indexOf('\t')))
    const [, name = ''] = line.value.split('\t', 2)
    if (id === '' || name === '') throw refusal(file, row, 'an id and a name in every row')
    const first = ids.get(id)
    if (first !== undefined) throw refusal(file, row, `an id of its own, not that of line ${first}`)
    ids.set(id, row.line)
    piece += `${line.value}\n`
    if (piece.length > pieceLength) await write()
  }
  await write()
  if (ids.size === 0) throw new EnvironmentFailure(`${file} has no rows of foods`)
  return ids.size
}

function tooLarge(file: string): EnvironmentFailure {
  return new EnvironmentFailure(
    `${file} gives a table of more than ${limits.tableFileBytes / 1e6} MB`,
    'Take the foods and columns out that the cookbook does not need',
  )
}
