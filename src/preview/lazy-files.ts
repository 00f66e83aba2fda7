import type {FileToMake, SiteFile} from '../site/site-file.ts'

/** Files of the site by path. */
export type PreviewFiles = Pick<ReadonlyMap<string, SiteFile['content']>, 'has' | 'get'>

/**
 * The files of a site that nobody has asked for yet: each is made when it is wanted, and kept. A
 * save shows at once, however many pages the cookbook has.
 */
export class LazyFiles implements PreviewFiles {
  readonly #toMake: ReadonlyMap<string, FileToMake['make']>
  readonly #made = new Map<string, SiteFile['content']>()

  constructor(files: Iterable<FileToMake>) {
    this.#toMake = new Map(Array.from(files, ({path, make}) => [path, make]))
  }

  has(path: string): boolean {
    return this.#toMake.has(path)
  }

  get(path: string): SiteFile['content'] | undefined {
    const made = this.#made.get(path) ?? this.#toMake.get(path)?.()
    if (made !== undefined) this.#made.set(path, made)
    return made
  }
}
