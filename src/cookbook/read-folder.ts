/** I/O: a cookbook folder on disk becomes texts and pictures in memory. */

import {readFileSync, realpathSync, statSync} from 'node:fs'
import path from 'node:path'
import {decodeText} from './decode-text.ts'
import {diskReason, EnvironmentFailure, errorCode} from './environment-failure.ts'
import {folderProblem} from './folder-rules.ts'
import {limits} from './limits.ts'
import {type ListedFile, type Listing, listFolder} from './list-folder.ts'
import {placeBetween, pointsOf} from './points.ts'
import type {Problem} from './problem.ts'
import {readNamedRows} from './read-table-rows.ts'
import type {ReadCookbook, SourceImage, SourceText} from './sources.ts'
import {svgFault} from './still-svg.ts'

/** Reads a cookbook folder that must have a recipe in it; see `readFolder`. */
export async function readCookbook(folder: string): Promise<ReadCookbook> {
  const read = await readFolder(folder)
  const hasRecipes = read.sources.texts.some(({path: file}) => file.startsWith('recipes/'))
  if (hasRecipes || read.problems.some(({severity}) => severity === 'error')) return read
  throw new EnvironmentFailure(
    `No recipes in ${folder}: expected Markdown files in ${path.join(folder, 'recipes')}`,
    'Write the first one with `scalepan new recipe "TITLE"`',
  )
}

/**
 * Reads a cookbook folder. What the writer can mend in a file is a problem; a folder or file the
 * system will not hand over is an `EnvironmentFailure` that names all of them.
 * @param folder as the writer typed it, for messages
 * @param named foods that are asked for beside those of the recipes, by id or name: of a table too
 *   large to be read whole, only rows that something names are read
 */
export async function readFolder(
  folder: string,
  named: readonly string[] = [],
): Promise<ReadCookbook> {
  const root = cookbookRoot(folder)
  const listing = listed(folder, root)
  const reading = new Reading(folder, root, [...listing.problems])
  const texts: SourceText[] = []
  for (const file of listing.texts) texts.push(...reading.text(file))
  // Their folder is the last of the texts, in path order.
  texts.push(...(await readNamedRows(root, texts, named)))
  const images: SourceImage[] = []
  for (const file of reading.withinAllImages(listing.images)) {
    images.push(...reading.image(file))
  }
  reading.end()
  return {sources: {texts, images}, problems: reading.problems}
}

function cookbookRoot(folder: string): string {
  const whatNext =
    'Start a cookbook with `scalepan new cookbook DIR`, or name its folder with `--content DIR`'
  try {
    const root = realpathSync(folder)
    if (statSync(root).isDirectory()) return root
  } catch (error) {
    if (errorCode(error) !== 'ENOENT') {
      throw new EnvironmentFailure(`Cannot read ${folder}: ${diskReason(error)}`, whatNext)
    }
    throw new EnvironmentFailure(`No cookbook here: the folder ${folder} is missing`, whatNext)
  }
  throw new EnvironmentFailure(`${folder} is a file, expected the folder of a cookbook`, whatNext)
}

function listed(folder: string, root: string): Listing {
  try {
    return listFolder(root)
  } catch (error) {
    const inside = error instanceof Error && 'path' in error ? String(error.path) : root
    const named = path.join(folder, path.relative(root, inside))
    throw new EnvironmentFailure(`Cannot list ${named}: ${diskReason(error)}`)
  }
}

/** Reads file by file and gathers what stood in the way. */
class Reading {
  readonly problems: Problem[]
  readonly #folder: string
  readonly #root: string
  readonly #unreadable: string[] = []

  constructor(folder: string, root: string, problems: Problem[]) {
    this.#folder = folder
    this.#root = root
    this.problems = problems
  }

  text(file: ListedFile): SourceText[] {
    const isTable = file.path.startsWith('tables/')
    const most = isTable ? limits.tableFileBytes : limits.textFileBytes
    const bytes = this.#bytes(file, most)
    if (bytes === undefined) return []
    const text = this.#decoded(file.path, bytes)
    return text === undefined ? [] : [{path: file.path, text}]
  }

  image(file: ListedFile): SourceImage[] {
    const isSvg = /\.svg$/i.test(file.path)
    const bytes = this.#bytes(file, isSvg ? limits.svgFileBytes : limits.imageFileBytes)
    if (bytes === undefined) return []
    if (isSvg) this.#tellWhatIsNotStill(file.path, bytes)
    return [{path: file.path.slice('images/'.length), bytes}]
  }

  #tellWhatIsNotStill(named: string, bytes: Uint8Array): void {
    const text = this.#decoded(named, bytes)
    const fault = text === undefined ? undefined : svgFault(text)
    if (text === undefined || fault === undefined) return
    this.problems.push(
      folderProblem('still-picture', {
        file: named,
        place: placeBetween(pointsOf(text), fault.start, fault.end),
        reason: `\`${named}\` holds \`${fault.what}\`, expected a picture of shapes, text and colours alone`,
        actual: fault.what,
        note: 'Save it as plain SVG, without scripts, links, animation, document type and whatever a drawing program adds for itself; or as PNG.',
      }),
    )
  }

  /** The pictures that fit into memory together: all, or none and a problem. */
  withinAllImages(images: readonly ListedFile[]): readonly ListedFile[] {
    const bytes = images.reduce((total, file) => total + file.bytes, 0)
    if (bytes <= limits.allImagesBytes) return images
    this.#tellSize('images', bytes, limits.allImagesBytes)
    return []
  }

  /** Throws when any file could not be read: a site without it would be another cookbook's. */
  end(): void {
    if (this.#unreadable.length > 0) throw new EnvironmentFailure(this.#unreadable.join('\n'))
  }

  #bytes(file: ListedFile, most: number): Uint8Array | undefined {
    if (file.bytes > most) return this.#tellSize(file.path, file.bytes, most)
    try {
      return readFileSync(path.join(this.#root, file.path))
    } catch (error) {
      const named = path.join(this.#folder, file.path)
      this.#unreadable.push(`Cannot read ${named}: ${diskReason(error)}`)
      return undefined
    }
  }

  #decoded(named: string, bytes: Uint8Array): string | undefined {
    const decoded = decodeText(bytes)
    if (decoded.kind === 'text') return decoded.text
    this.problems.push(
      folderProblem('utf8-text', {
        file: named,
        place: {start: decoded.at, end: decoded.at},
        reason: `\`${named}\` holds ${decoded.what}, expected plain text in UTF-8`,
        note: 'Save the file as UTF-8 text; a picture belongs in images/.',
      }),
    )
    return undefined
  }

  #tellSize(named: string, bytes: number, most: number): undefined {
    this.problems.push(
      folderProblem('file-size', {
        file: named,
        reason: `\`${named}\` has \`${megabytes(bytes)}\`, expected \`${megabytes(most)}\` at most`,
      }),
    )
  }
}

function megabytes(bytes: number): string {
  return `${(bytes / 1e6).toFixed(1)} MB`
}
