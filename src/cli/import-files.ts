import {randomUUID} from 'node:crypto'
import {promises as disk, existsSync, rmSync} from 'node:fs'
import path from 'node:path'
import process from 'node:process'
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
  return await wholeBesides(target, {write, besides: [besideOf(target)]})
}

/** `wholeFile` with an empty folder beside it for what has to be sorted, gone afterwards. */
export async function withWorkFolder<T>(
  target: string,
  write: (out: number, work: string) => Promise<T>,
): Promise<T> {
  const work = besideOf(target)
  return await wholeBesides(target, {
    besides: [besideOf(target), work],
    async write(out) {
      await disk.mkdir(work)
      return await write(out.fd, work)
    },
  })
}

interface Writing<T> {
  readonly write: (out: disk.FileHandle) => Promise<T>
  /** The file while it grows, and what else is gone in the end. */
  readonly besides: readonly [string, ...string[]]
}

async function wholeBesides<T>(target: string, {write, besides}: Writing<T>): Promise<T> {
  const [growing] = besides
  const remove = (): void => {
    for (const each of besides) rmSync(each, {recursive: true, force: true})
  }
  const forget = removedWhenStopped(remove)
  try {
    await disk.mkdir(path.dirname(target), {recursive: true})
    const out = await disk.open(growing, 'wx')
    let result: T
    try {
      result = await write(out)
      await out.sync()
    } finally {
      await out.close()
    }
    await disk.rename(growing, target)
    return result
  } catch (error) {
    if (errorCode(error) === undefined) throw error
    throw new EnvironmentFailure(`Cannot write ${target}: ${diskReason(error)}`)
  } finally {
    remove()
    forget()
  }
}

/** Exit codes of a program that a signal stopped: 128 and its number. */
const stopped = {SIGINT: 130, SIGTERM: 143} as const

/** Whoever stops an import of minutes does not want to find its hundreds of megabytes. */
function removedWhenStopped(remove: () => void): () => void {
  const forgets = (['SIGINT', 'SIGTERM'] as const).map((signal) => {
    const stop = (): void => {
      remove()
      process.exit(stopped[signal])
    }
    process.once(signal, stop)
    return () => process.off(signal, stop)
  })
  return () => {
    for (const forget of forgets) forget()
  }
}

/** A hidden name, which no build reads. */
function besideOf(target: string): string {
  return path.join(path.dirname(target), `.${path.basename(target)}.${randomUUID()}`)
}
