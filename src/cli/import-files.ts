import {randomUUID} from 'node:crypto'
import {promises as disk, existsSync} from 'node:fs'
import path from 'node:path'
import {diskReason, EnvironmentFailure, errorCode} from '../cookbook/environment-failure.ts'

export async function mappingText(file: string): Promise<string> {
  try {
    return await disk.readFile(file, 'utf8')
  } catch (error) {
    throw new EnvironmentFailure(
      `Cannot read the mapping ${file}: ${diskReason(error)}`,
      'scalepan help foods import shows what a mapping looks like; give yours with --map FILE',
    )
  }
}

/** Throws where a table of the name stands in a file of the other kind. */
export function refuseSecond(other: string): void {
  if (!existsSync(other)) return
  throw new EnvironmentFailure(
    `${other} is there already, and one name means one table`,
    'Choose another name with --as, or delete that file first',
  )
}

/** Writes a file beside its place and moves it there when it is whole; else leaves nothing. */
export async function wholeFile<T>(
  target: string,
  write: (out: disk.FileHandle) => Promise<T>,
): Promise<T> {
  const beside = besideOf(target)
  try {
    await disk.mkdir(path.dirname(target), {recursive: true})
    const out = await disk.open(beside, 'wx')
    let result: T
    try {
      result = await write(out)
      await out.sync()
    } finally {
      await out.close()
    }
    await disk.rename(beside, target)
    return result
  } catch (error) {
    await disk.rm(beside, {force: true})
    if (errorCode(error) === undefined) throw error
    throw new EnvironmentFailure(`Cannot write ${target}: ${diskReason(error)}`)
  }
}

/** `wholeFile` with an empty folder beside it for what has to be sorted, gone afterwards. */
export async function withWorkFolder<T>(
  target: string,
  write: (out: number, work: string) => Promise<T>,
): Promise<T> {
  return await wholeFile(target, async (out) => {
    const work = besideOf(target)
    await disk.mkdir(work)
    try {
      return await write(out.fd, work)
    } finally {
      await disk.rm(work, {recursive: true, force: true})
    }
  })
}

/** A hidden name, which no build reads. */
function besideOf(target: string): string {
  return path.join(path.dirname(target), `.${path.basename(target)}.${randomUUID()}`)
}
