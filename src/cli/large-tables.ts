import {realpath} from 'node:fs/promises'
import {LargeTable} from '../cookbook/read-table-large.ts'
import {largeTableFiles} from '../cookbook/read-table-rows.ts'
import {type FoodsFolder, isThere} from './foods-folder.ts'

/**
 * What is asked of each large table of a cookbook, one after the other.
 */
export async function fromLargeTables<T>(
  folder: FoodsFolder,
  ask: (table: LargeTable) => Promise<readonly T[]>,
): Promise<readonly T[]> {
  const answers: T[] = []
  if (!isThere(folder)) return answers
  for (const file of await largeTableFiles(await realpath(folder.content))) {
    const table = await LargeTable.open(file)
    try {
      answers.push(...(await ask(table)))
    } finally {
      await table.close()
    }
  }
  return answers
}
