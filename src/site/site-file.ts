/** One file of the site, ready to be written. */
export interface SiteFile {
  /** Relative to the site folder, with `/`. */
  readonly path: string
  readonly content: string | Uint8Array
}
