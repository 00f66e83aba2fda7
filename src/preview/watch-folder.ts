/** I/O: word of every change in a cookbook folder. */

import path from 'node:path'
import {watch} from 'chokidar'

/** Editors write a file in several steps, and save several at once. */
const settleMilliseconds = 50

/**
 * Calls once for every burst of changes below a folder, new folders too. Hidden files, where
 * editors keep their copies, are not looked at.
 * @returns ends the watch
 */
export async function watchFolder(
  folder: string,
  changed: () => void,
): Promise<() => Promise<void>> {
  const root = path.resolve(folder)
  const watcher = watch(root, {
    ignoreInitial: true,
    ignored: (file) => path.relative(root, file).split(path.sep).some(isHidden),
  })
  let timer: NodeJS.Timeout | undefined
  watcher.on('all', () => {
    clearTimeout(timer)
    timer = setTimeout(changed, settleMilliseconds)
  })
  // A folder that went away, or may not be read: the next reading of it says so.
  watcher.on('error', () => changed())
  await new Promise<void>((resolve) => {
    watcher.once('ready', resolve)
  })
  return async () => {
    clearTimeout(timer)
    await watcher.close()
  }
}

function isHidden(name: string): boolean {
  return /^\.(?!\.?$)/u.test(name)
}
