/** I/O: which files of a cookbook folder are read, in a fixed order, and which are left and why. */

import {readdirSync} from 'node:fs'
import path from 'node:path'
import {folderProblem} from './folder-rules.ts'
import {limits} from './limits.ts'
import {type Looked, lookAt} from './look-at.ts'
import type {Problem} from './problem.ts'

/** A file to read. */
export interface ListedFile {
  /** Relative to the cookbook folder, with `/`. */
  readonly path: string
  readonly bytes: number
}

export interface Listing {
  /** Texts to read, in path order. */
  readonly texts: readonly ListedFile[]
  /** Pictures to read, in path order. */
  readonly images: readonly ListedFile[]
  readonly problems: readonly Problem[]
}

/** The folders of a cookbook whose files are texts, with the ending each of them reads. */
const textFolders = {recipes: '.md', tables: '.tsv', plans: '.md', pages: '.md'} as const

const topFiles = ['cookbook.yaml', 'foods.yaml'] as const

/** Endings that look like a text a writer meant to have read. */
const nearMiss = /\.(?:md|markdown|mdx|mkd|txt|ya?ml|tsv|csv)$/iu

/** A site gives away what lies in images/: a page or a script there would be one of the site's. */
const picture = /\.(?:jpe?g|png|webp|avif|gif|svg)$/iu

/** Hidden files and backups that editors leave; a name that begins with two dots is no such. */
const leftByPrograms = /^\.(?!\.)|~$/u

/**
 * Lists a cookbook folder. Hidden files are passed over in silence, as editors leave them; a file
 * that looks meant but would not be read is told.
 * @param root the cookbook folder, its own links resolved
 */
export function listFolder(root: string): Listing {
  const lister = new Lister(root)
  for (const name of topFiles) lister.addText(name)
  lister.tellOtherSpelling('cookbook.yml', '`cookbook.yaml`')
  lister.tellOtherSpelling('foods.yml', '`foods.yaml`')
  for (const [folder, ending] of Object.entries(textFolders)) {
    lister.addFolder(folder, ending)
  }
  lister.addImages('images')
  return {
    texts: lister.texts.toSorted(byPath),
    images: lister.images.toSorted(byPath),
    problems: lister.problems,
  }
}

/** Order by UTF-16 code units: the same on every machine and in every locale. */
function byPath(left: ListedFile, right: ListedFile): number {
  return left.path < right.path ? -1 : 1
}

class Lister {
  readonly texts: ListedFile[] = []
  readonly images: ListedFile[] = []
  readonly problems: Problem[] = []
  readonly #root: string

  constructor(root: string) {
    this.#root = root
  }

  addText(relative: string): void {
    this.#keep(this.texts, relative, lookAt(this.#root, relative))
  }

  tellOtherSpelling(found: string, expected: string): void {
    if (lookAt(this.#root, found).kind === 'file') this.#tellUnread(found, expected)
  }

  addFolder(folder: string, ending: string): void {
    for (const name of this.#names(folder)) {
      const relative = `${folder}/${name}`
      const found = lookAt(this.#root, relative)
      if (found.kind === 'folder') {
        this.#tellUnread(relative, `the files directly in \`${folder}/\``)
      } else if (name.endsWith(ending) || found.kind === 'refused') {
        this.#keep(this.texts, relative, found)
      } else if (nearMiss.test(name)) {
        this.#tellUnread(relative, `a name that ends in \`${ending}\``)
      }
    }
  }

  addImages(folder: string): void {
    for (const name of this.#names(folder)) {
      const relative = `${folder}/${name}`
      const found = lookAt(this.#root, relative)
      if (found.kind === 'folder') this.addImages(relative)
      else if (picture.test(name) || found.kind === 'refused') {
        this.#keep(this.images, relative, found)
      } else this.#tellUnread(relative, 'a picture: .jpg, .png, .webp, .avif, .gif or .svg')
    }
  }

  /** Names in a folder; none where it is not there. */
  #names(folder: string): readonly string[] {
    const found = lookAt(this.#root, folder)
    if (found.kind === 'file') this.#tellUnread(folder, 'a folder')
    if (found.kind === 'refused') this.#keep(this.texts, folder, found)
    if (found.kind !== 'folder') return []
    const all = readdirSync(path.join(this.#root, folder))
    const names = all.filter((name) => !leftByPrograms.test(name))
    if (names.length <= limits.folderFiles) return names
    this.problems.push(
      folderProblem('cookbook-size', {
        file: folder,
        reason: `Files in \`${folder}/\`: \`${names.length}\`, expected \`${limits.folderFiles}\` at most`,
        note: 'Split the cookbook in two, each with its own folder.',
      }),
    )
    return []
  }

  #keep(list: ListedFile[], relative: string, found: Looked): void {
    if (found.kind === 'file') list.push({path: relative, bytes: found.bytes})
    if (found.kind === 'folder') this.#tellUnread(relative, 'a file')
    if (found.kind === 'refused') {
      this.problems.push(
        folderProblem('inside-folder', {
          file: relative,
          reason: `\`${relative}\` is ${found.why}, expected a file of the cookbook folder`,
          note: 'Copy what it leads to into the cookbook folder; links are not followed out of it.',
        }),
      )
    }
  }

  #tellUnread(relative: string, expected: string): void {
    this.problems.push(
      folderProblem('file-name', {
        file: relative,
        reason: `\`${relative}\` is not read, expected ${expected}`,
      }),
    )
  }
}
