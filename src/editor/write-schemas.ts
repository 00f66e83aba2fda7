/** I/O: the schemas of the package, written when it is compiled. */

import {promises as disk} from 'node:fs'
import path from 'node:path'
import {schemas} from './schemas.ts'

/** @param folder is made where it is missing */
export async function writeSchemas(folder: string): Promise<void> {
  await disk.mkdir(folder, {recursive: true})
  for (const [name, schema] of Object.entries(schemas)) {
    await disk.writeFile(path.join(folder, `${name}.json`), `${JSON.stringify(schema)}\n`)
  }
}
