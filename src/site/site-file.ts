/** One file of the site, ready to be written. */
export interface SiteFile {
  /** Relative to the site folder, with `/`. */
  readonly path: string
  readonly content: string | Uint8Array
}

/** A file of the site that is made when it is wanted. */
export interface FileToMake {
  readonly path: string
  readonly make: () => SiteFile['content']
}
