import {closeSync, mkdirSync, openSync} from 'node:fs'
import path from 'node:path'
import {LargeTableWriter} from '../src/cli/large-table-writer.ts'
import {temporaryFolder} from './temporary-folder.ts'

/** A food of a large table that a test writes. */
export interface LargeFood {
  readonly id: number
  readonly name: string
  /** kcal, protein, fat, carbohydrate: per 100 g. */
  readonly figures?: readonly [number, number, number, number]
  readonly serving?: string
}

/** Writes `<name>.foods` into a folder of its own. @param foods in the order of ids */
export async function writeLargeTable(
  foods: readonly LargeFood[],
  name = 'packets',
): Promise<string> {
  const folder = temporaryFolder()
  const file = path.join(folder, `${name}.foods`)
  const work = path.join(folder, 'work')
  mkdirSync(work)
  const out = openSync(file, 'wx')
  const header = 'id\tname\tserving_g\tserving_ml\tenergy_kcal\tprotein_g\tfat_g\tcarbohydrate_g'
  const writer = new LargeTableWriter(out, work, header)
  for (const {id, name, figures = [400, 10, 10, 60], serving = '\t'} of foods) {
    writer.add({id, name, line: [id, name, serving, ...figures].join('\t')})
  }
  await writer.end()
  writer.close()
  closeSync(out)
  return file
}
