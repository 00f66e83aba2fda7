/** I/O: writes a generated cookbook into a folder. Arguments: number of recipes, folder. */

import {mkdirSync, writeFileSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
import {generatedCookbook} from '../cookbook/generate.ts'

const [size, folder = ''] = process.argv.slice(2)
for (const {path: name, text} of generatedCookbook(Number(size))) {
  const full = path.join(folder, name)
  mkdirSync(path.dirname(full), {recursive: true})
  writeFileSync(full, text)
}
