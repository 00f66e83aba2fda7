/** I/O. R: reads every file of a folder, and does nothing with it. Argument: the folder. */

import {readdirSync, readFileSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'

const [, , folder = ''] = process.argv
for (const entry of readdirSync(folder, {recursive: true, withFileTypes: true})) {
  if (entry.isFile()) readFileSync(path.join(entry.parentPath, entry.name))
}
