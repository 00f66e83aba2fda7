/** I/O: the way back from a command that writes into a cookbook. */

import {promises as disk} from 'node:fs'
import path from 'node:path'
import {errorCode} from '../cookbook/environment-failure.ts'

/** Changes that can be taken back; the oldest goes when another comes. */
const mostKept = 20

/** Hidden, so that nothing in it is read as part of the cookbook. */
const hidden = '.scalepan'

/**
 * Keeps files as they are, before a command writes them.
 * @param files paths below the cookbook folder
 * @returns the folder that holds them, each at its own path
 */
export async function keepBefore(folder: string, files: readonly string[]): Promise<string> {
  const all = path.join(folder, hidden, 'before')
  await disk.mkdir(all, {recursive: true})
  // What is kept is of this machine, not of the cookbook's history.
  await disk.writeFile(path.join(folder, hidden, '.gitignore'), '*\n')
  const numbers = (await disk.readdir(all)).map(Number).filter(Number.isSafeInteger)
  const number = await nextFree(all, Math.max(0, ...numbers) + 1)
  const kept = path.join(all, String(number))
  try {
    for (const file of files) {
      await disk.mkdir(path.dirname(path.join(kept, file)), {recursive: true})
      await disk.copyFile(path.join(folder, file), path.join(kept, file))
    }
  } catch (error) {
    await disk.rm(kept, {recursive: true})
    throw error
  }
  for (const old of numbers.filter((one) => one <= number - mostKept)) {
    await disk.rm(path.join(all, String(old)), {recursive: true})
  }
  return kept
}

/** Makes the folder; two commands at once get one each. */
async function nextFree(all: string, from: number): Promise<number> {
  for (let number = from; ; number++) {
    try {
      await disk.mkdir(path.join(all, String(number)))
      return number
    } catch (error) {
      if (errorCode(error) !== 'EEXIST') throw error
    }
  }
}
