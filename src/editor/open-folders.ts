import {cookbookPlace} from './cookbook-place.ts'
import {type Desk, OpenFolder} from './open-folder.ts'

/** Every cookbook of which a file was opened, by the URI of its folder. */
export class OpenFolders {
  readonly #desk: Desk
  readonly #folders = new Map<string, OpenFolder>()

  constructor(desk: Desk) {
    this.#desk = desk
  }

  /** The cookbook of a file, read; nothing where the file belongs to none. */
  async of(uri: string): Promise<OpenFolder | undefined> {
    const root = cookbookPlace(uri)?.root
    const folder = root === undefined ? undefined : this.#folder(root)
    await folder?.isRead
    return folder
  }

  /** A file was opened, saved or closed: the disk may hold something new. */
  reread(uri: string): void {
    const root = cookbookPlace(uri)?.root
    if (root !== undefined) this.#folder(root).reread()
  }

  typed(uri: string): void {
    const root = cookbookPlace(uri)?.root
    if (root !== undefined) this.#folders.get(root)?.publishSoon()
  }

  /** Files changed on the disk, pictures among them. */
  changed(uris: readonly string[]): void {
    for (const [root, folder] of this.#folders) {
      if (uris.some((uri) => uri.startsWith(`${root}/`))) folder.reread()
    }
  }

  #folder(root: string): OpenFolder {
    const folder = this.#folders.get(root) ?? new OpenFolder(root, this.#desk)
    this.#folders.set(root, folder)
    return folder
  }
}
