/** I/O: of tables too large to be read whole, the rows that a cookbook names. */

import {promises as disk} from 'node:fs'
import path from 'node:path'
import {largeTableEnding} from '../food/large/layout.ts'
import {lookAt} from './look-at.ts'
import {LargeTable} from './read-table-large.ts'
import type {SourceText} from './sources.ts'

/** Names that a table can be imported as; another file of that ending is none of ours. */
const tableName = /^[a-z0-9][a-z0-9-]*$/

/**
 * Files of the cookbook's large tables, in name order.
 * @param folder the cookbook's, its own links resolved
 */
export async function largeTableFiles(folder: string): Promise<readonly string[]> {
  if (lookAt(folder, 'tables').kind !== 'folder') return []
  const names = (await disk.readdir(path.join(folder, 'tables'))).toSorted()
  const files: string[] = []
  for (const name of names) {
    if (!name.endsWith(largeTableEnding)) continue
    if (!tableName.test(path.basename(name, largeTableEnding))) continue
    // A link out of the folder is not followed.
    const found = lookAt(folder, `tables/${name}`)
    if (found.kind === 'file') files.push(path.join(folder, 'tables', name))
  }
  return files
}

/**
 * The rows that texts name as `<table>/<id>`, each table's with its header as a text of its own.
 * Nothing else of the tables is read, and a table that nobody names is not opened.
 * @param folder the cookbook's, its own links resolved
 * @param named further texts that may name foods
 */
export async function readNamedRows(
  folder: string,
  texts: readonly SourceText[],
  named: readonly string[] = [],
): Promise<readonly SourceText[]> {
  const read: SourceText[] = []
  for (const file of await largeTableFiles(folder)) {
    const name = path.basename(file, largeTableEnding)
    const ids = namedIds(name, [...named, ...texts.filter(mayNameFoods).map(({text}) => text)])
    if (ids.length > 0) {
      read.push({path: `tables/${name}${largeTableEnding}`, text: await rowsText(file, ids)})
    }
  }
  return read
}

function mayNameFoods({path: file}: SourceText): boolean {
  return file === 'foods.yaml' || file.startsWith('recipes/')
}

/** Ids behind the table's name, wherever they stand: one that was not meant costs a row. */
function namedIds(table: string, texts: readonly string[]): readonly string[] {
  const pattern = new RegExp(`(?<![\\w/-])${table}/(\\d{1,10})(?![\\w/-])`, 'gi')
  const ids = new Set<string>()
  for (const text of texts) {
    for (const [, id = ''] of text.matchAll(pattern)) ids.add(id)
  }
  return [...ids].toSorted((left, right) => Number(left) - Number(right))
}

async function rowsText(file: string, ids: readonly string[]): Promise<string> {
  const table = await LargeTable.open(file)
  try {
    const lines = [table.header]
    for (const id of ids) {
      const row = await table.row(id)
      if (row !== undefined) lines.push(row)
    }
    return `${lines.join('\n')}\n`
  } finally {
    await table.close()
  }
}
